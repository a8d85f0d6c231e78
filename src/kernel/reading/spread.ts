import type { Interval } from './interval.ts';

/**
 * Largest pairwise difference against the smaller of the two, in percent: the strictest of the usual definitions.
 * `values` are positive; Infinity if one of them is zero or unbounded and another is not.
 */
export function pairwiseSpread(values: readonly number[]): number {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return ratioExcess(high, low);
}

/**
 * Largest deviation from the mean, in percent of the mean: the unbalance of NEMA MG 1 (12.45, 14.36, recalled), which
 * is defined there for voltages.
 */
export function deviationFromMean(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (mean === 0) return 0;
  return (Math.max(...values.map((value) => Math.abs(value - mean))) / mean) * 100;
}

/** Least and greatest pairwise spread, in percent, that values in these intervals can have. */
export function spreadInterval(intervals: readonly Interval[]): Interval {
  const highestLo = Math.max(...intervals.map(({ lo }) => lo));
  const lowestHi = Math.min(...intervals.map(({ hi }) => hi));
  const highestHi = Math.max(...intervals.map(({ hi }) => hi));
  const lowestLo = Math.min(...intervals.map(({ lo }) => lo));
  return { lo: Math.max(0, ratioExcess(highestLo, lowestHi)), hi: ratioExcess(highestHi, lowestLo) };
}

function ratioExcess(high: number, low: number): number {
  // Overlapping intervals get here too: their least spread is zero.
  if (high <= low) return 0;
  if (low === 0 || high === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
  return ((high - low) / low) * 100;
}

/** Binary rounding must not push a spread that is exactly at its tolerance beyond it. */
const roundingAllowance = 1e-9;

export function within(spreadPercent: number, tolerancePercent: number): boolean {
  return spreadPercent <= tolerancePercent * (1 + roundingAllowance);
}

/** Every choice of one end of each interval. */
export function corners(intervals: readonly Interval[]): number[][] {
  return intervals.reduce<number[][]>(
    (sets, { lo, hi }) =>
      sets.flatMap((set) => [
        [...set, lo],
        [...set, hi],
      ]),
    [[]],
  );
}
