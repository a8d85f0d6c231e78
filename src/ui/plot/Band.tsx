import type { Frame } from './frame.ts';
import { type Pair, placePairs } from './place-pairs.ts';
import { pathThrough } from './scale.ts';

interface Props {
  frame: Frame;
  upper: readonly Pair[];
  lower: readonly Pair[];
  /** `undecided`: between two limits. `spread`: the possible range of a line. */
  look?: 'undecided' | 'spread';
}

/** The area between two curves, both given from left to right. */
export function Band({ frame, upper, lower, look = 'undecided' }: Props) {
  const outline = [...placePairs(frame, upper), ...placePairs(frame, lower).reverse()];
  return <path class={`band ${look}`} d={`${pathThrough(outline)}Z`} />;
}
