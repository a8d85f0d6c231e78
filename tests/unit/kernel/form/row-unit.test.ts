import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { ReadingField } from '../../../../src/kernel/form/field.ts';
import { rowUnit, rowUnitInDoubt, withRowUnit } from '../../../../src/kernel/form/row-unit.ts';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../../../src/kernel/reading/quantity.ts';
import { runs } from '../../../support/runs.ts';

// The rule of this project; no published source.

const field = (id: string, quantity: Quantity = 'resistance', row?: string): ReadingField => ({
  ...{ kind: 'reading', id, label: `to ${id}`, name: id, quantity },
  ...(row !== undefined && { row }),
});
const row = ['U', 'V', 'W'].map((id) => field(id, 'resistance', 'rail'));
const second = (first: string, typed: string) => withRowUnit(row, 'V', { U: first, V: typed });

describe('a figure without a unit takes that of its row', () => {
  it.each([
    ['450k', '460', '460 kΩ'],
    ['450 kΩ', '1350', '1350 kΩ'],
    ['450k', '150', '150 kΩ'],
    ['2M2', '2.1', '2.1 MΩ'],
    ['2,2 MΩ', '2,15', '2,15 MΩ'],
    ['1.820 Ω', '1.795', '1.795 Ω'],
    ['842 mΩ', ' 850 ', '850 mΩ'],
    ['>700M', '>650', '>650 MΩ'],
    ['>700M', '900', '900 MΩ'],
    ['3 kohm', '2.9', '2.9 kΩ'],
  ])('after %s, %s is %s', (first, typed, whole) => {
    expect(second(first, typed)).toBe(whole);
  });
});

describe('it does not where that would decide what has to be asked', () => {
  it.each([
    ['a zero: with a unit of megohms it would be no short', '450M', '0'],
    ['a zero with decimals', '450M', '0.00'],
    ['a lone 1, which may be over-range', '1.2M', '1'],
    ['a comma that may be one of thousands', '1.2M', '1,250'],
    ['a point that may be one of thousands', '0.9 Ω', '1.000'],
    ['a zero before a group of three', '450k', '0 500'],
    ['a figure far below its neighbour', '450k', '0.3'],
    ['a figure just too far below', '450k', '149'],
    ['a figure just too far above', '450k', '1351'],
    ['a figure far below a bound', '>700M', '2.1'],
    ['a neighbour of zero', '0 MΩ', '3'],
    ['a neighbour without a unit', '450', '460'],
    ['a neighbour that is over-range, range not noted', 'OL', '460'],
    ['a neighbour that can not be read', '4x0k', '460'],
    ['a neighbour that is asked about itself', '450m', '460'],
    ['an empty neighbour', '', '460'],
  ])('%s', (_, first, typed) => {
    expect(second(first, typed)).toBeUndefined();
  });

  it.each(['', ' ', '-', 'OL', '460 Ω', '460M', '4x', '0.3 Ω', '460 m'])(
    'a text that has no figure or has its unit: “%s”',
    (text) => {
      expect(second('450k', text)).toBeUndefined();
    },
  );
});

test('the last unit before a field counts, not one after it, and no field of another row or quantity', () => {
  const typed = { U: '450k', V: '0.45M', W: '470k' };
  expect(rowUnit(row, 'W', typed)).toMatchObject({ symbol: 'MΩ', from: { id: 'V' } });
  expect(rowUnit(row, 'W', { ...typed, V: 'OL' })).toMatchObject({ symbol: 'kΩ', from: { id: 'U' } });
  expect(rowUnit(row, 'U', typed)).toBeUndefined();
  const others = [...row, field('PE'), field('X', 'resistance', 'other rail'), field('T', 'temperature', 'rail')];
  for (const id of ['PE', 'X', 'T', 'none']) expect(rowUnit(others, id, typed)).toBeUndefined();
});

test('after one that failed, the last reading that is like it counts', () => {
  const rail = row.map((one) => ({ ...one, lowIsWorse: true as const }));
  const typed = { U: '45k', V: '0.4 Ω', W: '46' };
  expect(withRowUnit(rail, 'W', typed)).toBe('46 kΩ');
  expect(rowUnit(rail, 'W', typed)).toMatchObject({ symbol: 'kΩ', from: { id: 'U' } });
  // 46 Ω would be a second short: the person has to say that it is meant.
  expect(rowUnitInDoubt(rail, 'W', typed)).toBe('46 kΩ');
  expect(withRowUnit(rail, 'W', { ...typed, W: '0.5' })).toBe('0.5 Ω');
  expect(withRowUnit(rail, 'W', { ...typed, W: '9' })).toBeUndefined();
  expect(rowUnit(rail, 'W', { ...typed, W: '' })).toMatchObject({ symbol: 'Ω', from: { id: 'V' } });
});

test('a diode test: whole millivolts take the unit, and a voltage that reads by itself stays as it is', () => {
  const diodes = ['U', 'V'].map((id) => field(id, 'diode', 'forward'));
  expect(withRowUnit(diodes, 'V', { U: '512 mV', V: '498' })).toBe('498 mV');
  // Two volts block, two millivolts are a short.
  expect(withRowUnit(diodes, 'V', { U: '512 mV', V: '2' })).toBeUndefined();
  expect(withRowUnit(diodes, 'V', { U: '512 mV', V: '0.498' })).toBeUndefined();
  expect(withRowUnit(diodes, 'V', { U: '0.512', V: '498' })).toBeUndefined();
});

describe('a unit that may hide a worse reading is to be confirmed', () => {
  const conductors = ['mΩ', 'Ω', 'kΩ'];
  const asked = (first: string, typed: string, more: Partial<ReadingField>) =>
    rowUnitInDoubt(
      row.map((one) => ({ ...one, ...more })),
      'V',
      { U: first, V: typed },
    );

  test('450 Ω after 450 kΩ would be a short that passes; 450 kΩ after 450 Ω would only look worse', () => {
    expect(asked('450k', '450', { lowIsWorse: true })).toBe('450 kΩ');
    expect(asked('>700M', '650', { lowIsWorse: true })).toBe('650 MΩ');
    expect(asked('450 Ω', '450', { lowIsWorse: true })).toBeUndefined();
  });

  test('a winding is bad both ways: shorted turns read low, an open joint high', () => {
    expect(asked('1.82 Ω', '1.80', { units: conductors })).toBe('1.80 Ω');
    expect(asked('842 mΩ', '850', { units: conductors })).toBe('850 mΩ');
  });

  test('what no meter shows is no doubt: 498 V in a diode test', () => {
    const diodes = ['U', 'V'].map((id) => field(id, 'diode', 'forward'));
    expect(rowUnitInDoubt(diodes, 'V', { U: '512 mV', V: '498' })).toBeUndefined();
  });

  test.each([
    ['450k', '450k'],
    ['450k', '0.3'],
    ['450k', ''],
    ['OL', '450'],
  ])('after %s, “%s” takes no unit that could be confirmed', (first, typed) => {
    expect(asked(first, typed, { lowIsWorse: true })).toBeUndefined();
  });

  test('without a word of the person nothing reads higher than the worst that it can be', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9999 }),
        fc.constantFrom('Ω', 'kΩ', 'MΩ'),
        fc.integer({ min: 2, max: 9999 }),
        (u, unit, v) => {
          const first = `${u}${unit}`;
          if (second(first, String(v)) === undefined) return;
          const silent = asked(first, String(v), { lowIsWorse: true }) === undefined;
          expect(silent).toBe(unit === 'Ω');
        },
      ),
      { numRuns: runs },
    );
  });
});

const units = ['mΩ', 'Ω', 'k', 'kΩ', 'M', 'MΩ', 'GΩ'];
const numeral = fc.oneof(
  fc.tuple(fc.nat(9999), fc.nat(999), fc.constantFrom('.', ',')).map(([a, b, mark]) => `${a}${mark}${b}`),
  fc.nat(99_999).map(String),
);
const readOf = (text: string) => parseReading(text, 'resistance');

test('what is written reads by itself, as the figure with that unit and nothing else', () => {
  fc.assert(
    fc.property(numeral, fc.constantFrom(...units), numeral, (first, unit, typed) => {
      const whole = second(first + unit, typed);
      if (whole === undefined) return;
      const [before, after, alone] = [readOf(first + unit), readOf(whole), readOf(typed)];
      // Only a question that a unit answers is answered: nothing that could be read is read otherwise.
      expect(alone).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
      expect(whole.startsWith(`${typed.trim()} `)).toBe(true);
      if (!after.ok || !before.ok || after.reading.kind !== 'value' || before.reading.kind !== 'value')
        throw new Error(`${whole} is no value`);
      const ratio = after.reading.value / before.reading.value;
      const most = limitValue('entry-row-alike');
      expect(Math.max(ratio, 1 / ratio)).toBeLessThanOrEqual(most * (1 + 1e-9));
    }),
    { numRuns: runs },
  );
});

test('a worse figure is asked about or is worse: no lower figure reads higher', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 9999 }),
      fc.constantFrom(...units),
      fc.nat(9999),
      fc.nat(9999),
      (u, unit, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const read = [low, high].map((figure) => {
          const whole = second(`${u}${unit}`, String(figure));
          const result = readOf(whole ?? String(figure));
          return result.ok && result.reading.kind === 'value' ? result.reading.value : undefined;
        });
        if (read[0] !== undefined && read[1] !== undefined) expect(read[0]).toBeLessThanOrEqual(read[1]);
        // A second figure that was worse than any neighbour by more than the ratio has no reading at all.
        if (low > 1 && low * limitValue('entry-row-alike') < u) expect(read[0]).toBeUndefined();
      },
    ),
    { numRuns: runs },
  );
});
