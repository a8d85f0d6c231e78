import { describe, expect, it } from 'vitest';
import { deviationFromMean, pairwiseSpread, spreadInterval, within } from '../../../../src/kernel/reading/spread.ts';

const unbounded = Number.POSITIVE_INFINITY;

describe('the pairwise spread', () => {
  it.each([
    [[100, 100, 100], 0],
    [[100, 105, 110], 10],
    [[110, 105, 100], 10],
    [[450e3, 455e3, 460e3], 2.2222222],
    [[50e3, 100e3, 100e3], 100],
    [[1, 1, 10], 900],
    [[100, 109], 9],
    [[0, 0, 0], 0],
    [[0, 1, 1], unbounded],
    [[1, unbounded, 1], unbounded],
  ])('of %o is %d percent of the smaller', (values, percent) => {
    expect(pairwiseSpread(values)).toBeCloseTo(percent, 6);
  });

  it('is stricter than the deviation from the mean', () => {
    expect(pairwiseSpread([100, 105, 110])).toBe(10);
    expect(deviationFromMean([100, 105, 110])).toBeCloseTo(4.7619048, 7);
  });
});

describe('the deviation from the mean', () => {
  it.each([
    [[100, 100, 100], 0],
    [[90, 100, 110], 10],
    [[100, 100, 130], 18.181818],
    [[0, 0, 0], 0],
    [[0, 0, 3], 200],
  ])('of %o is %d percent of the mean', (values, percent) => {
    expect(deviationFromMean(values)).toBeCloseTo(percent, 5);
  });
});

describe('the spread of intervals', () => {
  it('is one number if every value is exact', () => {
    expect(spreadInterval([point(100), point(105), point(110)])).toEqual({ lo: 10, hi: 10 });
  });

  it('has a minimum of zero if the intervals overlap', () => {
    const spread = spreadInterval([
      { lo: 95, hi: 105 },
      { lo: 98, hi: 108 },
    ]);
    expect(spread.lo).toBe(0);
    expect(spread.hi).toBeCloseTo((108 / 95 - 1) * 100, 9);
  });

  it('is at least the gap between the nearest ends', () => {
    const spread = spreadInterval([
      { lo: 95, hi: 100 },
      { lo: 120, hi: 130 },
    ]);
    expect(spread.lo).toBeCloseTo(20, 9);
    expect(spread.hi).toBeCloseTo(36.842105, 6);
  });

  it('is a number for two open intervals, which may be equal or any distance apart', () => {
    const open = { lo: 2e6, hi: unbounded };
    expect(spreadInterval([open, open])).toEqual({ lo: 0, hi: unbounded });
    expect(spreadInterval([open, { lo: 60e6, hi: unbounded }])).toEqual({ lo: 0, hi: unbounded });
  });

  it('knows the least spread of an over-range beside a finite value', () => {
    expect(spreadInterval([point(100e3), { lo: 600e3, hi: unbounded }])).toEqual({ lo: 500, hi: unbounded });
    expect(spreadInterval([point(580e3), { lo: 600e3, hi: unbounded }]).lo).toBeCloseTo(3.4482759, 6);
    expect(spreadInterval([point(700e3), { lo: 600e3, hi: unbounded }]).lo).toBe(0);
  });

  it('is unbounded if a value may be zero', () => {
    expect(spreadInterval([{ lo: 0, hi: 5 }, point(5)])).toEqual({ lo: 0, hi: unbounded });
  });

  function point(value: number) {
    return { lo: value, hi: value };
  }
});

describe('within the tolerance', () => {
  it.each([
    [0, 10, true],
    [9.999, 10, true],
    [10, 10, true],
    [10.001, 10, false],
    [unbounded, 10, false],
    [0, 0, true],
    [0.001, 0, false],
  ])('%d of %d: %s', (spread, tolerance, expected) => {
    expect(within(spread, tolerance)).toBe(expected);
  });

  it('is not affected by binary rounding', () => {
    expect(pairwiseSpread([0.3, 0.33])).toBeGreaterThan(10);
    expect(within(pairwiseSpread([0.3, 0.33]), 10)).toBe(true);
  });
});
