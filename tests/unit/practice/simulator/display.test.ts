import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { intervalOf } from '../../../../src/kernel/reading/interval.ts';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { resolutionOf, showCount, showOver, withError } from '../../../../src/practice/simulator/display.ts';
import { drawInstruments, multimeter } from '../../../../src/practice/simulator/instruments.ts';
import { runs } from '../../../support/runs.ts';

const instruments = drawInstruments(seeded(1));

test.each([
  ['720 Ω', 0, 0.1],
  ['7.2 kΩ', 1, 1],
  ['72 kΩ', 2, 10],
  ['72 MΩ', 5, 10e3],
])('a display of 7200 counts steps on the range of %s by %#', (_, position, step) => {
  const range = multimeter.ohms.ranges[position];
  expect(range && resolutionOf(range, multimeter.ohms)).toBeCloseTo(step, 9);
});

test.each([
  [4512, 2, '45.12 kΩ'],
  [0, 0, '0.0 Ω'],
  [7, 0, '0.7 Ω'],
  [2000, 4, '2.000 MΩ'],
  [2000, 5, '20.00 MΩ'],
])('%d counts of the ohm range %d read %s', (count, position, text) => {
  const range = multimeter.ohms.ranges[position];
  expect(range && showCount(count, range, multimeter.ohms, 'Ω').text).toBe(text);
});

test('an over-range reading names the end of the range', () => {
  expect(showOver(72e6, 'Ω')).toEqual({ reading: { kind: 'over', unit: 'Ω', atLeast: 72e6 }, text: '> 72 MΩ' });
});

const shownCase = fc.record({
  meter: fc.constantFrom(instruments.ohms, instruments.milliohms, instruments.insulation),
  range: fc.nat(3),
  share: fc.double({ min: 0, max: 1, noNaN: true }),
  error: fc.double({ min: -1, max: 1, noNaN: true }),
  seed: fc.integer(),
});

test('the site reads the typed text with the same digits and the same resolution', () => {
  fc.assert(
    fc.property(shownCase, ({ meter, range, share }) => {
      const chosen = meter.ranges[range % meter.ranges.length];
      if (chosen === undefined) throw new Error('no range');
      const count = Math.round((share * chosen.fullScale) / resolutionOf(chosen, meter));
      const { reading, text } = showCount(count, chosen, meter, 'Ω');
      const parsed = parseReading(text, 'resistance');
      expect(parsed.ok && parsed.reading, text).toEqual(reading);
    }),
    { numRuns: runs },
  );
});

test('the true value lies within the stated accuracy of what is shown', () => {
  fc.assert(
    fc.property(shownCase, ({ meter, range, share, error, seed }) => {
      const chosen = meter.ranges[range % meter.ranges.length];
      if (chosen === undefined) throw new Error('no range');
      const value = share * chosen.fullScale;
      const count = withError(value, chosen, meter, error, seeded(seed));
      const { reading } = showCount(Math.max(0, count), chosen, meter, 'Ω');
      // The error was computed from the true value, but percent refers to the reading: allow a hundredth of the error.
      const { lo, hi } = intervalOf(reading, { percent: meter.percent * 1.12, counts: meter.counts });
      expect(value).toBeGreaterThanOrEqual(lo);
      expect(value).toBeLessThanOrEqual(hi);
    }),
    { numRuns: runs },
  );
});
