import { Axes } from '../../../ui/plot/Axes.tsx';
import { plotFrame } from '../../../ui/plot/frame.ts';
import { pathThrough } from '../../../ui/plot/scale.ts';
import type { Held, Tips } from './model.ts';

export interface ClimbShown {
  tips: Tips;
  course: readonly Held[];
  now: Held;
}

const frame = plotFrame(
  { kind: 'log10', domain: [0.5, 300], label: 'seconds', format: String, ticks: [1, 10, 100] },
  { kind: 'linear', domain: [150, 320], label: 'reading, kΩ', format: String, ticks: [150, 200, 250, 300] },
  { left: 52, right: 346, top: 300, bottom: 440 },
);
const [x, y] = [frame.x.place, frame.y.place];

const rails = { plus: 36, minus: 236 };
const terminal = 136;
const [capX, legX, meterX] = [90, 230, 310];
const meterFrom: Record<Tips, number> = { 'plus-to-U': rails.plus, 'U-to-minus': terminal, 'U-to-plus': rails.plus };

/** Bus capacitor on the left, the leg of terminal U in the middle, the meter on the right; the course of the figure below. */
export function ClimbDrawing({ result: { tips, course, now } }: { result: ClimbShown }) {
  const top = meterFrom[tips];
  const upper = top === rails.plus;
  const around = now.charging / now.amperes;
  return (
    <>
      <path class="line heavy" d={`M20 ${rails.plus}H${legX + 20}M20 ${rails.minus}H${legX + 20}`} />
      <text class="strong" x="20" y={rails.plus - 12}>
        DC+
      </text>
      <text class="strong" x="20" y={rails.minus + 26}>
        DC−
      </text>
      <path
        class="line"
        d={`M${capX} ${rails.plus}V128M${capX - 24} 128h48M${capX - 24} 144h48M${capX} 144V${rails.minus}`}
      />
      <text x={capX - 34} y="112" text-anchor="end">
        bus
      </text>
      <Resistor y={rails.plus} />
      <Resistor y={terminal} />
      <circle class="line paper" cx={legX} cy={terminal} r="14" />
      <text class="strong" x={legX} y={terminal + 6} text-anchor="middle">
        U
      </text>
      <path
        class="line"
        d={`M${legX + 14} ${top === rails.plus ? top : terminal}H${meterX}V${top + 24}M${meterX} ${top + 76}V${top + 100}H${legX + 14}`}
      />
      <circle class="line paper" cx={meterX} cy={top + 50} r="26" />
      <text class="strong" x={meterX} y={top + 57} text-anchor="middle">
        Ω
      </text>
      <text class="figures strong" x="356" y={top + 110} dy="14" text-anchor="end">
        {now.text}
      </text>
      <path
        class="way"
        stroke-width={1.5 + 6 * (1 - around)}
        d={upper ? `M${legX + 20} 52V120` : `M${legX + 20} 152V220`}
      />
      <path
        class="way dashed"
        stroke-width={1.5 + 6 * around}
        d={
          upper
            ? `M${legX - 40} 48H${capX + 34}V224H${legX - 40}V152`
            : `M${legX - 40} 120V48H${capX + 34}V224H${legX - 40}`
        }
      />
      <text x={capX + 44} y="100">
        charging
      </text>
      <Axes frame={frame} />
      <path class="line marked" d={pathThrough(course.map(({ seconds, ohms }) => [x(seconds), y(ohms / 1000)]))} />
      <circle class="ink" cx={x(now.seconds).toFixed(1)} cy={y(now.ohms / 1000).toFixed(1)} r="7" />
    </>
  );
}

/** A measuring resistor from `y` to the terminal or rail 100 units below. */
function Resistor({ y: from }: { y: number }) {
  return (
    <>
      <path class="line" d={`M${legX} ${from}v100`} />
      <rect class="line paper" x={legX - 9} y={from + 28} width="18" height="44" />
    </>
  );
}
