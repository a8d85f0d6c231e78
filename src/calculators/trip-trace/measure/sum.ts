import type { PhasePlace, SumFigures } from '../rule/figures.ts';
import { largest, median, noiseOf, regression } from './statistics.ts';
import { lastMoments, type Trace } from './trace.ts';

/**
 * The sum of three measured currents. Kirchhoff: without a path to earth it is zero. A sum that is zero in every sample, to
 * less than its noise could be, was computed.
 */
export function sumOf(trace: Trace, noise: number, peak: number): SumFigures | undefined {
  if (trace.measured === 2) return undefined;
  const [u, v, w] = trace.currents;
  const { from, to } = lastMoments(trace);
  const sum = u.map((one, i) => one + (v[i] ?? 0) + (w[i] ?? 0)).subarray(0, to + 1);
  const sumNoise = noiseOf(sum, to);
  const zero = largest(sum, 0, to) < Math.max(1.5 * stepOf(u), 0.3 * noise, 1e-9 * peak);
  const offset = median(sum.subarray(0, Math.max(1, from)));
  const distance = sum.map((one) => one - offset);
  const shares = trace.currents.map((current) => regression(current, sum, 0, Math.max(0, from - 1)));
  const best = shares.reduce((a, b) => (b.fit > a.fit ? b : a));
  const phase = shares.indexOf(best) as PhasePlace;
  return {
    zero,
    noise: sumNoise,
    offset,
    atTrip: largest(distance, from, to),
    before: largest(distance, 0, from - 1),
    ...(best.fit > 0.2 && { follows: { phase, share: best.share, fit: best.fit } }),
  };
}

/** Smallest difference between neighbours that is not nothing: the step of the recorder. */
function stepOf(values: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < Math.min(values.length, 5000); i++) {
    const difference = Math.abs((values[i] ?? 0) - (values[i - 1] ?? 0));
    if (difference > 1e-12) least = Math.min(least, difference);
  }
  return Number.isFinite(least) ? least : 0;
}
