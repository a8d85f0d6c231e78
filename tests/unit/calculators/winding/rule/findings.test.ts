import { describe, expect, it } from 'vitest';
import { assess, type Change, pairs, said, steps, uneven } from './measured.ts';

const all = 'UV VW WU';
const suspects = ['winding-suspect-star note', 'winding-suspect-delta note'];
const failed = ['winding-not-confirmed note', 'winding-failed note'];

describe('what is found, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, lines: string[], next: string[]][] = [
    ['alike', {}, 'go', [`winding-balanced pass ${all}`, 'winding-passed note'], []],
    [
      'a reading lacks',
      { readings: pairs('2.000 Ω | | 2.002 Ω') },
      'undecided',
      ['winding-incomplete undecided VW'],
      ['measure-pairs'],
    ],
    [
      'over-range on a low range',
      { readings: pairs('2.000 Ω | >1 Ω | 2.002 Ω') },
      'undecided',
      ['winding-range-not-noted undecided VW'],
      ['note-winding-range'],
    ],
    [
      'one pair open',
      { readings: pairs('2.000 Ω | OL | 2.002 Ω') },
      'no-go',
      ['winding-open fail VW', 'winding-open-alone caution VW', ...failed],
      ['repeat-pair', 'read-pairs-again', 'measure-at-motor'],
    ],
    [
      'two pairs open',
      { readings: pairs('2.000 Ω | OL | OL') },
      'no-go',
      ['winding-open fail VW WU', 'winding-open-phase note', ...failed],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'all open',
      { readings: pairs('OL | OL | OL') },
      'no-go',
      [`winding-open fail ${all}`, ...failed],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'one open and one not measured',
      { readings: pairs('2.000 Ω | OL | ') },
      'no-go',
      ['winding-incomplete undecided WU', 'winding-open fail VW', ...failed],
      ['measure-pairs', 'read-pairs-again', 'measure-at-motor'],
    ],
    [
      'unlike',
      uneven,
      'no-go',
      [`winding-unbalanced fail ${all}`, ...suspects, ...failed],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'unlike, and no winding stands out',
      { readings: pairs('2.000 Ω | 2.200 Ω | 2.400 Ω') },
      'no-go',
      [`winding-unbalanced fail ${all}`, 'winding-no-single-suspect note', ...failed],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'a pair that is the sum of the others',
      { readings: pairs('2.0000 Ω | 1.0000 Ω | 1.0000 Ω') },
      'no-go',
      [`winding-unbalanced fail ${all}`, 'winding-sum-of-others caution UV', ...failed],
      ['repeat-pair', 'read-pairs-again', 'measure-at-motor'],
    ],
    [
      'a pair that is more than the others',
      { readings: pairs('2.5000 Ω | 1.0000 Ω | 1.0000 Ω') },
      'no-go',
      [`winding-unbalanced fail ${all}`, 'winding-more-than-others caution UV', ...failed],
      ['repeat-pair', 'read-pairs-again', 'measure-at-motor'],
    ],
    [
      'between the limits',
      { readings: pairs('2.000 Ω | 2.000 Ω | 2.090 Ω') },
      'undecided',
      [`winding-between-limits undecided ${all}`, ...suspects],
      ['ask-for-surge-test'],
    ],
    [
      'too coarse',
      { readings: pairs('2.0 Ω | 2.0 Ω | 2.0 Ω') },
      'undecided',
      [`winding-too-coarse undecided ${all}`],
      ['use-milliohm-meter'],
    ],
    [
      'two leads at two ohms',
      { leads: 'zeroed' },
      'undecided',
      [`winding-needs-four-leads undecided ${all}`],
      ['use-four-leads'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, lines, next) => {
    expect(said(change)).toEqual(lines);
    expect(assess(change).verdict).toBe(verdict);
    expect(steps(change)).toEqual(next);
  });
});
