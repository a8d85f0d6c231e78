import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Compared, compare, fallsOf } from '../../../../src/axes/history/falls.ts';
import type { Point } from '../../../../src/axes/history/points.ts';
import { fallText } from '../../../../src/axes/words/falls.ts';
import { celsius, missing, ohms, overOhms, type Reading, underOhms } from '../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../support/runs.ts';

// The factor of a fall is the trend's own (project judgement); halving each 10 K is recalled from IEEE 43.

const point = (day: number, reading: Reading, more: Partial<Point> = {}): Point => ({
  ...{ visit: `visit-${day}`, at: `2026-01-${String(day).padStart(2, '0')}T08:00:00+00:00`, part: 'motor' },
  ...{ line: 0, cells: [], day, reading, temperature: celsius(20), correction: 'halving', baseline: false },
  text: JSON.stringify(reading),
  ...more,
});

const mega = (value: number) => ohms(value * 1e6);

describe('since the last visit', () => {
  test.each<[string, Reading, Reading, Compared['level']]>([
    ['900 to 400 MΩ', mega(900), mega(400), 'fall'],
    ['400 to 150 MΩ, above the limit', mega(400), mega(150), 'fall'],
    ['400 to 210 MΩ: within what scatter and time do', mega(400), mega(210), 'none'],
    ['400 MΩ to 1 GΩ', mega(400), mega(1000), 'none'],
    ['more than 700 MΩ to 300 MΩ', overOhms(7e8), mega(300), 'fall'],
    ['over range, not noted which, to 300 MΩ', overOhms(), mega(300), 'unknown'],
    ['over range both times', overOhms(), overOhms(), 'none'],
    ['400 MΩ to less than 10 MΩ', mega(400), underOhms(1e7), 'fall'],
    ['400 MΩ to zero', mega(400), ohms(0), 'fall'],
    ['400 MΩ to more than 100 MΩ: a bound is no value', mega(400), overOhms(1e8), 'none'],
  ])('%s', (_, before, now, level) => {
    expect(compare('last', point(1, before), point(9, now)).level).toBe(level);
  });

  test('900 MΩ at 40 °C and 500 MΩ at 20 °C is a fall: the warm one stands for 3.6 GΩ at 20 °C', () => {
    const compared = compare('last', point(1, mega(900), { temperature: celsius(40) }), point(9, mega(500)));
    expect(compared).toMatchObject({ level: 'fall', factor: expect.closeTo(7.2, 3) });
    expect(compared.corrected).toEqual({ before: 9e8, now: expect.closeTo(1.25e8, -3) });
  });

  test('900 MΩ at 20 °C and 300 MΩ at 40 °C is none: the warm winding explains it', () => {
    const warm = point(9, mega(300), { temperature: celsius(40) });
    expect(compare('last', point(1, mega(900)), warm).level).toBe('none');
  });

  test('without a temperature a reading that is half is a fall as read, and a somewhat lower one is unknown', () => {
    const at = (value: number) => point(9, mega(value), { temperature: missing });
    expect(compare('last', point(1, mega(900)), at(300))).toMatchObject({ level: 'fall', factor: 3 });
    expect(compare('last', point(1, mega(900)), at(700)).level).toBe('unknown');
    expect(compare('last', point(1, mega(900)), at(1000)).level).toBe('none');
  });
});

test('without a temperature the same figure again is not called lower, and an unknown range only may be', () => {
  const at = (day: number, reading: Reading) => point(day, reading, { temperature: missing, part: 'cable' });
  expect(compare('last', at(1, mega(400)), at(9, mega(400))).level).toBe('none');
  expect(fallText(compare('last', at(1, mega(400)), at(9, mega(390))))).toMatch(/^Lower than at the last visit/);
  expect(compare('last', at(1, overOhms(7e8)), at(9, mega(700))).level).toBe('unknown');
  expect(fallText(compare('last', at(1, overOhms()), at(9, mega(5000))))).toMatch(/^It may be lower than at/);
});

test('the third of 900, 400 and 150 MΩ names the last visit and the best', () => {
  const falls = fallsOf(point(3, mega(150)), [point(1, mega(900)), point(2, mega(400))]);
  expect(falls.map(({ since, factor }) => [since, Number(factor.toFixed(2))])).toEqual([
    ['last', 2.67],
    ['best', 6],
  ]);
});

test('a decline in small steps shows against the baseline', () => {
  const earlier = [point(1, mega(900), { baseline: true }), point(2, mega(600)), point(3, mega(420))];
  const falls = fallsOf(point(4, mega(300)), earlier);
  expect(falls.map(({ since }) => since)).toEqual(['baseline']);
});

test('readings of the same visit, later ones and those of another part are no past', () => {
  const now = point(5, mega(150));
  expect(fallsOf(now, [point(5, mega(900)), point(6, mega(900)), point(1, mega(900), { part: 'cable' })])).toEqual([]);
});

const value = fc.double({ min: 4, max: 11, noNaN: true }).map((power) => 10 ** power);
const reading = fc.oneof(
  { weight: 4, arbitrary: value.map((one) => ohms(one)) },
  value.map((one) => overOhms(one)),
  fc.constant(overOhms()),
  value.map((one) => underOhms(one)),
);
const temperature = fc.constantFrom<Reading>(missing, celsius(5), celsius(20), celsius(60), celsius(200));
const past = fc.array(fc.record({ reading, temperature, baseline: fc.boolean() }), { minLength: 1, maxLength: 5 });
const ranks = { none: 0, unknown: 1, fall: 2 };

test('a worse later reading never makes the words milder', () => {
  fc.assert(
    fc.property(
      past,
      value,
      fc.double({ min: 0, max: 1, noNaN: true }),
      temperature,
      (earlier, high, share, celsius) => {
        const points = earlier.map((one, index) => point(index + 1, one.reading, one));
        const said = (ohmsNow: number) => fallsOf(point(20, ohms(ohmsNow), { temperature: celsius }), points);
        const [better, worse] = [said(high), said(high * share)];
        const level = (falls: Compared[]) => Math.max(0, ...falls.map((one) => ranks[one.level]));
        const factor = (falls: Compared[]) => Math.max(1, ...falls.map((one) => one.factor));
        expect(level(worse)).toBeGreaterThanOrEqual(level(better));
        expect(factor(worse)).toBeGreaterThanOrEqual(factor(better));
        for (const { since, level: was } of better.filter((one) => one.since !== 'best')) {
          const now = worse.find((one) => one.since === since)?.level ?? 'none';
          expect(ranks[now]).toBeGreaterThanOrEqual(ranks[was]);
        }
        for (const compared of worse) expect(fallText(compared)).not.toMatch(/NaN|undefined|Infinity/);
      },
    ),
    { numRuns: runs },
  );
});
