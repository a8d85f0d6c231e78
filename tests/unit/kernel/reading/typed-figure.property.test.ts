import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readingBounds } from '../../../../src/calculators/isolation/rule/parallel-check.ts';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { byLastDigit, intervalOf } from '../../../../src/kernel/reading/interval.ts';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import type { ValueReading } from '../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../support/runs.ts';

/** A figure as typed, with the value and the place of the last digit of its text, in ohms. */
const figures = fc
  .record({
    digits: fc.oneof(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 99_999 })),
    decimals: fc.integer({ min: 0, max: 4 }),
    prefix: fc.constantFrom<[string, number]>(['m', -3], ['', 0], ['k', 3], ['M', 6], ['G', 9]),
  })
  .map(({ digits, decimals, prefix: [prefix, exponent] }) => {
    const padded = String(digits).padStart(decimals + 1, '0');
    const split = padded.length - decimals;
    // The zero in front keeps the point a decimal mark.
    const numeral = decimals === 0 ? padded : `0${padded.slice(0, split)}.${padded.slice(split)}`;
    return {
      text: `${numeral} ${prefix}Ω`,
      value: digits * 10 ** (exponent - decimals),
      step: 10 ** (exponent - decimals),
    };
  });

const typedValue = (text: string): ValueReading => {
  const result = parseReading(text, 'resistance');
  if (!result.ok || result.reading.kind !== 'value') throw new Error(`${text} was not read as a value`);
  return result.reading;
};

const slightly = 1 + 1e-9;

test('the interval of a typed figure holds it, and zero only if it is zero', () => {
  fc.assert(
    fc.property(figures, ({ text, value }) => {
      const reading = typedValue(text);
      for (const { lo, hi } of [byLastDigit(reading), readingBounds(reading), intervalOf(reading)]) {
        expect(lo <= value * slightly && value <= hi * slightly).toBe(true);
        expect([text, lo > 0]).toEqual([text, value > 0]);
      }
    }),
    { numRuns: runs },
  );
});

test('it is no wider than the last digit says, or than the widest error of a tester', () => {
  const error = limitValue('insulation-tester-error') / 100;
  fc.assert(
    fc.property(figures, ({ text, value, step }) => {
      const reading = typedValue(text);
      const room = value === 0 ? step : step / 2;
      const digit = byLastDigit(reading);
      expect(digit.hi - value).toBeLessThanOrEqual(room * slightly);
      expect(value - digit.lo).toBeLessThanOrEqual(room * slightly);
      const tester = readingBounds(reading);
      expect(tester.hi - value).toBeLessThanOrEqual(Math.max(room, value * error) * slightly);
      expect(value - tester.lo).toBeLessThanOrEqual(Math.max(room, value * error) * slightly);
    }),
    { numRuns: runs },
  );
});

test('with a stated accuracy it is as wide as stated', () => {
  fc.assert(
    fc.property(figures, fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 9 }), (figure, percent, counts) => {
      const { lo, hi } = intervalOf(typedValue(figure.text), { percent, counts });
      const error = (figure.value * percent) / 100 + counts * figure.step;
      expect(hi - figure.value).toBeLessThanOrEqual(error * slightly + figure.value * 1e-9);
      expect(lo).toBeGreaterThanOrEqual(Math.max(0, figure.value - error) - figure.value * 1e-9);
      if (error < figure.value * 0.99) expect(lo).toBeGreaterThan(0);
    }),
    { numRuns: runs },
  );
});
