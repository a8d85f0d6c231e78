import type { RotationFigures, SpeedJumpFigures } from '../rule/figures.ts';
import { largest, mean, median } from './statistics.ts';
import { lastMoments, type Trace } from './trace.ts';
import type { CurrentVector } from './vector.ts';

interface Window {
  from: number;
  to: number;
  hertz: number;
  rpm: number;
}

/**
 * Compares the frequency of the currents with the speed: f = p · n / 60. It is taken in windows in which the current is well
 * above its noise and its angle can be followed (five samples a turn or more).
 */
export function rotationOf(
  trace: Trace,
  vector: CurrentVector,
  noise: number,
  peak: number,
): RotationFigures | undefined {
  const { speed, speedInRpm, step, trip } = trace;
  if (speed === undefined || !speedInRpm) return undefined;
  const length = Math.max(8, Math.round(0.005 / step));
  const least = Math.max(8 * noise, 0.08 * peak);
  const fastest = largest(speed, 0, trip);
  const windows: Window[] = [];
  for (let to = trip; to - length >= 0; to -= length) {
    const from = to - length;
    const window = windowAt(trace, vector, speed, from, to);
    const steady = Math.min(...vector.magnitude.subarray(from, to + 1)) > least;
    if (steady && Math.abs(window.hertz) * step < 0.2) windows.unshift(window);
  }
  const turning = windows.filter(({ rpm }) => Math.abs(rpm) > Math.max(0.1 * fastest, 5));
  if (turning.length < 4) return undefined;
  const last = windows.slice(-2).filter(({ to }) => to > trip - 3 * length);
  const before = turning.filter(({ to }) => to <= trip - 2 * length);
  if (last.length < 2 || before.length < 2) return undefined;
  const pairs = before.map(({ hertz, rpm }) => (60 * hertz) / rpm);
  const middle = median(pairs);
  const spread = median(pairs.map((one) => Math.abs(one - middle)));
  return {
    windows: turning.length,
    pairsBefore: middle,
    spread,
    lastHertz: mean(last.map(({ hertz }) => hertz)),
    lastRpm: mean(last.map(({ rpm }) => rpm)),
    lastSeconds: last.length * length * step,
  };
}

function windowAt({ step }: Trace, { angle }: CurrentVector, speed: Float64Array, from: number, to: number): Window {
  // Slope of the angle by least squares: a single noisy end does not decide.
  const middle = (from + to) / 2;
  let [above, below] = [0, 0];
  for (let i = from; i <= to; i++) {
    above += (i - middle) * (angle[i] ?? 0);
    below += (i - middle) ** 2;
  }
  return { from, to, hertz: above / below / step / (2 * Math.PI), rpm: mean(speed, from, to) };
}

/** Largest change of the speed within two samples, just before the trip and earlier. No mass changes its speed like that. */
export function speedJumpOf(trace: Trace): SpeedJumpFigures | undefined {
  const { speed, trip, step, time } = trace;
  if (speed === undefined || trip < 20) return undefined;
  const highest = largest(speed, 0, trip);
  if (highest === 0) return undefined;
  const recent = Math.max(4, Math.round(0.01 / step));
  const { to } = lastMoments(trace);
  let [share, before] = [0, 0];
  for (let i = 2; i <= Math.min(trip, to); i++) {
    const isGap = (time[i] ?? 0) - (time[i - 2] ?? 0) > 2.5 * step;
    const change = isGap ? 0 : Math.abs((speed[i] ?? 0) - (speed[i - 2] ?? 0)) / highest;
    if (i > trip - recent) share = Math.max(share, change);
    else before = Math.max(before, change);
  }
  return { share, before };
}
