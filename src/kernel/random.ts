/** A stream of numbers from 0 to just below 1. The same seed gives the same stream on every machine. */
export type Random = () => number;

/**
 * Seeded generator: a counter, scrambled by integer multiplications (the finaliser of the public-domain MurmurHash3
 * family). Good enough for noise and draws; not for secrets. `seed` is any whole number.
 */
export function seeded(seed: number): Random {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** Uniform from `from` to `to`. */
export function between(random: Random, from: number, to: number): number {
  return from + (to - from) * random();
}

/** Uniform in the logarithm, for quantities that spread over decades. Both ends above zero. */
export function betweenDecades(random: Random, from: number, to: number): number {
  return from * (to / from) ** random();
}

/** One of a list that is not empty. */
export function oneOf<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)] as T;
}

/** True with this probability, 0 to 1. */
export function chance(random: Random, probability: number): boolean {
  return random() < probability;
}
