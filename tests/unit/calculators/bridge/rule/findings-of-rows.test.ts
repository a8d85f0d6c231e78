import { describe, expect, it } from 'vitest';
import { assess, type Change, plus, said, steps, worst } from './stage.ts';

const all = 'plusU plusV plusW';
const replace = ['replace-complete-drive', 'test-motor-and-cable'];
const open = plus('OL | OL | OL');

describe('what is found of rows, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, drive: string, lines: string[], next: string[]][] = [
    [
      'uneven',
      plus('470k | 410k | 471k'),
      'undecided',
      'open',
      [`rail-uneven undecided ${all}`],
      ['read-odd-again', 'compare-known-good'],
    ],
    [
      'uneven as its sister',
      { ...plus('470k | 410k | 471k'), ...worst('411k'), sister: 'alike' },
      'go',
      'sound',
      [`rail-as-sister pass ${all}`],
      ['test-insulation-next'],
    ],
    [
      'uneven as its sister, but read once',
      { ...plus('470k | 410k | 471k'), sister: 'alike' },
      'undecided',
      'open',
      [`rail-uneven undecided ${all}`],
      ['read-odd-again', 'compare-known-good'],
    ],
    [
      'uneven unlike its sister',
      { ...plus('470k | 410k | 471k'), ...worst('411k'), sister: 'differs' },
      'no-go',
      'convicted',
      [`rail-unbalanced fail ${all}`, 'bridge-failed note'],
      replace,
    ],
    [
      'balanced unlike its sister',
      { sister: 'differs' },
      'undecided',
      'open',
      [`rail-balanced pass ${all}`, 'sister-differs undecided sister'],
      ['compare-known-good'],
    ],
    [
      'a leak',
      plus('470k | 2k | 471k'),
      'no-go',
      'suspect',
      [`rail-unbalanced fail ${all}`, 'bridge-suspect note'],
      ['keep-power-off', 'read-odd-again'],
    ],
    [
      'a leak, twice',
      { ...plus('470k | 2k | 471k'), ...worst('2k') },
      'no-go',
      'convicted',
      [`rail-unbalanced fail ${all}`, 'bridge-failed note'],
      replace,
    ],
    [
      'all three otherwise',
      plus('470k | 900k | 200k'),
      'no-go',
      'suspect',
      [`rail-unbalanced fail ${all}`, 'bridge-more-than-one caution', 'bridge-suspect note'],
      ['keep-power-off', 'read-row-again'],
    ],
    [
      'a row that climbs',
      plus('470k | 600k | 800k', '900k'),
      'undecided',
      'open',
      ['rail-first-replaced caution plusU plusAgain', `rail-still-climbing undecided ${all} plusAgain`],
      ['read-row-again'],
    ],
    [
      'the first odd and not read again',
      plus('300k | 470k | 471k', ''),
      'undecided',
      'open',
      [`rail-first-odd undecided ${all} plusAgain`],
      ['read-first-again'],
    ],
    [
      'the first odd, and good when read again',
      plus('300k | 470k | 471k', '470k'),
      'go',
      'sound',
      ['rail-first-replaced caution plusU plusAgain', `rail-balanced pass ${all}`],
      ['test-insulation-next'],
    ],
    [
      'the first a short, and none when read again',
      plus('0.3 Ω | 470k | 471k', '470k'),
      'undecided',
      'open',
      ['rail-first-contradicts undecided plusU plusAgain', `rail-balanced pass ${all}`],
      ['read-row-again'],
    ],
    [
      'open',
      open,
      'go',
      'sound',
      [`rail-open pass ${all}`, 'rail-range-not-noted caution plusU'],
      ['use-higher-range', 'test-insulation-next'],
    ],
    [
      'open above a noted range',
      plus('>1M | >1M | >1M'),
      'go',
      'sound',
      [`rail-open pass ${all}`],
      ['test-insulation-next'],
    ],
    [
      'a range too low to be open',
      plus('>100k | >100k | >100k'),
      'undecided',
      'open',
      [`rail-range-too-low undecided ${all}`],
      ['use-higher-range'],
    ],
    [
      'too close to the tolerance for the meter',
      { ...plus('470k | 480k | 500k'), instrument: { percent: 2 } },
      'undecided',
      'open',
      [`rail-too-close undecided ${all}`],
      ['repeat-more-exactly'],
    ],
    [
      'the second reading of nothing odd that does not fit',
      worst('100k'),
      'undecided',
      'open',
      [`rail-balanced pass ${all}`, 'again-does-not-fit undecided worstAgain'],
      ['read-third-time'],
    ],
    [
      'the second reading of nothing odd that fits',
      worst('470k'),
      'go',
      'sound',
      [`rail-balanced pass ${all}`],
      ['test-insulation-next'],
    ],
    [
      'the second reading of an odd one that is not odd',
      { ...plus('470k | 300k | 471k'), ...worst('470k') },
      'undecided',
      'open',
      [`rail-uneven undecided ${all}`, 'again-contradicts undecided plusV worstAgain'],
      ['read-odd-again', 'compare-known-good', 'read-third-time'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, drive, lines, next) => {
    expect(said(change)).toEqual(lines);
    expect(assess(change)).toMatchObject({ verdict, drive });
    expect(steps(change)).toEqual(next);
  });
});
