import { describe, expect, it } from 'vitest';
import { coreMarks } from '../../../../../src/calculators/core-resistance/rule/assess.ts';
import {
  celsius,
  metres,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
} from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, sound } from './sound.ts';

// Table: IEC 60228, class 5, recalled. The allowances are the project's judgement.

const ways = [
  ['pe', 'pe-contacts', 0.532, 0.815, 1.665],
  ['core', 'winding-joint', 0.532, 0.715, 1.665],
  ['pair', 'winding-joint', 1.064, 1.43, 3.33],
] as const;

describe.each(ways)('%s', (way, contacts, table, most, beyond) => {
  const marks = coreMarks({ ...sound, way });
  const limits = `pe-core-resistance pe-core-tolerance ${contacts} pe-dead-short`;
  const own = { table: marks?.table ?? 0, most: marks?.most ?? 0, beyond: marks?.beyond ?? 0 };
  const above = (figure: number) => ohms(figure * (1 + 1e-9));
  const below = (figure: number) => ohms(figure * (1 - 1e-9));

  it('has the marks that are worked out by hand', () => {
    expect(marks).toEqual({
      table: expect.closeTo(table, 9),
      most: expect.closeTo(most, 9),
      beyond: expect.closeTo(beyond, 9),
    });
  });

  const rows: [what: string, Reading, start: string][] = [
    ['half of the copper', ohms(own.table / 2), 'core-fits pass'],
    ['less', below(own.table / 2), 'core-below-expected undecided'],
    ['half of the copper, by a coarse digit', ohms(own.table / 2, 0.01), 'core-below-expected undecided'],
    ['what it explains', ohms(own.most), 'core-fits pass'],
    ['more', above(own.most), 'core-above-expected undecided'],
    ['what it explains, by a coarse digit', ohms(own.most, 0.01), 'core-above-expected undecided'],
    ['the break', ohms(own.beyond), 'core-above-expected undecided'],
    ['more', above(own.beyond), 'core-too-high fail'],
    // Beyond the break the figure itself counts.
    ['more, by a coarse digit', ohms(own.beyond + 0.1, 1), 'core-too-high fail'],
    ['under what it explains', underOhms(own.most), 'core-below-expected undecided'],
    ['under more', underOhms(own.most + 0.1), 'core-above-expected undecided'],
  ];
  it.each(rows)('%s', (_, reading, start) => {
    const { findings } = assess({ way, reading });
    expect(findings.map(lineWithLimits)).toEqual([`${start} reading: ${limits}`]);
    expect(findings[0]).toMatchObject(own);
  });

  it('over the break is open, over less says nothing', () => {
    const open = [`core-open fail reading: ${limits} open-on-any-range`];
    expect(assess({ way, reading: overOhms(own.beyond + 0.1) }).findings.map(lineWithLimits)).toEqual(open);
    expect(assess({ way, reading: overOhms() }).findings.map(lineWithLimits)).toEqual(open);
    for (const reading of [overOhms(own.beyond), overOhms(0)])
      expect(assess({ way, reading }).findings.map(lineWithLimits)).toEqual(['core-over-range undecided reading']);
  });
});

describe('what the meter and its range say', () => {
  const rows: [what: string, Change, code: string][] = [
    ['by a meter of 40 %', { instrument: { percent: 40 } }, 'core-fits'],
    ['by a meter of 50 %', { instrument: { percent: 50 } }, 'core-above-expected'],
    ['beyond the break by a meter of 50 %', { reading: ohms(3), instrument: { percent: 50 } }, 'core-above-expected'],
    ['more', { reading: ohms(4), instrument: { percent: 50 } }, 'core-too-high'],
    ['OL of four leads', { meter: 'four-leads', reading: overOhms() }, 'core-over-range'],
    ['OL of a meter nobody names', { meter: 'not-stated', reading: overOhms() }, 'core-open'],
    ['OL of a multimeter', { meter: 'multimeter', reading: overOhms() }, 'core-open'],
    [
      'OL of four leads up to 2 Ω',
      { meter: 'four-leads', reading: overOhms(), instrument: { upperLimit: 2 } },
      'core-open',
    ],
    ['over 2 Ω of four leads', { meter: 'four-leads', reading: overOhms(2) }, 'core-open'],
    ['over 1 Ω of four leads', { meter: 'four-leads', reading: overOhms(1) }, 'core-over-range'],
    ['more than its highest figure', { reading: ohms(2), instrument: { upperLimit: 1 } }, 'core-above-expected'],
    ['over 150 Ω, data not known', { metres: missing, reading: overOhms(150) }, 'core-over-range'],
    ['over more, data not known', { metres: missing, reading: overOhms(150.1) }, 'core-open'],
    // 2400 m of 0.75 mm²: 62.4 Ω, 79 Ω to the break.
    [
      'over 100 Ω of a long core',
      { metres: metres(2400), squareMillimetres: 0.75, reading: overOhms(100) },
      'core-open',
    ],
    // 5000 m: 163.5 Ω to the break.
    ['OL of a longer one', { metres: metres(5000), squareMillimetres: 0.75, reading: overOhms() }, 'core-over-range'],
  ];
  it.each(rows)('%s', (_, change, code) => {
    const judged = assess(change).findings.filter(({ readings }) => readings.includes('reading'));
    expect(judged.map((one) => one.code)).toEqual([code]);
  });
});

describe('what is only shown', () => {
  const shown = (change: Change) =>
    assess(change).findings.flatMap((one) => (one.code === 'core-at-temperature' ? [one] : []));

  it('the copper at its temperature, in the range of the formula', () => {
    expect(shown({ temperature: celsius(20) })).toMatchObject([{ celsius: 20, ohms: expect.closeTo(0.532, 9) }]);
    // 0.532 · 214.5 / 254.5 and · 414.5 / 254.5.
    expect(shown({ temperature: celsius(-20) })).toMatchObject([{ celsius: -20, ohms: expect.closeTo(0.4484, 4) }]);
    expect(shown({ temperature: celsius(180) })).toMatchObject([{ celsius: 180, ohms: expect.closeTo(0.8665, 4) }]);
    for (const temperature of [celsius(-20.1), celsius(180.1), missing]) expect(shown({ temperature })).toEqual([]);
    expect(shown({ temperature: celsius(20), squareMillimetres: 2.08 })).toEqual([]);
  });

  it('that a multimeter tests no protective conductor', () => {
    const cautions = (change: Change) =>
      assess(change).findings.flatMap(({ code, severity }) => (severity === 'caution' ? [code] : []));
    expect(cautions({ meter: 'multimeter' })).toEqual(['core-by-multimeter']);
    for (const way of ['core', 'pair', 'not-stated'] as const)
      expect(cautions({ meter: 'multimeter', way })).toEqual([]);
    for (const meter of ['continuity-tester', 'four-leads', 'not-stated'] as const)
      expect(cautions({ meter })).toEqual([]);
  });
});

it('no marks without a length and a listed cross-section', () => {
  const { squareMillimetres: _, ...without } = sound;
  for (const input of [without, { ...sound, metres: missing }, { ...sound, squareMillimetres: 2.08 }])
    expect(coreMarks(input)).toBeUndefined();
});
