import { describe, expect, it } from 'vitest';
import { missing, ohms } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, find, readingsOf, said, steps, type Texts } from './curve.ts';

const rest = ['temperature-stated note', 'never-on-drive note', 'discharge-after-test note: discharge-after-test'];
const both = 't60 t600';
const rises = `curve-rises note ${both}`;
const flat = `curve-flat caution ${both}: curve-level-change`;
const bfh = 'polarization-index-bfh';
const again = 'compare-with-earlier-curve';
const randomWound: Change = { windingKind: 'random-wound' };

describe('which readings and limits each finding names, and what comes next', () => {
  const rows: [what: string, Texts, Change, verdict: string, lines: string[], next: string[]][] = [
    ['nothing', {}, {}, 'undecided', [`index-incomplete undecided ${both}`, ...rest], ['read-to-ten-minutes']],
    [
      'one reading',
      { 60: '400M' },
      {},
      'undecided',
      [`index-incomplete undecided ${both}`, ...rest],
      ['read-to-ten-minutes'],
    ],
    [
      'ten minutes without the first',
      { 600: '1200M' },
      {},
      'undecided',
      [`index-incomplete undecided ${both}`, ...rest],
      ['read-to-ten-minutes'],
    ],
    ['3', { 60: '400M', 600: '1200M' }, {}, 'go', [`index-meets pass ${both}: ${bfh}`, rises, ...rest], []],
    [
      '1.75 of class A',
      { 60: '400M', 600: '700M' },
      { thermalClass: 'A' },
      'go',
      [`index-meets pass ${both}: polarization-index-a`, rises, ...rest],
      [],
    ],
    [
      '1.25',
      { 60: '400M', 600: '500M' },
      {},
      'no-go',
      [`index-below fail ${both}: ${bfh}`, rises, ...rest],
      ['clean-dry-repeat', again],
    ],
    [
      '2 by rounded digits',
      { 60: '400M', 600: '800M' },
      {},
      'undecided',
      [`index-too-close undecided ${both}: ${bfh}`, rises, ...rest],
      ['repeat-with-accuracy', again],
    ],
    [
      'random-wound',
      { 60: '400M', 600: '1200M' },
      randomWound,
      'undecided',
      [`index-not-for-random-wound undecided ${both}: ${bfh}`, rises, ...rest],
      ['judge-one-minute', again],
    ],
    [
      'random-wound, above 5 GΩ',
      { 60: '6.00G', 600: '20.00G' },
      randomWound,
      'undecided',
      [`index-says-nothing undecided ${both}: polarization-index-high-value`, rises, ...rest],
      ['judge-one-minute', again],
    ],
    [
      'a low level',
      { 60: '50M', 600: '200M' },
      {},
      'undecided',
      [`one-minute-low undecided ${both}: one-minute-floor`, `index-meets pass ${both}: ${bfh}`, rises, ...rest],
      ['judge-one-minute'],
    ],
    [
      'above 8',
      { 60: '400M', 600: '4000M' },
      {},
      'go',
      [`index-meets pass ${both}: ${bfh}`, `index-dry caution ${both}: polarization-index-dry`, rises, ...rest],
      [],
    ],
    [
      'a level curve',
      { 60: '400M', 600: '410M' },
      {},
      'no-go',
      [`index-below fail ${both}: ${bfh}`, flat, ...rest],
      ['clean-dry-repeat', again],
    ],
    [
      'a level curve of a random-wound machine',
      { 60: '400M', 600: '410M' },
      randomWound,
      'undecided',
      [`index-not-for-random-wound undecided ${both}: ${bfh}`, flat, ...rest],
      ['judge-one-minute', again, 'clean-dry-repeat'],
    ],
    [
      'a curve that falls slowly',
      { 60: '400M', 600: '390M' },
      randomWound,
      'undecided',
      [`index-not-for-random-wound undecided ${both}: ${bfh}`, `curve-falls caution ${both}`, ...rest],
      ['judge-one-minute', again, 'clean-dry-repeat'],
    ],
    [
      'a curve that goes up, down a little, and up',
      { 30: '200M', 60: '400M', 120: '380M', 600: '1200M' },
      {},
      'go',
      [
        `index-meets pass ${both}: ${bfh}`,
        'ratio-stated note t30 t60: absorption-ratio-span',
        'curve-uneven caution t30 t60 t120 t600',
        ...rest,
      ],
      ['clean-dry-repeat'],
    ],
    [
      'a curve that breaks twice',
      { 60: '400M', 180: '200M', 300: '210M', 600: '1200M' },
      {},
      'undecided',
      [
        `index-meets pass ${both}: ${bfh}`,
        'curve-uneven caution t60 t180 t300 t600',
        'curve-breaks undecided t180 t300: curve-level-change',
        ...rest,
      ],
      ['clean-dry-repeat', 'repeat-steady'],
    ],
  ];
  it.each(rows)('%s', (_, texts, change, verdict, lines, next) => {
    expect(assess(texts, change).verdict).toBe(verdict);
    expect(said(texts, change)).toEqual(lines);
    expect(steps(texts, change)).toEqual(['discharge-winding', ...next]);
  });

  it('a reading that is stated as missing is not there', () => {
    const absent = { 60: '400M', 600: '1200M' };
    const readings = { 15: missing, 30: missing, 120: missing, ...readingsOf(absent) };
    expect(assess({}, { readings })).toEqual(assess(absent));
    const short = { 60: missing, ...readingsOf({ 30: '300M', 120: '450M' }), 600: missing };
    expect(assess({}, { readings: short })).toEqual(assess({ 30: '300M', 120: '450M' }));
  });

  it('a figure that no tester shows is judged no further', () => {
    const readings = { 60: ohms(-4e8), 600: ohms(12e8) };
    expect(assess({}, { readings }).verdict).toBe('undecided');
    expect(said({}, { readings })).toEqual(['figure-impossible undecided readings.60']);
    expect(steps({}, { readings })).toEqual(['discharge-winding', 'read-figure-again']);
  });
});

describe('the temperature', () => {
  it('is stated with its figure', () => {
    expect(find({ 60: '400M' }, 'temperature-stated').celsius).toBe(25);
  });

  it('is asked for if it is missing or only a bound', () => {
    for (const temperature of [missing, typed('OL')]) {
      const change = { temperature };
      expect(said({ 60: '400M', 600: '1200M' }, change)).toContain('temperature-missing caution');
      expect(steps({ 60: '400M', 600: '1200M' }, change)).toEqual(['discharge-winding', 'state-temperature']);
    }
  });
});

it('the discharge takes four times as long as the voltage was on, and never less than four minutes', () => {
  const minutes = (texts: Texts) => find(texts, 'discharge-after-test').minutes;
  expect([minutes({}), minutes({ 30: '300M' }), minutes({ 60: '400M', 300: '900M' })]).toEqual([4, 4, 20]);
});
