import type { Interval } from '../reading/interval.ts';

/** Resistances in parallel: 1/R = Σ 1/Rn, in ohms. One of zero makes zero; an infinite one adds nothing. */
export function parallel(resistances: readonly number[]): number {
  if (resistances.some((resistance) => resistance === 0)) return 0;
  const conductance = resistances.reduce((sum, resistance) => sum + 1 / resistance, 0);
  return conductance === 0 ? Number.POSITIVE_INFINITY : 1 / conductance;
}

/** The possible parallel resistance of values in these intervals. */
export function parallelInterval(intervals: readonly Interval[]): Interval {
  return { lo: parallel(intervals.map(({ lo }) => lo)), hi: parallel(intervals.map(({ hi }) => hi)) };
}

/**
 * The unknown resistance in parallel with known ones, from the reading of all together. The upper end is Infinity if
 * the known ones alone explain the joined reading.
 */
export function besideKnown(joined: Interval, known: readonly Interval[]): Interval {
  const least = known.reduce((sum, { hi }) => sum + 1 / hi, 0);
  const most = known.reduce((sum, { lo }) => sum + 1 / lo, 0);
  const highest = 1 / joined.lo - least;
  const lowest = 1 / joined.hi - most;
  return {
    lo: highest > 0 ? 1 / highest : Number.POSITIVE_INFINITY,
    hi: lowest > 0 ? 1 / lowest : Number.POSITIVE_INFINITY,
  };
}
