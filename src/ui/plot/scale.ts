/** Maps a quantity to a place in a drawing. */
export type Scale = (value: number) => number;

type Pair = readonly [number, number];

/** Equal steps of the quantity are equal lengths. */
export function linear([from, to]: Pair, [start, end]: Pair): Scale {
  return (value) => start + ((value - from) / (to - from)) * (end - start);
}

/** Equal ratios of the quantity are equal lengths; the quantity must be above zero. */
export function logarithmic([from, to]: Pair, range: Pair): Scale {
  const inner = linear([Math.log(from), Math.log(to)], range);
  return (value) => inner(Math.log(value));
}

/** The path data of a polyline through the points. */
export function pathThrough(points: readonly Pair[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}
