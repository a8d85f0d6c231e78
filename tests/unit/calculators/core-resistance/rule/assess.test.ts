import { describe, expect, it } from 'vitest';
import { judgePe } from '../../../../../src/kernel/assessment/protective-conductor.ts';
import { celsius, metres, missing, ohms, overOhms, underOhms } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { assess, type Change } from './sound.ts';

// Table: IEC 60228, class 5. The allowances are judgement: a quarter, contacts of 0.15 Ω
// in PE and of 0.05 Ω in each other core, one ohm to the break.

describe('cores worked out by hand', () => {
  const rows: [what: string, Change, verdict: string, code: string, step?: string][] = [
    ['sound', {}, 'go', 'core-fits'],
    ['at the upper mark', { reading: ohms(0.81) }, 'go', 'core-fits'],
    ['at the mark, by a coarse digit', { reading: ohms(0.8, 0.1) }, 'undecided', 'core-above-expected'],
    ['just above', { reading: ohms(0.82) }, 'undecided', 'core-above-expected', 'clean-and-repeat'],
    ['at the break', { reading: ohms(1.66) }, 'undecided', 'core-above-expected'],
    ['beyond', { reading: ohms(1.67) }, 'no-go', 'core-too-high', 'divide-the-run'],
    ['open', { reading: overOhms() }, 'no-go', 'core-open', 'divide-the-run'],
    ['over a range beyond the break', { reading: overOhms(200) }, 'no-go', 'core-open'],
    ['over a range that says nothing', { reading: overOhms(1) }, 'undecided', 'core-over-range', 'note-core-range'],
    ['OL with four leads', { reading: overOhms(), meter: 'four-leads' }, 'undecided', 'core-over-range'],
    ['beyond 2 Ω with four leads', { reading: overOhms(2), meter: 'four-leads' }, 'no-go', 'core-open'],
    ['on at both ends', { end: 'on' }, 'undecided', 'core-other-path-possible', 'take-one-end-off'],
    [
      'nobody says whether an end is off',
      { end: 'not-stated' },
      'undecided',
      'core-end-not-stated',
      'take-one-end-off',
    ],
    ['on at both ends, and open', { end: 'on', reading: overOhms() }, 'no-go', 'core-open'],
    ['on at both ends, and too high', { end: 'on', reading: ohms(1.67) }, 'no-go', 'core-too-high'],
    ['over 100 Ω, data not known', { reading: overOhms(100), metres: missing }, 'undecided', 'core-over-range'],
    ['over 200 Ω, data not known', { reading: overOhms(200), metres: missing }, 'no-go', 'core-open'],
    ['open, data not known', { reading: overOhms(), metres: missing }, 'no-go', 'core-open', 'measure-core-data'],
    ['half of the copper', { reading: ohms(0.27) }, 'go', 'core-fits'],
    ['less than half', { reading: ohms(0.26) }, 'undecided', 'core-below-expected', 'look-for-other-path'],
    ['a zero', { reading: ohms(0, 0.01) }, 'undecided', 'core-below-expected'],
    ['under range', { reading: underOhms(0.1) }, 'undecided', 'core-below-expected'],
    // Two cores: 1.064 Ω; pass up to 1.43 Ω, fail above 3.33 Ω.
    ['a pair', { way: 'pair', reading: ohms(1.42) }, 'go', 'core-fits'],
    ['a pair, just above', { way: 'pair', reading: ohms(1.44) }, 'undecided', 'core-above-expected'],
    // 5 m of 10 mm² have 0.00955 Ω: 20 A through the rest of 0.15 Ω are 56 W in a contact.
    [
      'a power core with a hot contact',
      { way: 'core', metres: metres(5), squareMillimetres: 10, reading: ohms(0.15), meter: 'four-leads' },
      'undecided',
      'core-above-expected',
      'clean-and-repeat',
    ],
    ['a pair, the reading of one', { way: 'pair', reading: ohms(0.53) }, 'undecided', 'core-below-expected'],
    ['a pair beyond', { way: 'pair', reading: ohms(3.4) }, 'no-go', 'core-too-high'],
    // 240 m of 10 mm²: 0.458 Ω.
    ['a long thick run', { metres: metres(240), squareMillimetres: 10, reading: ohms(0.6) }, 'go', 'core-fits'],
    ['a cross-section that is not listed', { squareMillimetres: 2.08 }, 'undecided', 'core-data-missing'],
    ['not measured', { reading: missing }, 'undecided', 'core-reading-missing', 'measure-core'],
    ['way not stated', { way: 'not-stated' }, 'undecided', 'core-way-not-stated', 'state-core-way'],
    ['meter not stated', { meter: 'not-stated' }, 'undecided', 'core-meter-not-stated', 'state-core-meter'],
    ['PE by multimeter', { meter: 'multimeter' }, 'go', 'core-by-multimeter', 'use-continuity-tester'],
    ['a coarse meter', { instrument: { percent: 60 } }, 'undecided', 'core-above-expected'],
  ];
  it.each(rows)('%s', (_, change, verdict, code, step) => {
    const { verdict: given, findings, next } = assess(change);
    expect([given, findings.map((one) => one.code)]).toEqual([verdict, expect.arrayContaining([code])]);
    if (step !== undefined) expect(next.map((one) => one.code)).toContain(step);
  });

  it('shows the copper at its temperature, and judges no other way', () => {
    // 0.532 · 309.5 / 254.5 Ω.
    const warm = assess({ temperature: celsius(75) });
    expect(found(warm.findings, 'core-at-temperature').ohms).toBeCloseTo(0.647, 3);
    expect(warm.verdict).toBe('go');
    expect(assess({ temperature: celsius(250) }).findings.map(({ code }) => code)).toEqual(['core-fits']);
  });

  it('judges PE as the insulation test does', () => {
    const conductor = { metres: 40, squareMillimetres: 1.5 };
    const same = { short: 'go', 'not-short': 'no-go', 'higher-than-expected': 'undecided' } as const;
    for (const figure of [0.3, 0.55, 0.81, 0.82, 1.5, 1.66, 1.67, 9]) {
      const judged = judgePe(ohms(figure, 0.01), conductor);
      expect([figure, assess({ reading: ohms(figure, 0.01) }).verdict]).toEqual([
        figure,
        same[judged as keyof typeof same],
      ]);
    }
  });
});
