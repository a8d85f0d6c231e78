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
  { left: 52, right: 346, top: 308, bottom: 440 },
);
const [x, y] = [frame.x.place, frame.y.place];

const rails = { plus: 36, minus: 236 };
const terminal = 136;
const [capX, legX, meterX] = [70, 220, 312];

/** Which half of the leg is between the tips, and which tip is above. */
const places: Record<Tips, { top: number; red: 'above' | 'below' }> = {
  'plus-to-U': { top: rails.plus, red: 'above' },
  'U-to-minus': { top: terminal, red: 'above' },
  'U-to-plus': { top: rails.plus, red: 'below' },
};

/** Bus capacitor on the left, the leg of terminal U in the middle, the meter on the right; the course of the figure below. */
export function ClimbDrawing({ result: { tips, course, now } }: { result: ClimbShown }) {
  const { top, red } = places[tips];
  const share = now.chargingAmperes / now.amperes;
  const [from, to] = top === rails.plus ? [rails.plus, rails.minus] : [rails.minus, rails.plus];
  const terminalEnd = from === rails.plus ? terminal + 14 : terminal - 14;
  const downwards = red === 'above';
  return (
    <>
      <path class="line heavy" d={`M20 ${rails.plus}H${legX + 20}M20 ${rails.minus}H${legX + 20}`} />
      <text class="strong" x="20" y={rails.plus - 12}>
        DC+
      </text>
      <text class="strong" x="20" y={rails.minus + 24}>
        DC−
      </text>
      <path class="line" d={`M${legX + 10} ${top}H${meterX}v24M${meterX} ${top + 76}v24H${legX + 10}`} />
      <path
        class="way dashed"
        stroke-width={1.5 + 6 * share}
        d={`M${legX} ${from}H${capX}V${to}H${legX}V${terminalEnd}`}
      />
      <path class="way" stroke-width={1.5 + 6 * (1 - share)} d={`M${legX} ${top}v100`} />
      <rect class="ground" x={capX - 8} y="129" width="16" height="14" />
      <path class="line" d={`M${capX - 24} 128h48M${capX - 24} 144h48`} />
      <path class="ink" d={downwards ? `M${capX - 9} 88h18l-9 16z` : `M${capX - 9} 104h18l-9 -16z`} />
      <text x={capX + 16} y="112">
        into the bus
      </text>
      <text x={capX + 16} y="172">
        capacitor
      </text>
      <Resistor y={rails.plus} />
      <Resistor y={terminal} />
      <circle class="line paper" cx={legX} cy={terminal} r="14" />
      <text class="strong" x={legX} y={terminal + 6} text-anchor="middle">
        U
      </text>
      <circle class="line paper" cx={meterX} cy={top + 50} r="26" />
      <text class="strong" x={meterX} y={top + 56} text-anchor="middle">
        Ω
      </text>
      <text x={meterX - 12} y={top + 20} text-anchor="end">
        {red === 'above' ? 'red' : 'black'}
      </text>
      <text x={meterX - 12} y={top + 92} text-anchor="end">
        {red === 'above' ? 'black' : 'red'}
      </text>
      <text class="figures strong" x="356" y={top + 124} text-anchor="end">
        {now.text}
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
