import type { Box, Frame } from './frame.ts';

export type Pair = readonly [x: number, y: number];

/** Places in the drawing. Anything outside the box is drawn at its edge, so that a curve never runs over the page. */
export function placePairs({ x, y, box }: Frame, pairs: readonly Pair[]): Pair[] {
  return pairs.map(([px, py]) => inside(box, [x.place(px), y.place(py)]));
}

function inside(box: Box, [x, y]: Pair): Pair {
  return [clamp(x, box.left, box.right), clamp(y, box.top, box.bottom)];
}

/** A negative number has no logarithm: it is drawn at the bottom of the y axis, never as NaN in a path. */
function clamp(value: number, least: number, most: number): number {
  return Number.isNaN(value) ? most : Math.min(most, Math.max(least, value));
}
