import type { PhasePlace, SumFigures } from '../rule/figures.ts';
import { largest, mean, median, noiseOf, regression, withoutSpikes } from './statistics.ts';
import { lastMoments, type Trace } from './trace.ts';

/**
 * The sum of three measured currents. Kirchhoff: without a path to earth it is zero. A sum that is zero in every sample, to
 * less than its noise could be, was computed. One sample or two that stand alone may be a disturbance of the recorder, so
 * only a sum that lasts for three counts; one at the trip may also be all that was stored of a fault.
 */
export function sumOf(trace: Trace, noise: number, peak: number): SumFigures | undefined {
  if (trace.measured === 2) return undefined;
  const [u, v, w] = trace.currents;
  const { from, to } = lastMoments(trace);
  const raw = u.map((one, i) => one + (v[i] ?? 0) + (w[i] ?? 0)).subarray(0, to + 1);
  const sum = withoutSpikes(raw);
  const found = Math.min(...[u, v, w].map((one) => stepOf(one, peak)));
  const step = Number.isFinite(found) ? found : 0;
  const zero = median(raw.map(Math.abs)) < Math.max(1.6 * step, 0.02 * noise, 1e-9 * peak);
  const offset = median(sum.subarray(0, Math.max(1, from)));
  const distance = raw.map((one) => Math.abs(one - offset));
  const lasting = distance.map((one, i) => Math.min(one, distance[i - 1] ?? one, distance[i - 2] ?? one));
  const before = Math.max(0, from - 1);
  const shares = trace.currents.map((current) => regression(current, sum, 0, before));
  const best = shares.reduce((a, b) => (b.fit > a.fit ? b : a));
  const phase = shares.indexOf(best) as PhasePlace;
  const current = withoutSpikes(trace.currents[phase]);
  const middle = mean(current, 0, before);
  const swing = largest(
    current.map((one) => one - middle),
    0,
    before,
  );
  return {
    zero: zero && sum.filter((one) => Math.abs(one) > Math.max(3 * step, noise, 1e-9 * peak)).length <= fewSamples,
    noise: Math.max(noiseOf(raw, to), step / 3),
    offset,
    atTrip: largest(lasting, from, to),
    alone: largest(
      raw.map((one) => one - offset),
      Math.max(from, trace.trip - 1),
      to,
    ),
    before: largest(lasting, 0, from - 1),
    ...(best.fit > 0.2 && { follows: { phase, share: best.share, fit: best.fit, amps: Math.abs(best.share) * swing } }),
  };
}

/** Samples of a computed sum that disturbances may have moved. */
const fewSamples = 2;

/** At most so many values of a current tell its step. */
const valuesForStep = 2000;

/** Smallest difference of two values that is not nothing: the step of the recorder; infinite if all are alike. */
function stepOf(values: Float64Array, peak: number): number {
  const sorted = values.slice(0, valuesForStep).sort();
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < sorted.length; i++) {
    const difference = (sorted[i] ?? 0) - (sorted[i - 1] ?? 0);
    if (difference > 1e-6 * peak) least = Math.min(least, difference);
  }
  return least;
}
