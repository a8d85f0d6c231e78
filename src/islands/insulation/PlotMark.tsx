import type { Mark } from './plot-data.ts';

interface Props {
  mark: Mark;
  x: number;
  y: number;
  /** First, second or third phase: each has a shape of its own, and its letter beside it. */
  place: number;
  right: number;
}

const shapes = ['M-7 0a7 7 0 1 0 14 0a7 7 0 1 0 -14 0z', 'M-7-7h14v14h-14z', 'M0-9 8 6h-16z'];
/** An over-range reading lies above its mark, an under-range one below. */
const arrows = { above: 'M0-10v-22M-6-25l6-8 6 8', below: 'M0 10v22M-6 25l6 8 6-8' };

export function PlotMark({ mark, x, y, place, right }: Props) {
  // Readings of one motor lie close together, so the letters stand beside each other.
  const roomRight = x + 70 < right;
  const letter = (roomRight ? 14 : -14) + place * (roomRight ? 16 : -16);
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`} data-mark={mark.label}>
      {mark.bound && <path class="wire" d={arrows[mark.bound]} />}
      <path class="mark" d={shapes[place] ?? ''} />
      <text x={letter} y="5" text-anchor={roomRight ? 'start' : 'end'} class="strong halo">
        {mark.label}
      </text>
    </g>
  );
}
