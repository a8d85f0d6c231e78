import { describe, expect, it } from 'vitest';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, high, pairs, said, steps, uneven } from './measured.ts';

const all = 'UV VW WU';
const suspects = ['winding-suspect-star note', 'winding-suspect-delta note'];
const again = (text: string): Change => ({ again: pairs(text) });
const same = again('2.000 Ω | 2.400 Ω | 2.400 Ω');
const alike = again('2.000 Ω | 2.004 Ω | 2.002 Ω');
const againAll = 'againUV againVW againWU';
const joint = (text: string): Change => ({ acrossJoint: typed(text) });

describe('what a second set and the connector add, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, lines: string[], next: string[]][] = [
    [
      'a second set that fails alike',
      { ...uneven, ...same },
      'no-go',
      [`winding-unbalanced fail ${all}`, ...suspects, `winding-again-confirms note ${againAll}`, 'winding-failed note'],
      ['measure-at-motor'],
    ],
    [
      'a second set that passes',
      { ...uneven, ...alike },
      'undecided',
      [`winding-unbalanced undecided ${all}`, ...suspects, `winding-again-passes undecided ${againAll}`],
      ['find-contact'],
    ],
    [
      'a second set that fails where the first passes',
      same,
      'undecided',
      [`winding-balanced pass ${all}`, `winding-again-fails undecided ${againAll}`],
      ['find-contact'],
    ],
    [
      'a second set that fails where the first is unfinished',
      { readings: pairs('2.000 Ω | | 2.002 Ω'), ...same },
      'no-go',
      ['winding-incomplete undecided VW', `winding-again-fails fail ${againAll}`, 'winding-failed note'],
      ['measure-pairs', 'find-contact', 'measure-at-motor'],
    ],
    [
      'a second set with another odd pair',
      { ...uneven, ...again('2.400 Ω | 2.000 Ω | 2.400 Ω') },
      'no-go',
      [
        `winding-unbalanced fail ${all}`,
        ...suspects,
        `winding-again-differs caution ${againAll}`,
        'winding-failed note',
      ],
      ['find-contact', 'measure-at-motor'],
    ],
    [
      'a second set that was begun, beside a pass',
      again('2.000 Ω | | '),
      'undecided',
      [`winding-balanced pass ${all}`, `winding-again-unclear undecided ${againAll}`],
      ['read-pairs-again'],
    ],
    [
      'a second set that was begun, beside a fail',
      { ...uneven, ...again('2.000 Ω | | ') },
      'no-go',
      [`winding-unbalanced fail ${all}`, ...suspects, `winding-again-unclear note ${againAll}`, 'winding-failed note'],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'a second set that passes as the first',
      alike,
      'go',
      [`winding-balanced pass ${all}`, `winding-again-confirms note ${againAll}`, 'winding-passed note'],
      [],
    ],
    [
      'a bad connector',
      { ...uneven, ...joint('0.3 Ω') },
      'no-go',
      [
        `winding-unbalanced fail ${all}`,
        ...suspects,
        'winding-not-confirmed note',
        'winding-joint-bad fail acrossJoint',
        'winding-failed note',
      ],
      ['read-pairs-again', 'mend-joint', 'measure-at-motor'],
    ],
    [
      'a good connector',
      { ...uneven, ...joint('0.001 Ω') },
      'no-go',
      [
        `winding-unbalanced fail ${all}`,
        ...suspects,
        'winding-not-confirmed note',
        'winding-joint-good note acrossJoint',
        'winding-failed note',
      ],
      ['read-pairs-again', 'measure-at-motor'],
    ],
    [
      'a connector that two leads can’t judge',
      { ...high, leads: 'zeroed', ...joint('0.01 Ω') },
      'undecided',
      [`winding-balanced pass ${all}`, 'winding-joint-unclear undecided acrossJoint'],
      ['use-four-leads'],
    ],
    [
      'two leads, twice the same and two pairs odd',
      { leads: 'zeroed', readings: pairs('20.00 Ω | 24.00 Ω | 24.00 Ω'), ...again('20.00 Ω | 24.00 Ω | 24.00 Ω') },
      'no-go',
      [
        `winding-unbalanced fail ${all}`,
        ...suspects,
        `winding-again-confirms note ${againAll}`,
        'winding-contact-possible note',
        'winding-failed note',
      ],
      ['use-four-leads', 'measure-at-motor'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, lines, next) => {
    expect(said(change)).toEqual(lines);
    expect(assess(change).verdict).toBe(verdict);
    expect(steps(change)).toEqual(next);
  });
});
