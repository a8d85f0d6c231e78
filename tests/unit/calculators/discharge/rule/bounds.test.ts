import { describe, expect, it } from 'vitest';
import { volts } from '../../../../../src/kernel/reading/reading.ts';
import { pair, said, seconds, values } from './bus.ts';

describe('a reading without a figure', () => {
  it('does not stand near half of the start', () => {
    const stands = { startVoltage: volts(565, 1), ...pair(283, 283, 60) };
    const near = (lines: string[]) => lines.filter((one) => one.startsWith('stands-near-half'));
    expect(near(said(stands))).toHaveLength(1);
    const over = { kind: 'over', unit: 'V', atLeast: 280 } as const;
    expect(near(said({ ...stands, second: over }))).toEqual([]);
  });

  it('of a label is no time to be slower than', () => {
    const under = { kind: 'under', unit: 's', atMost: 1 } as const;
    const slow = (label: typeof under | ReturnType<typeof seconds>) =>
      said({ ...values, ...pair(565, 400, 60), label }).filter((one) => one.includes('label'));
    expect(slow(seconds(1))).toEqual(['slower-than-label fail label']);
    expect(slow(under)).toEqual([]);
  });
});

it('a measured time that the values allow is no disagreement', () => {
  const lines = said({ ...values, ...pair(565, 400, 17) });
  expect(lines.filter((one) => /than-values/.test(one))).toEqual([]);
  expect(lines.every((one) => /^[a-z-]+ (pass|note|caution|undecided)/.test(one))).toBe(true);
});
