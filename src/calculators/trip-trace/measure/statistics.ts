/** More values than these are thinned out evenly before their middle one is looked for: sorting all of them takes long. */
const mostSorted = 8192;

/** The middle value, or nearly so of very many; 0 for none. The values keep their order. */
export function median(values: ArrayLike<number>): number {
  const every = Math.ceil(values.length / mostSorted) || 1;
  const sorted = new Float64Array(Math.ceil(values.length / every));
  for (let i = 0; i < sorted.length; i++) sorted[i] = values[i * every] ?? 0;
  sorted.sort();
  if (sorted.length === 0) return 0;
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

/** Largest magnitude between two places, both included. */
export function largest(values: Float64Array, from: number, to: number): number {
  let most = 0;
  for (let i = from; i <= to; i++) most = Math.max(most, Math.abs(values[i] ?? 0));
  return most;
}

/** The middle one of each value and its two neighbours: a value that stands alone is gone. */
export function withoutSpikes(values: Float64Array): Float64Array {
  return values.map((value, i) => {
    const [before, after] = [values[i - 1] ?? values[i + 1] ?? value, values[i + 1] ?? values[i - 1] ?? value];
    return Math.max(Math.min(before, after), Math.min(Math.max(before, after), value));
  });
}

/** Mean between two places, both included. */
export function mean(values: ArrayLike<number>, from = 0, to = values.length - 1): number {
  let sum = 0;
  for (let i = from; i <= to; i++) sum += values[i] ?? 0;
  return to < from ? 0 : sum / (to - from + 1);
}

/** At most this many samples are looked at for a noise: enough for a few per cent. */
const samplesForNoise = 20_000;

/**
 * Standard deviation of the noise of one sample. Second differences remove what changes steadily; the median of their
 * magnitudes ignores steps. For normal noise it is 0.6745 · √6 of the deviation.
 */
export function noiseOf(values: Float64Array, to: number): number {
  const from = Math.max(2, to - samplesForNoise);
  const second = new Float64Array(Math.max(0, to - from));
  for (let i = 0; i < second.length; i++) {
    const at = from + i;
    second[i] = Math.abs((values[at] ?? 0) - 2 * (values[at - 1] ?? 0) + (values[at - 2] ?? 0));
  }
  return median(second) / (0.6745 * Math.sqrt(6));
}

/** Share of `y` in `x` by least squares without their means, and the square of the correlation. */
export function regression(x: Float64Array, y: Float64Array, from: number, to: number): { share: number; fit: number } {
  const [meanX, meanY] = [mean(x, from, to), mean(y, from, to)];
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = from; i <= to; i++) {
    const [dx, dy] = [(x[i] ?? 0) - meanX, (y[i] ?? 0) - meanY];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  return xx === 0 || yy === 0 ? { share: 0, fit: 0 } : { share: xy / xx, fit: (xy * xy) / (xx * yy) };
}
