import type { Frame } from './frame.ts';
import { type Pair, placePairs } from './place-pairs.ts';
import { pathThrough } from './scale.ts';

interface Props {
  frame: Frame;
  points: readonly Pair[];
  /** Curves of one plot differ by their dashes, which show in greyscale too; a limit is heavier. */
  look?: 'solid' | 'dashed' | 'dotted' | 'limit';
}

export function Curve({ frame, points, look = 'solid' }: Props) {
  return <path class={`curve ${look}`} d={pathThrough(placePairs(frame, points))} />;
}
