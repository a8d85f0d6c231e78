import { limitValue } from '../../../kernel/limits.ts';
import type { Turned } from './model.ts';

const touch = limitValue('touch-voltage');
const gauge = { x: 36, top: 40, bottom: 260, volts: 250 };
const heightOf = (volts: number) => ((gauge.bottom - gauge.top) * Math.min(volts, gauge.volts)) / gauge.volts;
const cores = [126, 150, 174];

/** A gauge of the bus on the left, the drive, the leads, and the motor with the arrow of its turning. */
export function MotorDrawing({ result: { leads, busVolts, perMinute } }: { result: Turned }) {
  const level = gauge.bottom - heightOf(busVolts);
  const limit = gauge.bottom - heightOf(touch);
  return (
    <>
      <text class="strong" x="10" y="22">
        bus {busVolts.toFixed(busVolts < 10 ? 2 : 0)} V
      </text>
      <rect class="line" x={gauge.x} y={gauge.top} width="34" height={gauge.bottom - gauge.top} />
      <rect class="ink" x={gauge.x} y={level.toFixed(1)} width="34" height={(gauge.bottom - level).toFixed(1)} />
      <path class="line marked" d={`M${gauge.x - 12} ${limit}h58`} />
      <text x={gauge.x + 50} y={limit + 6}>
        {touch} V
      </text>
      <rect class="line paper" x="112" y="96" width="66" height="108" rx="4" />
      <text class="strong" x="145" y="156" text-anchor="middle">
        drive
      </text>
      {cores.map((y) => (
        <path key={y} class="line" d={leads === 'on' ? `M178 ${y}H258` : `M178 ${y}h16M242 ${y}h16`} />
      ))}
      <circle class="line paper" cx="304" cy="150" r="46" />
      <text class="strong" x="304" y="156" text-anchor="middle">
        motor
      </text>
      {perMinute > 0 && (
        <>
          <path class="line marked" d="M264 88a72 72 0 0 1 80 0" />
          <path class="line marked" d="M330 74l15 14l-20 4" />
        </>
      )}
      <text x="304" y="228" text-anchor="middle">
        {perMinute} min⁻¹
      </text>
      <text x="218" y="100" text-anchor="middle">
        {leads === 'on' ? 'on' : 'off'}
      </text>
      <text x="112" y="286">
        every supply locked out
      </text>
    </>
  );
}
