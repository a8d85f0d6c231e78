import { figureOf } from '../../../kernel/reading/reading.ts';
import type { Measurement } from '../../simulator/measure.ts';
import type { Readings } from './model.ts';

const volts = 500;

/** The current behind a reading, in µA. */
export function microamperesOf({ reading }: Measurement): number {
  return (volts / (figureOf(reading) ?? Number.POSITIVE_INFINITY)) * 1e6;
}

const [left, width] = [10, 340];

/** A bar for each current, by its share of the joined one: the two upper ones end to end make the lowest. */
export function JoinedDrawing({ result: { cable, motor, joined } }: { result: Readings }) {
  const [inCable, inMotor] = [microamperesOf(cable), microamperesOf(motor)];
  const all = inCable + inMotor;
  const shareOfCable = (width * inCable) / all;
  const bars = [
    { name: 'cable', y: 34, x: left, length: shareOfCable, reading: cable, look: 'line' },
    { name: 'motor', y: 114, x: left + shareOfCable, length: width - shareOfCable, reading: motor, look: 'line' },
    { name: 'joined', y: 194, x: left, length: width, reading: joined, look: 'line marked' },
  ];
  return (
    <>
      <path class="line dotted" d={`M${(left + shareOfCable).toFixed(1)} 34V220`} />
      {bars.map(({ name, y, x, length, reading, look }) => (
        <g key={name}>
          <text class="halo" x={left} y={y - 10}>
            {name} <tspan class="figures strong">{reading.text}</tspan>
          </text>
          <text class="figures" x={left + width} y={y - 10} text-anchor="end">
            {microamperesOf(reading).toFixed(1)} µA
          </text>
          <rect class={look} x={x.toFixed(1)} y={y} width={Math.max(2, length).toFixed(1)} height="26" />
          {name === 'cable' && <rect class="shade" x={x} y={y} width={Math.max(2, length).toFixed(1)} height="26" />}
        </g>
      ))}
      <rect class="shade" x={left} y="194" width={shareOfCable.toFixed(1)} height="26" />
      <text x={left} y="248">
        current at {volts} V: cable + motor = joined
      </text>
    </>
  );
}
