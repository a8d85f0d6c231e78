import type { Frame } from './frame.ts';
import { placePairs } from './place-pairs.ts';

/**
 * Each kind of reading has a shape of its own; `above` and `below` are bounds, with an arrow towards the value. `speck`
 * is for hundreds of points, since dots would run together.
 */
export type Shape = 'dot' | 'speck' | 'ring' | 'square' | 'triangle' | 'cross' | 'above' | 'below';

export interface Point {
  x: number;
  y: number;
  shape: Shape;
  /** Written beside it. */
  text?: string;
  /** Column of the text, for points close together: 0 is next to the point, 1 beside that, and so on. */
  place?: number;
}

const outlines: Record<Shape, string> = {
  dot: 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z',
  speck: 'M-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0z',
  ring: 'M-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0z',
  square: 'M-5-5h10v10h-10z',
  triangle: 'M0-7 6 5h-12z',
  cross: 'M-6-6 6 6M-6 6 6-6',
  above: 'M-7 0h14M0 0v-18M-5-13l5-6 5 6',
  below: 'M-7 0h14M0 0v18M-5 13l5 6 5-6',
};

export function Points({ frame, points }: { frame: Frame; points: readonly Point[] }) {
  const places = placePairs(
    frame,
    points.map(({ x, y }) => [x, y]),
  );
  return (
    <g>
      {points.map(({ shape, text, place = 0 }, index) => {
        const [x, y] = places[index] ?? [0, 0];
        const right = x > frame.box.right - 60;
        return (
          <g key={index} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
            <path class={`point ${shape}`} d={outlines[shape]} />
            {text && (
              <text x={(right ? -1 : 1) * (11 + 15 * place)} y="5" text-anchor={right ? 'end' : 'start'}>
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
