import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitRange } from '../../../../src/kernel/limits.ts';
import { formatReading } from '../../../../src/kernel/reading/format-reading.ts';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { type Quantity, quantityRules } from '../../../../src/kernel/reading/quantity.ts';
import type { Reading } from '../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../support/runs.ts';

const quantities = Object.keys(quantityRules) as Quantity[];
const anyQuantity = fc.constantFrom(...quantities);

function readBack(reading: Reading, quantity: Quantity): Reading | string {
  const text = formatReading(reading);
  const result = parseReading(text, quantity);
  // A point in doubt is asked about; a zero before it says that it is the decimal mark.
  const sure = result.ok || result.error.code !== 'ambiguous-point' ? text : text.replace(/\d/, '0$&');
  if (!result.ok && sure !== text) expect(result.error.suggestions).toContain(sure);
  const again = parseReading(sure, quantity);
  return again.ok ? again.reading : `${text}: ${again.error.message}`;
}

/** Digits as a display shows them, with a power of ten for the place of the last one that a prefix can reach. */
const shown = (quantity: Quantity) => {
  const { from, to } = limitRange(quantityRules[quantity].accepts);
  const largest = {
    resistance: 12,
    voltage: 3,
    diode: 0,
    temperature: 0,
    percent: 0,
    counts: 0,
    duration: 0,
    seconds: 0,
    capacitance: 0,
    length: 0,
    diameter: 0,
    power: 3,
    inductance: 0,
    current: 3,
  }[quantity];
  return fc
    .record({
      digits: fc.integer({ min: from < 0 ? -99_999 : 0, max: 99_999 }),
      place: fc.integer({ min: -9, max: largest }),
    })
    .map(({ digits, place }) => ({ value: Number(`${digits}e${place}`), resolution: Number(`1e${place}`) }))
    .filter(({ value }) => value >= from && value <= to);
};

const quantityAndShown = anyQuantity.chain((quantity) => shown(quantity).map((one) => ({ quantity, ...one })));

describe('parseReading reads back what formatReading writes', () => {
  it('of values with the step of their last digit', () => {
    fc.assert(
      fc.property(quantityAndShown, ({ quantity, value, resolution }) => {
        const reading: Reading = { kind: 'value', value, unit: quantityRules[quantity].unit, resolution };
        expect(readBack(reading, quantity)).toEqual(reading);
      }),
      { numRuns: runs },
    );
  });

  it('of values without it, to the last bit', () => {
    const wide = anyQuantity.chain((quantity) => {
      const { from, to } = limitRange(quantityRules[quantity].accepts);
      const any = fc.double({ min: from, max: to, noNaN: true });
      // No instrument of the trade shows less than a billionth of the base unit.
      return any.filter((value) => value === 0 || Math.abs(value) > 1e-9).map((value) => ({ quantity, value }));
    });
    fc.assert(
      fc.property(wide, ({ quantity, value }) => {
        const { unit } = quantityRules[quantity];
        const back = readBack({ kind: 'value', value, unit }, quantity);
        expect(back).toMatchObject({ kind: 'value', value: value === 0 ? 0 : value, unit });
      }),
      { numRuns: runs },
    );
  });

  it('of bounds, of readings without a bound and of missing ones', () => {
    const bounded = fc.constantFrom<Quantity>('resistance', 'voltage').chain((quantity) =>
      fc.record({
        quantity: fc.constant(quantity),
        kind: fc.constantFrom('over' as const, 'under' as const, 'missing' as const),
        bound: fc.option(shown(quantity), { nil: undefined }),
      }),
    );
    fc.assert(
      fc.property(bounded, ({ quantity, kind, bound }) => {
        const { unit } = quantityRules[quantity];
        const key = kind === 'over' ? 'atLeast' : 'atMost';
        const reading: Reading =
          kind === 'missing' ? { kind } : { kind, unit, ...(bound === undefined ? {} : { [key]: bound.value }) };
        expect(readBack(reading, quantity)).toEqual(reading);
      }),
      { numRuns: runs },
    );
  });

  it('of any digits with a unit: reading again gives the same value', () => {
    fc.assert(
      fc.property(likeAReading(), (text) => {
        const result = parseReading(text, 'resistance');
        if (!result.ok || result.reading.kind !== 'value') return;
        const back = readBack(result.reading, 'resistance');
        expect(back).toMatchObject({ kind: 'value', value: result.reading.value });
      }),
      { numRuns: runs },
    );
  });
});

/** Strings of the parts that readings are made of, in any order that looks a little like one. */
function likeAReading(): fc.Arbitrary<string> {
  const sign = fc.constantFrom('', '', '', '-', '+', '>', '<', '≥', '> ', 'over ', '−', '>>');
  const digit = fc.constantFrom('0', '1', '2', '5', '9', '10', '45', '450', '000');
  const mark = fc.constantFrom('.', ',', ' ', "'", '');
  const numeral = fc.array(fc.tuple(digit, mark), { minLength: 1, maxLength: 3 }).map((parts) => parts.flat().join(''));
  const power = fc.constantFrom('', '', '', 'e3', 'E-2', 'e', 'e99');
  const gap = fc.constantFrom('', ' ', '\u00a0', '  ');
  const prefix = fc.constantFrom('', 'k', 'K', 'M', 'm', 'G', 'T', 'µ', 'u', 'meg', 'kilo', 'mega', 'milli');
  const unit = fc.constantFrom('', 'Ω', '\u2126', 'ohm', 'Ohms', 'R', 'V', 'mV', '°C', '°F', '%', 's', '5');
  return fc.tuple(sign, numeral, power, gap, prefix, gap, unit).map((parts) => parts.join(''));
}

describe('any text gives a reading or a stated error', () => {
  const looksSound = (text: string, quantity: Quantity) => {
    const result = parseReading(text, quantity);
    if (result.ok) {
      const numbers = Object.values(result.reading).filter((part) => typeof part === 'number');
      expect(numbers.every((number) => Number.isFinite(number))).toBe(true);
      // A diode test beside a charged bus shows less than zero: that is read and judged.
      if (result.reading.kind === 'value' && quantity !== 'temperature' && quantity !== 'diode')
        expect(result.reading.value).toBeGreaterThanOrEqual(0);
      return result.ok;
    }
    const { code, message, suggestions } = result.error;
    expect(message).toMatch(/[.]$/);
    // What was typed is quoted, and may be “NaN” itself.
    expect(message.replace(/“.*”/s, '')).not.toMatch(/undefined|NaN/);
    const helps = message.includes(quantityRules[quantity].example) || suggestions.length > 0;
    const tellsWhatToDo = [
      ...['negative', 'out-of-range', 'milli-or-mega', 'unit-missing'],
      ...['ambiguous-comma', 'zero-leads-groups'],
    ].includes(code);
    expect(helps || tellsWhatToDo).toBe(true);
    for (const suggestion of suggestions)
      expect([suggestion, parseReading(suggestion, quantity).ok]).toEqual([suggestion, true]);
    return result.ok;
  };

  const count = { read: 0, refused: 0 };
  const texts: [string, fc.Arbitrary<string>][] = [
    ['of any characters', fc.string({ unit: 'binary', maxLength: 60 })],
    ['of graphemes', fc.string({ unit: 'grapheme', maxLength: 30 })],
    ['of printable ASCII', fc.string({ maxLength: 20 })],
    ['of the parts of readings', likeAReading()],
    ['of digits and marks', fc.string({ unit: fc.constantFrom(..."0123456789.,' e-+><kMmGΩ"), maxLength: 12 })],
  ];
  it.each(texts)('%s', (_, text) => {
    fc.assert(
      fc.property(text, anyQuantity, (one, quantity) => {
        count[looksSound(one, quantity) ? 'read' : 'refused']++;
      }),
      { numRuns: runs },
    );
  });

  it('and both occurred often', () => {
    expect(count.read).toBeGreaterThan(runs / 20);
    expect(count.refused).toBeGreaterThan(runs);
  });
});
