import { pathThrough } from '../../figures/scale.ts';
import type { Frame } from './frame.ts';
import { type Pair, placePairs } from './place.ts';

interface Props {
  frame: Frame;
  points: readonly Pair[];
  /** Curves of one plot differ by their dashes, so that they are told apart in greyscale. */
  look?: 'solid' | 'dashed' | 'dotted';
}

export function Curve({ frame, points, look = 'solid' }: Props) {
  return <path class={`curve ${look}`} d={pathThrough(placePairs(frame, points))} />;
}
