import type { Trace } from '../../../../src/calculators/trip-trace/measure/trace.ts';

/** A trace that is computed from formulas: what each phase carries at a time, in A. */
export interface Computed {
  step?: number;
  seconds?: number;
  /** Of the trip; at the end if absent. */
  tripAt?: number;
  currents: (t: number) => readonly [number, number, number];
  bus?: (t: number) => number;
  speed?: (t: number) => number;
  torque?: (t: number) => number;
  polePairs?: number;
  measured?: 2 | 3;
}

export function computedTrace({
  step = 125e-6,
  seconds = 0.4,
  tripAt = seconds,
  currents,
  polePairs,
  measured = 3,
  ...of
}: Computed): Trace {
  const time = Float64Array.from({ length: Math.round(seconds / step) + 1 }, (_, i) => i * step);
  const phase = (k: 0 | 1 | 2) => time.map((t) => currents(t)[k]);
  return {
    file: 'computed.csv',
    time,
    step,
    currents: [phase(0), phase(1), phase(2)],
    inAmperes: true,
    measured,
    busInVolts: true,
    speedInRpm: true,
    trip: Math.round(tripAt / step),
    tripFrom: 'typed',
    ...(of.bus && { bus: time.map(of.bus) }),
    ...(of.speed && { speed: time.map(of.speed) }),
    ...(of.torque && { torque: time.map(of.torque) }),
    ...(polePairs !== undefined && { polePairs }),
  };
}

/** Three currents of one amplitude that turn with this frequency. */
export const turning =
  (amplitude: number, hertz: number) =>
  (t: number): [number, number, number] => {
    const angle = 2 * Math.PI * hertz * t;
    const third = (2 * Math.PI) / 3;
    return [amplitude * Math.cos(angle), amplitude * Math.cos(angle - third), amplitude * Math.cos(angle + third)];
  };
