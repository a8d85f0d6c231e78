import { describe, expect, it } from 'vitest';
import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, find, minus, plus, steps, worst } from './stage.ts';

const short: Change = { ...plus('470k | 0.3 Ω | 471k'), ...worst('0.4 Ω') };
const once: Change = plus('470k | 0.3 Ω | 471k');
/** A contact, a broken track or the meter: no switch makes a reading higher. */
const highMinus = minus('47k | 200k | 47k');
const bothWays: Change = { ...plus('500 Ω | 500 Ω | 500 Ω'), plusExchanged: typed('500 Ω') };

describe('what a conviction lacks, and the steps to it', () => {
  const rows: [what: string, Change, lacking: string[], next: string[]][] = [
    [
      'the leads may be on',
      { ...short, motorLeads: 'not-stated' },
      ['motor-leads-off'],
      ['state-motor-leads', 'keep-power-off'],
    ],
    [
      'something may hang on the bus',
      { ...short, alsoOnBus: 'something' },
      ['nothing-else-on-bus'],
      ['keep-power-off', 'clear-the-bus'],
    ],
    [
      'a sound sister reads the same',
      { ...short, sister: 'alike' },
      ['unlike-sister'],
      ['keep-power-off', 'compare-known-good'],
    ],
    ['a short was read once', once, ['second-reading'], ['keep-power-off', 'read-odd-again']],
    [
      'a leak in a row that was not read twice at U',
      plus('470k | 2k | 471k', ''),
      ['steady-first'],
      ['keep-power-off', 'read-first-again', 'read-odd-again'],
    ],
    [
      'a row of which no two agree',
      plus('470k | 900k | 200k'),
      ['row-that-stands'],
      ['keep-power-off', 'read-row-again'],
    ],
    ['a reading that is high', highMinus, ['low-reading'], ['keep-power-off', 'read-odd-again', 'compare-known-good']],
    [
      'a reading too high for a leak, and no sister',
      plus('470k | 100k | 471k'),
      ['sound-sister'],
      ['keep-power-off', 'read-odd-again', 'compare-known-good'],
    ],
    [
      'the same unlike its sister, once',
      { ...plus('470k | 100k | 471k'), sister: 'differs' },
      ['second-reading'],
      ['keep-power-off', 'read-odd-again'],
    ],
    ['a short both ways of more than metal', bothWays, ['second-reading'], ['keep-power-off', 'read-odd-again']],
    [
      'the same beside a bus that may be short',
      { ...bothWays, dcBus: typed('500 Ω') },
      ['second-reading'],
      ['clear-the-bus', 'read-bus-again', 'keep-power-off', 'read-odd-again'],
    ],
  ];
  it.each(rows)('%s', (_, change, lacking, next) => {
    expect(find(change, 'bridge-suspect').lacking).toEqual(lacking);
    expect(assess(change)).toMatchObject({ verdict: 'no-go', drive: 'suspect' });
    expect(steps(change)).toEqual(next);
  });

  it.each<[what: string, Change]>([
    ['a short', once],
    ['the bus', { dcBus: typed('0.3 Ω') }],
    ['a short both ways', bothWays],
    ['an odd one unlike its sister', { ...plus('470k | 100k | 471k'), sister: 'differs' }],
  ])('is the least of what stands: %s read once comes before a high reading of the other rail', (_, change) => {
    expect(find({ ...change, ...highMinus }, 'bridge-suspect').lacking).toEqual(['second-reading']);
  });

  it('names no limit, and a short read once comes before a high reading that it does not explain', () => {
    expect(find(once, 'bridge-suspect').limits).toEqual([]);
    expect(find({ ...once, ...minus('47k | 47k | 200k') }, 'bridge-suspect').lacking).toEqual(['second-reading']);
  });

  it('is nothing if the bus conducts no more than it should', () => {
    expect(assess({ ...bothWays, dcBus: typed('470k') }).drive).toBe('convicted');
  });

  it('is nothing if an odd one unlike its sister was read twice', () => {
    const change: Change = { ...plus('470k | 100k | 471k'), ...worst('101k'), sister: 'differs' };
    expect(assess(change).drive).toBe('convicted');
    expect(assess({ ...change, sister: 'not-compared' }).drive).toBe('suspect');
    expect(assess({ ...change, ...worst('60k') }).drive).toBe('suspect');
  });
});

describe('the second reading of a leak', () => {
  const leak = (row: string, again: string, first?: string): Change => ({ ...plus(row, first), ...worst(again) });

  it('convicts if it agrees with the first', () => {
    expect(assess(leak('470k | 2k | 471k', '2.1k')).drive).toBe('convicted');
    expect(assess(leak('470k | 2k | 471k', '2.5k')).drive).toBe('suspect');
    expect(assess(leak('470k | 2k | 471k', '29k')).drive).toBe('suspect');
  });

  it('of U is its own reading at the end of the row', () => {
    expect(assess(plus('2k | 470k | 471k', '2k')).drive).toBe('convicted');
    expect(assess(plus('2k | 470k | 471k', '2.5k')).drive).not.toBe('convicted');
  });

  it('does not convict if the other two disagree', () => {
    expect(assess(leak('470k | 2k | 560k', '2k')).drive).toBe('suspect');
    expect(assess(leak('470k | 2k | 500k', '2k')).drive).toBe('convicted');
  });

  it('does not convict beside one other reading', () => {
    expect(assess(leak('470k | 2k | ', '2k')).drive).not.toBe('convicted');
  });
});

describe('the positions that failed', () => {
  it('are the suspects of what fails, each once', () => {
    const { findings } = assess({ ...plus('470k | 0.3 Ω | 471k'), ...minus('47k | 0.4 Ω | 47k') });
    expect(suspectPositions(findings)).toEqual(['plusV', 'minusV']);
    expect(suspectPositions([...findings, ...findings])).toEqual(['plusV', 'minusV']);
    expect(suspectPositions(assess({ dcBus: typed('0.3 Ω') }).findings)).toEqual([]);
    const doubted = findings.map((one) => ({ ...one, severity: 'undecided' as const }));
    expect(suspectPositions(doubted)).toEqual([]);
  });
});

describe('a second reading of an odd one', () => {
  const contradicts = (change: Change) => assess(change).findings.some(({ code }) => code === 'again-contradicts');
  const uneven = plus('470k | 410k | 471k');

  it('contradicts if it is no longer off to the same side', () => {
    expect(contradicts({ ...uneven, ...worst('400k') })).toBe(false);
    expect(contradicts({ ...uneven, ...worst('470k') })).toBe(true);
    expect(contradicts({ ...uneven, ...worst('560k') })).toBe(true);
    expect(contradicts({ ...plus('470k | 560k | 471k'), ...worst('570k') })).toBe(false);
    expect(contradicts({ ...plus('470k | 560k | 471k'), ...worst('410k') })).toBe(true);
  });

  it('of what is clearly off has to be clearly off again', () => {
    const off = plus('470k | 100k | 471k');
    expect(contradicts({ ...off, ...worst('110k') })).toBe(false);
    expect(contradicts({ ...off, ...worst('400k') })).toBe(true);
  });

  it('that is a short where none was contradicts, and one that was a short and is none as well', () => {
    expect(contradicts({ ...uneven, ...worst('0.3 Ω') })).toBe(true);
    expect(contradicts({ ...once, ...worst('470k') })).toBe(true);
    expect(contradicts({ ...once, ...worst('900 Ω') })).toBe(false);
  });

  it('belongs to the lowest short before anything that is odd', () => {
    const both = { ...plus('470k | 0.3 Ω | 471k'), ...minus('47k | 41k | 47k'), ...worst('0.3 Ω') };
    expect(assess(both).drive).toBe('convicted');
    const two: Change = { ...plus('470k | 3 Ω | 471k'), ...minus('47k | 0.3 Ω | 47k'), ...worst('470k') };
    expect(find(two, 'again-contradicts').position).toBe('minusV');
    const odd: Change = { ...plus('470k | 410k | 471k'), ...minus('47k | 10k | 47k'), ...worst('470k') };
    expect(find(odd, 'again-contradicts').position).toBe('minusV');
  });
});
