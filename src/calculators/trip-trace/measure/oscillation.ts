import type { OscillationFigures } from '../rule/figures.ts';
import { largest, mean } from './statistics.ts';
import type { Trace } from './trace.ts';

interface Signal {
  of: OscillationFigures['of'];
  values: Float64Array;
}

/** Stretches before the trip in which an oscillation is looked for, in s: from current loop to position loop. */
const stretches = [0.02, 0.06, 0.2, 0.6];

/**
 * Looks for a regular oscillation that ends at the trip, in the torque-producing current, the torque command, the speed, or
 * the size of the current. The moving mean is taken off, then half periods are counted with a band around zero.
 */
export function oscillationOf(
  trace: Trace,
  signals: readonly Signal[],
  electricalHertz: number | undefined,
): OscillationFigures | undefined {
  const found = signals.flatMap((signal) => stretches.flatMap((seconds) => within(trace, signal, seconds) ?? []));
  if (found.length === 0) return undefined;
  const best = found.reduce((a, b) => (weight(b) > weight(a) ? b : a));
  return { ...best, ...(electricalHertz !== undefined && { electricalHertz }) };
}

const weight = ({ share, cycles, irregularity }: OscillationFigures) =>
  (share * Math.min(cycles, 8)) / (0.05 + irregularity);

function within({ trip, step }: Trace, { of, values }: Signal, seconds: number): OscillationFigures | undefined {
  const samples = Math.min(trip, Math.round(seconds / step));
  if (samples < 40) return undefined;
  const from = trip - samples;
  const part = values.subarray(from, trip + 1);
  const rest = withoutMean(part, Math.max(4, Math.round(samples / 6)));
  const amplitude = largest(rest, 0, rest.length - 1);
  const scale = largest(values, 0, trip);
  if (scale === 0) return undefined;
  const crossings = crossingsOf(rest, amplitude * 0.25);
  const halves = crossings.slice(1).map((at, i) => at - (crossings[i] ?? 0));
  if (halves.length < 7) return undefined;
  const usual = mean(halves);
  // The last crossing must lie near the trip, or the oscillation had ended.
  if (rest.length - (crossings[crossings.length - 1] ?? 0) > 2.5 * usual || usual < 4) return undefined;
  const spread = Math.sqrt(mean(halves.map((half) => (half - usual) ** 2))) / usual;
  const third = Math.floor(rest.length / 3);
  const [early, late] = [largest(rest, 0, third), largest(rest, 2 * third, rest.length - 1)];
  return {
    of,
    hertz: 1 / (2 * usual * step),
    cycles: halves.length / 2,
    share: late / scale,
    growth: early > 0 ? late / early : 1,
    irregularity: spread,
  };
}

/** Takes the moving mean off, by running sums. */
function withoutMean(values: Float64Array, half: number): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = (sums[i] ?? 0) + (values[i] ?? 0);
  return values.map((value, i) => {
    const [from, to] = [Math.max(0, i - half), Math.min(values.length, i + half + 1)];
    return value - ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);
  });
}

function crossingsOf(values: Float64Array, band: number): number[] {
  const places: number[] = [];
  let side = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0;
    const now = value > band ? 1 : value < -band ? -1 : side;
    if (side !== 0 && now !== side) places.push(i);
    side = now;
  }
  return places;
}
