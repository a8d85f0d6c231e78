import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import type { Reading } from '../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../support/runs.ts';

/*
 * What a text can mean, enumerated independently of the parser: every mark as a decimal mark or as a thousands
 * separator, every unit that the letters can mean. Grouping and decimal marks: ISO 80000-1, 7.3 (recalled), and the
 * custom of writing 1.000 or 1,000 for one thousand (common practice, no source).
 */

type Field = 'resistance' | 'voltage' | 'diode';

const widest: Record<Field, number> = { resistance: 1e15, voltage: 20_000, diode: 20 };

interface Meaning {
  number: number;
  /** Whether digits follow a decimal mark. */
  decimals: boolean;
}

/** The numbers that digits with marks can mean: no mark is the decimal one, or one of them is. */
function numbersOf(numeral: string): Meaning[] {
  // After `0.` or `0,` alone there is no group: nobody writes five hundred like that.
  if (/^0*[.,]\d*$/.test(numeral)) return [{ number: Number(numeral.replace(',', '.')), decimals: true }];
  const places = [...numeral.matchAll(/[.,' ]/g)].map(({ index }) => index);
  return [numeral.length, ...places].flatMap((place) => {
    const [whole, mark, fraction] = [numeral.slice(0, place), numeral[place] ?? '', numeral.slice(place + 1)];
    const slipped = numeral.startsWith('0') && /^\d+[.,' ]\d{3}(?:[.,' ]\d{3})*$/.test(numeral) && place === places[0];
    const plainFraction = /^\d*$/.test(fraction) || slipped;
    // A space or an apostrophe is a decimal mark only after a zero, which shows a typing error.
    const canPart = /^[.,]?$/.test(mark) || slipped;
    if (!areGroups(whole, mark) || !plainFraction || !canPart) return [];
    const digits = (text: string) => text.replaceAll(/\D/g, '') || '0';
    return [{ number: Number(`${digits(whole)}.${digits(fraction)}`), decimals: mark !== '' }];
  });
}

/**
 * Up to three digits, then groups of three after the same mark, which is not the decimal one. Without marks any digits.
 */
function areGroups(whole: string, decimalMark: string): boolean {
  if (/^\d*$/.test(whole)) return true;
  const mark = whole.replaceAll(/\d/g, '')[0] ?? '';
  return mark !== decimalMark && /^\d{1,3}([.,' ])\d{3}(?:\1\d{3})*$/.test(whole);
}

/** The powers of ten that the letters can mean. */
function powersOf(unit: string, field: Field, { number, decimals }: Meaning): number[] {
  if (unit === '' && field === 'resistance') return [0, 3, 6];
  // A diode test shows volts with decimals, or whole millivolts.
  if (unit === '' && field === 'diode') return decimals && number <= widest.diode ? [0] : [0, -3];
  const powers: Record<string, number[]> = {
    ...{ '': [0], Ω: [0], V: [0], k: [3], K: [3], kΩ: [3], kV: [3], M: [6], MΩ: [6], G: [9], GΩ: [9] },
    // The full symbol says which of the two is meant.
    ...{ m: [-3, 6], mohm: [-3, 6], mΩ: [-3], mV: [-3] },
  };
  return powers[unit] ?? [];
}

function meaningsOf(numeral: string, unit: string, field: Field): number[] {
  const all = numbersOf(numeral).flatMap((one) =>
    powersOf(unit, field, one).map((power) => Number(`${one.number}e${power}`)),
  );
  const possible = all.filter((value) => value <= widest[field]);
  return possible.filter((value, index) => possible.findIndex((other) => same(other, value)) === index);
}

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/**
 * Limits with the safe side below, in Ω and V: a protective conductor, a discharged bus, a dead one, a shorted diode.
 */
const dangers: Record<Field, number[]> = { resistance: [1], voltage: [0.1, 50], diode: [0.1] };

/**
 * The one stated exception: a single point is an instrument's decimal mark, after a zero always, as on a display that
 * pads with zeros, and otherwise unless the wrong meaning is dangerous.
 */
function instrumentPoint(numeral: string, unit: string, field: Field, value: number): boolean {
  if (/^0\d*\.\d+$/.test(numeral)) return same(value, Math.min(...meaningsOf(numeral, unit, field)));
  const [, whole = '', more] = /^(\d{1,3})\.(\d{3})$/.exec(numeral) ?? [];
  if (more === undefined || !same(value, Math.min(...meaningsOf(numeral, unit, field)))) return false;
  // Ten thousand thousandths and more are written in whole units.
  if (unit.startsWith('m') && whole.length > 1) return true;
  // More volts than a low-voltage machine has are not a second meaning.
  if (field === 'voltage' && value * 1000 > 1500) return true;
  const crossed = dangers[field].some((limit) => value <= limit && value * 1000 > limit);
  return whole.length < 3 && !crossed;
}

const figureOf = (reading: Reading): number | undefined => {
  if (reading.kind === 'value') return reading.value;
  return reading.kind === 'over' ? reading.atLeast : reading.kind === 'under' ? reading.atMost : undefined;
};

const digit = fc.constantFrom('0', '0', '1', '2', '5', '07', '10', '45', '450', '000', '500', '152', '1234');
const mark = fc.constantFrom('.', ',', ' ', "'", '');
const anyNumerals = fc
  .tuple(fc.array(fc.tuple(digit, mark), { maxLength: 2 }), digit)
  .map(([parts, last]) => parts.flat().join('') + last);
const threes = fc
  .tuple(fc.integer({ min: 0, max: 999 }), mark, fc.constantFrom('000', '001', '152', '500'))
  .map((parts) => parts.join(''));
const numerals = fc.oneof(anyNumerals, threes);
const units: Record<Field, string[]> = {
  resistance: ['', 'Ω', 'm', 'mΩ', 'mohm', 'k', 'K', 'kΩ', 'M', 'MΩ', 'G', 'GΩ'],
  voltage: ['', 'V', 'mV', 'kV'],
  diode: ['', 'V', 'mV'],
};
const entries = fc.constantFrom<Field>('resistance', 'voltage', 'diode').chain((field) =>
  fc.record({
    field: fc.constant(field),
    numeral: numerals,
    gap: fc.constantFrom('', ' '),
    unit: fc.constantFrom(...units[field]),
    sign: fc.constantFrom('', '', '', '>', '<', '≥ '),
  }),
);

describe('a text with two meanings', () => {
  const met = { one: 0, asked: 0, point: 0 };

  test('is never read without asking, and what is read is one of its meanings', () => {
    fc.assert(
      fc.property(entries, ({ field, numeral, gap, unit, sign }) => {
        const text = sign + numeral + gap + unit;
        const meanings = meaningsOf(numeral, unit, field);
        const result = parseReading(text, field);
        if (result.ok) {
          const value = figureOf(result.reading) ?? Number.NaN;
          expect([text, meanings.some((one) => same(one, value))]).toEqual([text, true]);
          const sure = meanings.length === 1 || instrumentPoint(numeral, unit, field, value);
          expect([text, field, meanings, sure]).toEqual([text, field, meanings, true]);
          met[meanings.length === 1 ? 'one' : 'point']++;
          return;
        }
        if (result.error.suggestions.length === 0) return;
        met.asked++;
        const offered = result.error.suggestions
          .filter((suggestion) => suggestion !== 'OL')
          .map((suggestion) => {
            const again = parseReading(suggestion, field);
            if (!again.ok) throw new Error(`${text}: the suggestion ${suggestion} can't be read`);
            return figureOf(again.reading) ?? Number.NaN;
          });
        // Every suggestion is a meaning of the text, and no meaning is missing.
        for (const one of offered)
          expect([text, one, meanings.some((other) => same(other, one))]).toEqual([text, one, true]);
        const isOffered = (one: number) => offered.some((other) => same(other, one));
        const pointed = /^\d+\.\d{3}$/.test(numeral);
        for (const one of meanings)
          expect([text, one, isOffered(one) || (pointed && isOffered(one / 1000))]).toEqual([text, one, true]);
      }),
      { numRuns: runs * 3 },
    );
    for (const times of Object.values(met)) expect(times).toBeGreaterThan(runs / 50);
  });

  test.each<[string, string, Field, number[]]>([
    ['0 500', 'MΩ', 'resistance', [500e6, 0.5e6]],
    ['07,152', 'M', 'resistance', [7152e6, 7.152e6]],
    ['0.500.000', 'Ω', 'resistance', [500e3, 0.5]],
    ['1.000', 'Ω', 'resistance', [1000, 1]],
    ['1,000', 'V', 'voltage', [1000, 1]],
    ['2', '', 'diode', [2, 0.002]],
    ['450', 'm', 'resistance', [0.45, 450e6]],
    ['0,500', 'MΩ', 'resistance', [500e3]],
    ['1.234,5', 'k', 'resistance', [1234.5e3]],
  ])('the enumeration itself: “%s %s” in a field of %s', (numeral, unit, field, meanings) => {
    expect(meaningsOf(numeral, unit, field).sort()).toEqual(meanings.sort());
  });
});
