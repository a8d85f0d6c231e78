import { limitCurve } from '../../../calculators/insulation/rule/target.ts';
import { formatQuantity } from '../../../kernel/reading/format-reading.ts';
import { figureOf, missing } from '../../../kernel/reading/reading.ts';
import { Axes } from '../../../ui/plot/Axes.tsx';
import { plotFrame } from '../../../ui/plot/frame.ts';
import { pathThrough } from '../../../ui/plot/scale.ts';
import { reference, type WarmReading } from './model.ts';

const frame = plotFrame(
  { kind: 'linear', domain: [0, 80], label: 'winding temperature, °C', format: String },
  { kind: 'log10', domain: [1e6, 1e10], label: 'reading', format: (ohms) => formatQuantity(ohms, 'Ω') },
  { left: 76, right: 350, top: 36, bottom: 330 },
);
const [x, y] = [frame.x.place, frame.y.place];
const curve = limitCurve(
  { occasion: 'after-trip', machineClass: 'random-wound', ratedVoltage: missing, correction: 'halving' },
  5,
).filter(({ temperature }) => temperature <= 80);
const upper = pathThrough(curve.map(({ temperature, goFrom }) => [x(temperature), y(goFrom)]));
const lower = pathThrough(curve.map(({ temperature, noGoBelow }) => [x(temperature), y(noGoBelow)]));
const back = [...curve].reverse().map(({ temperature, goFrom }): [number, number] => [x(temperature), y(goFrom)]);

/** The two limits with the wedges between them, the reading, and the broken line on which it is carried to the reference. */
export function HeatDrawing({ result: { celsius, reading, carried } }: { result: WarmReading }) {
  const shown = y(inPlot(figureOf(reading.reading) ?? 0));
  const at = y(inPlot(carried));
  return (
    <>
      <path class="band" d={`${lower}${pathThrough(back).replace('M', 'L')}Z`} />
      <Axes frame={frame} />
      <path class="line marked" d={upper} />
      <path class="line marked" d={lower} />
      <path class="line dashed" d={`M${x(celsius).toFixed(1)} ${shown.toFixed(1)}L${x(reference)} ${at.toFixed(1)}`} />
      <circle class="line paper" cx={x(reference)} cy={at.toFixed(1)} r="7" />
      <circle class="ink" cx={x(celsius).toFixed(1)} cy={shown.toFixed(1)} r="8" />
      <text class="strong halo" x={x(62)} y={y(2.4e9)} text-anchor="middle">
        go
      </text>
      <text class="strong halo" x={x(30)} y={y(2e6)} text-anchor="middle">
        no-go
      </text>
      <circle class="ink" cx="16" cy="400" r="8" />
      <text x="34" y="406">
        what the tester shows
      </text>
      <circle class="line paper" cx="16" cy="426" r="7" />
      <text x="34" y="432">
        carried to {reference} °C by the halving rule
      </text>
      <rect class="band" x="4" y="442" width="24" height="16" />
      <text x="34" y="456">
        undecided
      </text>
    </>
  );
}

const inPlot = (ohms: number) => Math.min(1e10, Math.max(1e6, ohms));
