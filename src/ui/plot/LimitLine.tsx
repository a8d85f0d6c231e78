import type { Frame } from './frame.ts';

interface Props {
  frame: Frame;
  /** Position on the axis. Outside the axis nothing is drawn, so the domain must include the limit. */
  at: number;
  /** A limit on the y axis is a horizontal line, one on the x axis a vertical line. */
  axis?: 'x' | 'y';
  /** What the line means, written beside it. */
  text: string;
  /** For text below the line, if a curve would cross it above. */
  below?: boolean;
}

export function LimitLine({ frame, at, axis = 'y', text, below = false }: Props) {
  const { box } = frame;
  const place = frame[axis].place(at);
  const [least, most] = axis === 'y' ? [box.top, box.bottom] : [box.left, box.right];
  if (!(place >= least - 0.5 && place <= most + 0.5)) return null;
  const path =
    axis === 'y' ? `M${box.left} ${place.toFixed(1)}H${box.right}` : `M${place.toFixed(1)} ${box.top}V${box.bottom}`;
  const leftHalf = place < (box.left + box.right) / 2;
  return (
    <g class="limit">
      <path d={path} />
      {axis === 'y' ? (
        <text x={box.right - 4} y={place + (below ? 18 : -8)} text-anchor="end">
          {text}
        </text>
      ) : (
        <text x={place + (leftHalf ? 6 : -6)} y={box.top + 14} text-anchor={leftHalf ? 'start' : 'end'}>
          {text}
        </text>
      )}
    </g>
  );
}
