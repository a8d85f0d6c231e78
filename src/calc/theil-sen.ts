import { ranksLeftOut } from './kendall.ts';
import { limitConstant } from './limits.ts';
import { type Point, pairCount, slopeOfRank, tieSizes } from './slope-selection.ts';

export interface RobustSlope {
  /** The median of the slopes of all pairs: units of y for each unit of x. */
  slope: number;
  /** The range that holds the slope with the confidence of the limit `trend-confidence`; absent where there are too few points. */
  range?: { lo: number; hi: number };
}

/**
 * The robust slope of a line (Theil 1950, Sen 1968): the median of the slopes of all pairs of points. Up to 29 % of the
 * points may be wild and it holds. Its range is that of the ranks (Kendall). It takes the scatter to be independent from
 * point to point. Undefined where no two points differ in x, or a point is not finite. Throws nothing.
 */
export function robustSlope(points: readonly Point[]): RobustSlope | undefined {
  if (!areFinite(points)) return undefined;
  const sorted = sortedPoints(points);
  const pairs = pairCount(sorted);
  if (pairs === 0) return undefined;
  const middle = (pairs - 1) / 2;
  const slope = (slopeOfRank(sorted, Math.floor(middle)) + slopeOfRank(sorted, Math.ceil(middle))) / 2;
  const out = leftOut(sorted);
  if (out < 0) return { slope };
  return { slope, range: { lo: slopeOfRank(sorted, out), hi: slopeOfRank(sorted, pairs - 1 - out) } };
}

/** The lower end of that range alone, at a third of the work; undefined where there is none. */
export function lowestSlope(points: readonly Point[]): number | undefined {
  if (!areFinite(points)) return undefined;
  const sorted = sortedPoints(points);
  const out = pairCount(sorted) === 0 ? -1 : leftOut(sorted);
  return out < 0 ? undefined : slopeOfRank(sorted, out);
}

function areFinite(points: readonly Point[]): boolean {
  return points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
}

function leftOut(sorted: readonly Point[]): number {
  const tail = (1 - limitConstant('trend-confidence', 'percent') / 100) / 2;
  return ranksLeftOut(tieSizes(sorted), tail, limitConstant('trend-confidence', 'z'));
}

/** The height at `x` of the line with this slope that has as many points above as below it. */
export function heightAt(points: readonly Point[], slope: number, x: number): number {
  return median(points.map(([px, py]) => py + slope * (x - px)));
}

/** The middle value, or the mean of the middle two; NaN for none. */
export function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle)] ?? Number.NaN)) / 2;
}

function sortedPoints(points: readonly Point[]): Point[] {
  return [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
}
