import type { Rail } from '../../../calculators/bridge/rule/switch-position.ts';
import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import type { SixReadings } from './model.ts';

const legs: Record<Phase, number> = { U: 64, V: 184, W: 304 };
const railY: Record<Rail, number> = { plus: 30, minus: 326 };
const center: Record<Rail, number> = { plus: 88, minus: 268 };
const middleY = 178;

/** The output stage with each reading at its transistor; the leaky one is crossed and framed. */
export function BridgeDrawing({ result: { leak, readings } }: { result: SixReadings }) {
  return (
    <>
      <path class="line heavy" d={`M10 ${railY.plus}H350M10 ${railY.minus}H350`} />
      <text class="strong" x="10" y={railY.plus - 10}>
        DC+
      </text>
      <text class="strong" x="10" y={railY.minus + 24}>
        DC−
      </text>
      {phases.map((phase) => (
        <g key={phase}>
          <path class="line" d={`M${legs[phase]} ${railY.plus}V${railY.minus}`} />
          {(['plus', 'minus'] as const).map((rail) => (
            <Transistor
              key={rail}
              x={legs[phase]}
              y={center[rail]}
              reading={readings[rail][phase].text}
              readingY={rail === 'plus' ? center.plus + 46 : center.minus - 36}
              leaky={leak.rail === rail && leak.phase === phase && Number.isFinite(leak.ohms)}
            />
          ))}
          <circle class="line paper" cx={legs[phase]} cy={middleY} r="14" />
          <text class="strong" x={legs[phase]} y={middleY + 6} text-anchor="middle">
            {phase}
          </text>
        </g>
      ))}
    </>
  );
}

interface TransistorProps {
  x: number;
  y: number;
  reading: string;
  readingY: number;
  leaky: boolean;
}

function Transistor({ x, y, reading, readingY, leaky }: TransistorProps) {
  return (
    <>
      <path class="line" d={`M${x} ${y - 30}h-30v60h30M${x - 40} ${y + 8}h20l-10-16zM${x - 40} ${y - 8}h20`} />
      <rect class={`line paper${leaky ? ' marked' : ''}`} x={x - 16} y={y - 20} width="32" height="40" rx="3" />
      {leaky && <path class="line marked" d={`M${x - 9} ${y - 12}l18 24M${x + 9} ${y - 12}l-18 24`} />}
      <rect class="ground" x={x - 50} y={readingY - 15} width="100" height="20" />
      <text class={`figures${leaky ? ' strong' : ''}`} x={x} y={readingY} text-anchor="middle">
        {reading}
      </text>
    </>
  );
}
