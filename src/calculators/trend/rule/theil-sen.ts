import { limitConstant } from '../../../kernel/limits.ts';
import { ranksLeftOut } from './kendall.ts';

/** A point of a line fit: time and quantity, any units. */
export type FitPoint = readonly [x: number, y: number];

interface RobustSlope {
  /** The median of the slopes of all pairs: units of y for each unit of x. */
  slope: number;
  /**
   * The range that contains the slope with the confidence of the limit `trend-confidence`; absent with too few points.
   */
  range?: { lo: number; hi: number };
}

/**
 * The robust slope of a line (Theil 1950, Sen 1968): the median of the slopes of all pairs of points. It tolerates up
 * to 29 % of outliers. Its range follows from the ranks (Kendall). It assumes scatter that is independent from point to
 * point. Undefined if no two points differ in x, or a point or a slope is not finite. Never throws.
 */
export function robustSlope(points: readonly FitPoint[]): RobustSlope | undefined {
  const slopes = sortedSlopes(points);
  const ends = [slopes[0], slopes[slopes.length - 1]];
  if (![...points.flat(), ...ends].every(Number.isFinite)) return undefined;
  const tail = (1 - limitConstant('trend-confidence', 'percent') / 100) / 2;
  const out = ranksLeftOut(tieSizes(points), tail, limitConstant('trend-confidence', 'z'));
  const [lo, hi] = [slopes[out], slopes[slopes.length - 1 - out]];
  const slope = middleOf(slopes);
  return lo === undefined || hi === undefined ? { slope } : { slope, range: { lo, hi } };
}

/** Height at `x` of the line with this slope that has as many points above as below it. */
export function heightAt(points: readonly FitPoint[], slope: number, x: number): number {
  return median(points.map(([px, py]) => py + slope * (x - px)));
}

/** The middle value, or the mean of the middle two; NaN for an empty list. */
export function median(values: readonly number[]): number {
  return middleOf(Float64Array.from(values).sort());
}

/** The slopes of all pairs of points that differ in x, the least first: half a million for a thousand points. */
function sortedSlopes(points: readonly FitPoint[]): Float64Array {
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let count = 0;
  points.forEach(([x, y], index) => {
    for (let other = 0; other < index; other++) {
      const [otherX, otherY] = points[other] as FitPoint;
      if (otherX !== x) slopes[count++] = (y - otherY) / (x - otherX);
    }
  });
  return slopes.subarray(0, count).sort();
}

/** How many points share each x; 1 for a point alone. */
export function tieSizes(points: readonly FitPoint[]): number[] {
  const sizes = new Map<number, number>();
  for (const [x] of points) sizes.set(x, (sizes.get(x) ?? 0) + 1);
  return [...sizes.values()];
}

function middleOf(sorted: Float64Array): number {
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle)] ?? Number.NaN)) / 2;
}
