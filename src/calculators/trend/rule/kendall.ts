/**
 * How many of the slopes of all pairs may be dropped at each end, so that the rest still contains the true slope with
 * the wanted confidence; -1 with too few points for any interval. The number of pairs with a slope below the true one
 * is distributed like the inversions of a random order (Kendall 1938; Sen 1968). `ties` says how many points share each
 * x; such points make no pair. Exact up to `exactUpTo` points, then normal with the usual correction for ties. Rounded
 * outwards: never narrower than wanted.
 * @param tail probability left out at each end, such as 0.025
 * @param z the corresponding normal deviate, such as 1.96
 */
export function ranksLeftOut(ties: readonly number[], tail: number, z: number): number {
  const points = ties.reduce((sum, size) => sum + size, 0);
  if (points > exactUpTo) {
    const pairs = (points * (points - 1) - ties.reduce((sum, size) => sum + size * (size - 1), 0)) / 2;
    return Math.max(-1, Math.floor((pairs - z * Math.sqrt(variance(points, ties))) / 2) - 1);
  }
  let sum = 0;
  let out = -1;
  for (const probability of inversionDistribution(ties)) {
    sum += probability;
    if (sum > tail * (1 + 1e-9)) return out;
    out++;
  }
  return out;
}

const exactUpTo = 60;

/** Variance of the difference between rising and falling pairs (Kendall 1975, with ties in one of the variables). */
function variance(points: number, ties: readonly number[]): number {
  const term = (n: number) => n * (n - 1) * (2 * n + 5);
  return (term(points) - ties.reduce((sum, size) => sum + term(size), 0)) / 18;
}

/**
 * The probability of each number of inversions, 0 first, in a random order of items of which some are equal: the
 * Gaussian multinomial coefficient, divided by its sum. Built group by group as a product of factors (1 - q^(m+i)) / (1
 * - q^i), each scaled so that the sum stays 1.
 */
export function inversionDistribution(ties: readonly number[]): number[] {
  let chances = [1];
  let placed = 0;
  for (const size of ties) {
    for (let i = 1; i <= size; i++) chances = dividedBy(timesRun(chances, placed + i), i);
    placed += size;
  }
  return chances;
}

/** Times (1 + q + … + q^(length-1)) / length. */
function timesRun(chances: readonly number[], length: number): number[] {
  const result: number[] = [];
  let running = 0;
  for (let k = 0; k < chances.length + length - 1; k++) {
    running += chances[k] ?? 0;
    running -= chances[k - length] ?? 0;
    result.push(Math.max(0, running) / length);
  }
  return result;
}

/** Divided by the same, without a remainder. */
function dividedBy(chances: readonly number[], length: number): number[] {
  const result: number[] = [];
  for (let k = 0; k < chances.length - length + 1; k++) {
    const rise = (chances[k] ?? 0) - (chances[k - 1] ?? 0);
    result.push(Math.max(0, (result[k - length] ?? 0) + length * rise));
  }
  return result;
}
