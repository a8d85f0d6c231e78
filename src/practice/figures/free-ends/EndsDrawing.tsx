import type { CoreReadings, Ends } from './model.ts';

export interface EndsShown {
  ends: Ends;
  leakOhms: number;
  readings: CoreReadings;
}

const wires = [
  ['U', 50],
  ['V', 96],
  ['W', 142],
  ['PE', 178],
  ['screen', 214],
] as const;
const [from, to, tester, bond] = [120, 280, 40, 84];
const barY = 276;

/** The tester is on core U; with the ends bonded the way of the current closes. */
export function EndsDrawing({ result: { ends, leakOhms, readings } }: { result: EndsShown }) {
  const leaks = Number.isFinite(leakOhms);
  const flows = leaks && ends === 'bonded';
  return (
    <>
      {wires.map(([name, y]) => (
        <g key={name}>
          <path class="line" d={`M${from} ${y}H${to}`} />
          <text x={to + 12} y={y + 6}>
            {name}
          </text>
          {ends === 'bonded' && name !== 'U' && <path class="line" d={`M${from} ${y}H${bond}V${barY}`} />}
        </g>
      ))}
      {leaks && (
        <>
          <path class="line marked dashed" d="M216 50V96" />
          <text class="halo" x="226" y="79">
            leak
          </text>
        </>
      )}
      <path class="line" d={`M${from} 50H${tester}V126M${tester} 178V${barY}`} />
      <path class="line heavy" d={`M16 ${barY}H320`} />
      <text x="326" y={barY + 6}>
        PE
      </text>
      {flows && <path class="line marked" d={`M${tester} 126V50H216M216 96H${bond}V${barY}H${tester}V178`} />}
      <circle class="line paper" cx={tester} cy="152" r="26" />
      <text class="strong" x={tester} y="158" text-anchor="middle">
        MΩ
      </text>
      <rect class="ground" x="100" y="236" width="150" height="26" />
      <text class="figures strong" x="106" y="256">
        U: {readings.U.text}
      </text>
    </>
  );
}
