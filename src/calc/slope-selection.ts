import { lastIn } from './last-in.ts';
/** A point of a line fit: time and quantity, any units. */
export type Point = readonly [x: number, y: number];

/** As many slopes as are looked at one by one: a third of a megabyte. */
const usualRoom = 40_000;

/**
 * The slope of a given rank (0 for the least) among the slopes of all pairs of points that differ in x, without making
 * all of them: five thousand points have twelve million pairs. How many slopes lie below a value is the number of pairs
 * that change order when the points are tilted by it, which a merge sort counts in n·log n; the value is closed in on
 * until few slopes are left, and these are sorted (after Cole, Salowe, Steiger and Szemerédi 1989, simplified).
 * Exact, except where more than `room` slopes agree to twelve digits: then it is that value.
 * `points` must be sorted by x, and by y where x agrees. NaN where a bound of the slopes is not finite.
 */
export function slopeOfRank(points: readonly Point[], rank: number, room = usualRoom): number {
  let [low, high] = bracket(points, rank);
  if (!(Number.isFinite(low) && Number.isFinite(high))) return Number.NaN;
  let below = countBelow(points, low);
  let upTo = countBelow(points, high);
  while (upTo - below > room) {
    const middle = (low + high) / 2;
    if (!(high - low > 1e-12 * Math.max(Math.abs(low), Math.abs(high)))) return middle;
    const count = countBelow(points, middle);
    if (count <= rank) [low, below] = [middle, count];
    else [high, upTo] = [middle, count];
  }
  const slopes = slopesBetween(points, low, high);
  return slopes[Math.min(Math.max(0, rank - below), slopes.length - 1)] ?? (low + high) / 2;
}

/** The number of pairs of points that differ in x. */
export function pairCount(points: readonly Point[]): number {
  const sameX = tieSizes(points).reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
  return (points.length * (points.length - 1)) / 2 - sameX;
}

/** How many points share each x; 1 for a point alone. */
export function tieSizes(points: readonly Point[]): number[] {
  const sizes: number[] = [];
  points.forEach(([x], index) => {
    if (index > 0 && points[index - 1]?.[0] === x) sizes.push((sizes.pop() ?? 0) + 1);
    else sizes.push(1);
  });
  return sizes;
}

/** Two slopes with the wanted rank between them. The width grows fourfold each time, so each end soon stops: there, or endless. */
function bracket(points: readonly Point[], rank: number): [number, number] {
  const slope = (a: Point, b: Point) => (b[1] - a[1]) / (b[0] - a[0]);
  const half = Math.ceil(points.length / 2);
  const sample = points.slice(half).flatMap((b, index) => {
    const a = points[index];
    return a !== undefined && a[0] < b[0] ? [slope(a, b)] : [];
  });
  sample.sort((a, b) => a - b);
  const least = sample[0] ?? 0;
  const most = lastIn(sample) ?? 0;
  let width = most - least || Math.abs(least) || 1;
  let [low, high] = [least - width / 16, most + width / 16];
  while (Number.isFinite(low) && countBelow(points, low) > rank) {
    low -= width;
    width *= 4;
  }
  while (Number.isFinite(high) && countBelow(points, high) <= rank) {
    high += width;
    width *= 4;
  }
  return [low, high];
}

/** How many pairs have a slope below the value: those whose order changes when the points are tilted by it. */
function countBelow(points: readonly Point[], slope: number): number {
  let count = 0;
  let values = Float64Array.from(points, ([x, y]) => y - slope * x);
  let merged = new Float64Array(values.length);
  for (let width = 1; width < values.length; width *= 2) {
    for (let start = 0; start < values.length; start += 2 * width) {
      const middle = Math.min(start + width, values.length);
      const end = Math.min(start + 2 * width, values.length);
      let left = start;
      let right = middle;
      for (let position = start; position < end; position++) {
        const first = left < middle ? (values[left] as number) : Number.POSITIVE_INFINITY;
        const second = right < end ? (values[right] as number) : Number.POSITIVE_INFINITY;
        if (first <= second) {
          merged[position] = first;
          left++;
        } else {
          count += middle - left;
          merged[position] = second;
          right++;
        }
      }
    }
    [values, merged] = [merged, values];
  }
  return count;
}

/** The slopes from `low` to below `high`, sorted: pairs in order when tilted by the one, out of order by the other. */
function slopesBetween(points: readonly Point[], low: number, high: number): Float64Array {
  const tilted = points.map(([x, y]) => ({ x, y, at: y - low * x })).sort((a, b) => a.at - b.at || a.x - b.x);
  const found: number[] = [];
  sortReporting(
    Float64Array.from(tilted, ({ x, y }) => y - high * x),
    (right, left) => {
      const b = tilted[right];
      for (const index of left) {
        const a = tilted[index];
        if (a !== undefined && b !== undefined && a.x < b.x) found.push((b.y - a.y) / (b.x - a.x));
      }
    },
  );
  return Float64Array.from(found).sort();
}

/**
 * A merge sort that reports, for each value that moves forward, the places of the greater values it passes. Places are
 * indexes of `values` as given.
 */
function sortReporting(values: Float64Array, passes: (moved: number, passed: Int32Array) => void): void {
  let order = Int32Array.from(values, (_, index) => index);
  let merged = new Int32Array(values.length);
  const at = (position: number) => values[order[position] ?? 0] ?? 0;
  for (let width = 1; width < values.length; width *= 2) {
    for (let start = 0; start < values.length; start += 2 * width) {
      const middle = Math.min(start + width, values.length);
      const end = Math.min(start + 2 * width, values.length);
      let [left, right] = [start, middle];
      for (let position = start; position < end; position++) {
        if (left < middle && (right >= end || at(left) <= at(right))) {
          merged[position] = order[left++] ?? 0;
        } else {
          if (left < middle) passes(order[right] ?? 0, order.subarray(left, middle));
          merged[position] = order[right++] ?? 0;
        }
      }
    }
    [order, merged] = [merged, order];
  }
}
