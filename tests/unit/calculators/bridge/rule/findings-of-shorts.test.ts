import { describe, expect, it } from 'vitest';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, minus, plus, said, steps, worst } from './stage.ts';

const all = 'plusU plusV plusW';
const replace = ['replace-complete-drive', 'test-motor-and-cable'];

describe('what is found of shorts, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, drive: string, lines: string[], next: string[]][] = [
    ['sound', {}, 'go', 'sound', [`rail-balanced pass ${all}`], ['test-insulation-next']],
    [
      'a reading lacks',
      plus('470k | | 471k'),
      'undecided',
      'open',
      ['rail-incomplete undecided plusV'],
      ['measure-missing'],
    ],
    [
      'a short',
      plus('470k | 0.3 Ω | 471k'),
      'no-go',
      'suspect',
      ['rail-short fail plusV', 'bridge-suspect note'],
      ['keep-power-off', 'read-odd-again'],
    ],
    [
      'a short, twice',
      { ...plus('470k | 0.3 Ω | 471k'), ...worst('0.4 Ω') },
      'no-go',
      'convicted',
      ['rail-short fail plusV', 'bridge-failed note'],
      replace,
    ],
    [
      'a short on each rail',
      { ...plus('470k | 0.3 Ω | 471k'), ...minus('47k | 0.4 Ω | 47k') },
      'no-go',
      'suspect',
      ['rail-short fail plusV', 'rail-short fail minusV', 'bridge-more-than-one caution', 'bridge-suspect note'],
      ['keep-power-off', 'read-odd-again'],
    ],
    [
      'a short that unbalances the other rail',
      { ...plus('470k | 0.3 Ω | 471k'), ...minus('47k | 80k | 47k') },
      'no-go',
      'suspect',
      ['rail-short fail plusV', 'rail-unbalanced-by-short caution minusU minusV minusW', 'bridge-suspect note'],
      ['keep-power-off', 'read-odd-again'],
    ],
    [
      'three shorts',
      plus('8 Ω | 8 Ω | 8 Ω'),
      'undecided',
      'open',
      [`rail-all-short undecided ${all}`],
      ['exchange-leads'],
    ],
    [
      'three shorts, and with the leads exchanged',
      { ...plus('8 Ω | 8 Ω | 8 Ω'), plusExchanged: typed('8 Ω') },
      'no-go',
      'convicted',
      ['rail-short-both-ways fail plusU plusExchanged', 'bridge-failed note'],
      replace,
    ],
    [
      'three diodes that conduct',
      { ...plus('8 Ω | 8 Ω | 8 Ω'), plusExchanged: typed('470k') },
      'undecided',
      'open',
      ['rail-read-forward undecided plusU plusExchanged'],
      ['type-exchanged-row'],
    ],
    [
      'an under-range that may be a short',
      plus('470k | <500k | 471k'),
      'undecided',
      'open',
      ['rail-short-possible undecided plusV', `rail-too-close undecided ${all}`],
      ['repeat-short', 'repeat-more-exactly'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, drive, lines, next) => {
    expect(said(change)).toEqual(lines);
    expect(assess(change)).toMatchObject({ verdict, drive });
    expect(steps(change)).toEqual(next);
  });
});
