import { describe, expect, it } from 'vitest';
import { assessCableLength } from '../../../../../src/calculators/cable-length/rule/assess.ts';
import type { CableLengthInput } from '../../../../../src/calculators/cable-length/rule/input.ts';
import { coreInsulation } from '../../../../../src/kernel/electrics/cable-insulation.ts';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
} from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';

const millimetres = (value: number, resolution = 0.01): Reading => ({ kind: 'value', value, unit: 'mm', resolution });
const metres = (value: number, resolution = 1): Reading => ({ kind: 'value', value, unit: 'm', resolution });

/** 30 m of a core of 2.5 mm²: at least 1 GΩ as new, so that the point after a trip holds. At the tables' temperature. */
const short: CableLengthInput = {
  insulation: 'pvc',
  insulationDiameter: millimetres(3.4),
  conductorDiameter: millimetres(2),
  length: metres(30),
  reading: ohms(9e9),
  temperature: celsius(15.6),
};
/** At least 35 MΩ as new. */
const long = { length: metres(1000) };
type Change = Partial<CableLengthInput>;
const assess = (change: Change) => assessCableLength({ ...short, ...change });
const said = (change: Change) => assess(change).findings.map(lineWithLimits);
const steps = (change: Change) => assess(change).next.map(({ code }) => code);

const used = 'after-trip-point halving-rule cable-constant-pvc cable-conversion-thermoplastic';
const holds = ['point-still-holds note: after-trip-point', 'constant-recalled note: cable-constant-pvc'];
const holdsNoMore = ['point-holds-no-more caution: after-trip-point', 'constant-recalled note: cable-constant-pvc'];
const asked = ['measure-cable-temperature', 'repeat-cable-exactly', 'compare-cores'];

describe('which readings and limits each finding names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, lines: string[], next: string[]][] = [
    ['short and high', {}, 'go', [`cable-passes-both pass reading: ${used}`, ...holds], []],
    [
      'cross-linked, without a table of temperatures',
      { insulation: 'xlpe', reading: ohms(9e12) },
      'go',
      [
        'cable-passes-both pass reading: after-trip-point halving-rule cable-constant-xlpe',
        'point-still-holds note: after-trip-point',
        'constant-recalled note: cable-constant-xlpe',
      ],
      [],
    ],
    [
      'short, below a new cable',
      { reading: ohms(400e6) },
      'go',
      [`cable-below-new pass reading: ${used}`, ...holds],
      ['compare-with-earlier'],
    ],
    ['short and low', { reading: ohms(60e6) }, 'no-go', [`cable-fails fail reading: ${used}`, ...holds], []],
    [
      'long and low',
      { ...long, reading: ohms(60e6) },
      'undecided',
      [`cable-long-enough-to-explain undecided reading: ${used}`, ...holdsNoMore],
      ['compare-cores', 'test-parts-of-run', 'compare-with-earlier'],
    ],
    [
      'long and cold: no length explains what warmth would bring down',
      { ...long, reading: ohms(150e6), temperature: celsius(5) },
      'undecided',
      [`cable-too-close undecided reading: ${used}`, ...holdsNoMore],
      asked,
    ],
    [
      'without a temperature',
      { reading: ohms(60e6), temperature: missing },
      'undecided',
      ['cable-temperature-missing undecided', `cable-too-close undecided reading: ${used}`, ...holds],
      asked,
    ],
    [
      'below the minimum of machines',
      { reading: ohms(0.9e6) },
      'no-go',
      ['cable-below-machine-minimum fail reading: machine-minimum-60204', ...holds],
      [],
    ],
    [
      'below the minimum of machines, of unknown length',
      { reading: ohms(0.9e6), length: missing },
      'no-go',
      ['cable-below-machine-minimum fail reading: machine-minimum-60204'],
      [],
    ],
    ['no reading', { reading: missing }, 'undecided', ['cable-reading-missing undecided', ...holds], ['measure-cable']],
    ['no length', { length: missing }, 'undecided', ['cable-data-missing undecided'], ['measure-cable-data']],
    [
      'neither length nor reading',
      { length: missing, reading: missing },
      'undecided',
      ['cable-data-missing undecided', 'cable-reading-missing undecided'],
      ['measure-cable-data', 'measure-cable'],
    ],
    [
      'diameters exchanged',
      { insulationDiameter: millimetres(2), conductorDiameter: millimetres(3.4) },
      'undecided',
      ['diameters-impossible undecided'],
      ['measure-cable-data'],
    ],
    [
      'an impossible reading',
      { reading: ohms(-1) },
      'undecided',
      ['figure-impossible undecided reading'],
      ['read-figure-again'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, lines, next) => {
    expect(assess(change).verdict).toBe(verdict);
    expect(said(change)).toEqual(lines);
    expect(steps(change)).toEqual(next);
  });

  it.each<[string, Change]>([
    ['no diameter over the insulation', { insulationDiameter: missing }],
    ['no diameter of the conductor', { conductorDiameter: missing }],
    ...(['length', 'insulationDiameter', 'conductorDiameter'] as const).flatMap((name): [string, Change][] => [
      [`${name} as a lower bound`, { [name]: overOhms(30) }],
      [`${name} as an upper bound`, { [name]: underOhms(30) }],
      [`${name} over-range`, { [name]: overOhms() }],
    ]),
  ])('%s is missing data', (_, change) => {
    expect(said(change)).toEqual(['cable-data-missing undecided']);
    expect(assess(change).expected).toBeUndefined();
  });

  it.each<[string, Change]>([
    ['a conductor of one last digit', { conductorDiameter: millimetres(0.01) }],
    ['a length of one last digit', { length: metres(1) }],
    ['diameters that may be alike by their last digits', { conductorDiameter: millimetres(3.39) }],
  ])('%s may be zero or impossible: nothing is expected of such a cable', (_, change) => {
    expect(said(change)).toEqual(['diameters-impossible undecided']);
  });
});

describe('the figures', () => {
  /** R = K·log10(D/d)/L with a digit each way: K of new PVC is 500 to 2000 MΩ·1000 ft, recalled from memory. */
  const least = (500e6 * Math.log10(3.39 / 2.01) * 304.8) / 31;
  const most = (2000e6 * Math.log10(3.41 / 1.99) * 304.8) / 29;

  it('of a new cable are as wide as its constant and the last digits, whatever else is found', () => {
    for (const change of [{}, { reading: ohms(60e6) }, { reading: missing }, { reading: ohms(5e3) }]) {
      const { expected } = assess(change);
      expect([expected?.lo, expected?.hi]).toEqual([expect.closeTo(least, 0), expect.closeTo(most, 0)]);
    }
  });

  it('are absent if they are not known', () => {
    const keys = (change: Change) => Object.keys(assess(change)).slice(3);
    expect(keys({})).toEqual(['expected', 'corrected']);
    expect(keys({ reading: missing })).toEqual(['expected']);
    expect(keys({ length: missing })).toEqual([]);
    expect(keys({ reading: ohms(5e3) })).toEqual(['expected']);
    expect(keys({ reading: ohms(5e3), length: missing })).toEqual([]);
  });

  it('stand beside the point and the minimum that they are compared with', () => {
    const { pointOhms, newOhms } = found(assess({ reading: ohms(60e6) }).findings, 'cable-fails');
    expect([pointOhms, newOhms.lo]).toEqual([100e6, expect.closeTo(least, 0)]);
    expect(found(assess({ reading: ohms(5e3) }).findings, 'cable-below-machine-minimum').minimumOhms).toBe(1e6);
  });

  it('of the length up to which the point holds: 500 · log10(1.7) · 304.8 m / 100', () => {
    const { holdsToMetres, lengthMetres } = found(assess({}).findings, 'point-still-holds');
    expect([holdsToMetres, lengthMetres]).toEqual([expect.closeTo(351.2, 1), 30]);
  });
});

describe('exactly at a limit', () => {
  it('as much as any new cable has passes both limits', () => {
    const most = assess({}).expected?.hi ?? Number.NaN;
    expect(said({ reading: ohms(most) })[0]).toContain('cable-passes-both');
    expect(said({ reading: ohms(most - 1) })[0]).toContain('cable-below-new');
  });

  it('as little as a new cable of the length may have does not fail', () => {
    const least = assess(long).expected?.lo ?? Number.NaN;
    expect(said({ ...long, reading: ohms(least) })[0]).toContain('cable-long-enough-to-explain');
    expect(said({ ...long, reading: ohms(least - 1) })[0]).toContain('cable-fails');
  });

  it('a length whose least new value is the point itself: the point holds, and explains nothing below it', () => {
    const exact = {
      insulationDiameter: millimetres(3.4, 0),
      conductorDiameter: millimetres(2, 0),
      length: metres(coreInsulation(500, 3.4, 2, 1) / 100e6, 0),
    };
    expect(assess(exact).expected?.lo).toBe(100e6);
    expect(said(exact)).toContain('point-still-holds note: after-trip-point');
    // 90 MΩ at 20 °C is 120 MΩ at the temperature of the tables.
    expect(said({ ...exact, reading: ohms(90e6), temperature: celsius(20) })[0]).toContain('cable-too-close');
  });
});
