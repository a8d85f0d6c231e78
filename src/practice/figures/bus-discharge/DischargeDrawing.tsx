import { limitValue } from '../../../kernel/limits.ts';
import { Axes } from '../../../ui/plot/Axes.tsx';
import { plotFrame } from '../../../ui/plot/frame.ts';
import { pathThrough } from '../../../ui/plot/scale.ts';
import type { Halves } from './model.ts';

export interface BusAt {
  course: readonly Halves[];
  now: Halves;
}

const frame = plotFrame(
  { kind: 'linear', domain: [0, 10], label: 'minutes after switch-off', format: String },
  { kind: 'linear', domain: [0, 600], label: 'volts', format: String },
  { left: 52, right: 346, top: 32, bottom: 320 },
);
const [x, y] = [(seconds: number) => frame.x.place(seconds / 60), frame.y.place];
const touch = limitValue('touch-voltage');

/** The whole bus in a heavy line, its two capacitors in broken lines, and a mark at the chosen time. */
export function DischargeDrawing({ result: { course, now } }: { result: BusAt }) {
  const line = (volts: (at: Halves) => number) => pathThrough(course.map((at) => [x(at.seconds), y(volts(at))]));
  return (
    <>
      <Axes frame={frame} />
      <rect class="band" x="52" y={y(touch)} width="294" height={320 - y(touch)} />
      <path class="line dashed" d={line(({ upper }) => upper)} />
      <path class="line dotted heavy" d={line(({ lower }) => lower)} />
      <path class="line marked" d={line(({ upper, lower }) => upper + lower)} />
      <path class="line" d={`M${x(now.seconds).toFixed(1)} 32V320`} />
      <circle class="ink" cx={x(now.seconds).toFixed(1)} cy={y(now.upper + now.lower).toFixed(1)} r="7" />
      <path class="line marked" d="M8 394H58" />
      <text x="68" y="400">
        DC+ to DC−
      </text>
      <path class="line dashed" d="M8 420H58" />
      <text x="68" y="426">
        upper capacitor
      </text>
      <path class="line dotted heavy" d="M8 446H58" />
      <text x="68" y="452">
        lower capacitor
      </text>
      <rect class="band" x="216" y="384" width="44" height="20" />
      <text x="268" y="400">
        below {touch} V
      </text>
    </>
  );
}
