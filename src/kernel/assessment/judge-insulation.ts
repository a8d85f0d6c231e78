import { type Interval, times } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';

/**
 * One insulation reading compared with a limit. `hot` looks bad only because the winding is warm, `cold` looks good
 * only because it is cold; `too-close` is within the stated accuracy; `bound-too-low` and `bound-too-high` are over-
 * and under-range readings that don't reach the limit.
 */
export type PointJudgement =
  | 'good'
  | 'bad'
  | 'hot'
  | 'cold'
  | 'temperature-needed'
  | 'too-close'
  | 'bound-too-low'
  | 'bound-too-high';

/**
 * After a trip: good only if the reading itself and its value at the reference temperature both reach `point` (Ω), bad
 * only if both stay below. `factor` converts to the reference temperature; it is an interval if the temperature is
 * unknown.
 */
export function judgeAfterTrip(reading: Reading, interval: Interval, point: number, factor: Interval): PointJudgement {
  const corrected = times(interval, factor);
  if (interval.lo >= point && corrected.lo >= point) return 'good';
  if (interval.hi < point && corrected.hi < point) return 'bad';
  if (interval.lo < point && interval.hi >= point) return unsharp(reading, interval);
  if (factor.lo < factor.hi) return 'temperature-needed';
  // With one factor the reading is sharp and its corrected value is not: the accuracy straddles only there.
  const sharp = corrected.lo >= point || corrected.hi < point;
  if (!sharp) return unsharp(reading, interval);
  return interval.hi < point ? 'hot' : 'cold';
}

/** Routine: the corrected value alone counts, against the minimum (Ω) of the machine class. */
export function judgeRoutine(reading: Reading, interval: Interval, minimum: number, factor: Interval): PointJudgement {
  const corrected = times(interval, factor);
  if (corrected.lo >= minimum) return 'good';
  if (corrected.hi < minimum) return 'bad';
  return factor.lo < factor.hi ? 'temperature-needed' : unsharp(reading, interval);
}

function unsharp(reading: Reading, interval: Interval): PointJudgement {
  if (interval.hi === Number.POSITIVE_INFINITY) return 'bound-too-low';
  return reading.kind === 'under' ? 'bound-too-high' : 'too-close';
}
