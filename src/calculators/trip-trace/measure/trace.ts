import type { TripFrom } from '../rule/figures.ts';
import { median } from './statistics.ts';

/** The samples of a recording in units that can be computed with; all series have the same length. */
export interface Trace {
  file: string;
  /** In s, rising. */
  time: Float64Array;
  /** Usual step of the time, in s. */
  step: number;
  /** U, V, W in A, or in per cent if `inAmperes` is false. */
  currents: readonly [Float64Array, Float64Array, Float64Array];
  inAmperes: boolean;
  /** Two: W is minus the sum of the others. */
  measured: 2 | 3;
  bus?: Float64Array;
  busInVolts: boolean;
  speed?: Float64Array;
  speedInRpm: boolean;
  position?: Float64Array;
  torque?: Float64Array;
  /** Index of the sample at the trip. */
  trip: number;
  tripFrom: TripFrom;
  polePairs?: number;
}

/** The samples of the last moments: 2 ms, but at least four samples, up to one sample after the trip. */
export function lastMoments({ step, trip, time }: Trace): { from: number; to: number } {
  const samples = Math.max(4, Math.round(0.002 / step));
  return { from: Math.max(1, trip - samples), to: Math.min(time.length - 1, trip + 1) };
}

/** Steps of this many rows tell the usual one. */
const rowsForStep = 20_000;

/** The usual step of rising times, in s. */
export function medianStep(time: Float64Array): number {
  const steps = time.subarray(1, rowsForStep).map((one, i) => one - (time[i] ?? 0));
  return median(steps.filter((one) => one > 0));
}
