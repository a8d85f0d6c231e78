import type { Cause } from '../../../src/kernel/vocabulary.ts';
import type { FaultedAxis } from '../../../src/practice/simulator/faulted-axis.ts';
import type { Decision } from '../../../src/visit/guide/decision.ts';

/**
 * What a decision is worth against the truth. `proven`: every bad part and no other. `concluded`: no part of the axis is bad,
 * and the decision rightly finds nothing, or the mechanics. `nothing-named`: no part is bad, none is named or suspect, and the
 * family of the cause is among those still possible; the visit ends open.
 * `rightly-open`: no part is proven, and the family of the cause is among those still possible. `open`: it is not.
 * `sound-suspect`: no part is bad, and one is suspect without proof.
 * `by-exclusion`: a part is named without proof. `false-no-fault`: no fault found although it will come again.
 * `sound-proven`: a sound part is proven bad. `missed-beside`: a bad part is not named beside a proven one.
 */
export type FieldResult = (typeof fieldResults)[number];

export const fieldResults = [
  'proven',
  'concluded',
  'nothing-named',
  'rightly-open',
  'open',
  'sound-suspect',
  'by-exclusion',
  'false-no-fault',
  'sound-proven',
  'missed-beside',
] as const;

type Truth = Pick<FaultedAxis, 'bad' | 'cause' | 'trips' | 'feel'>;

/** Families that the decision leaves possible; a decision of a guide that lists none leaves none. */
export function possibleIn(decision: Decision & { possible?: readonly Cause[] }): readonly Cause[] {
  return decision.possible ?? [];
}

export function judgeVisit({ bad, cause, trips, feel }: Truth, decision: Decision): FieldResult {
  const named = decision.replace.map(({ part }) => part);
  if (decision.kind === 'replace') {
    if (named.some((part) => !bad.includes(part))) return 'sound-proven';
    return bad.every((part) => named.includes(part)) ? 'proven' : 'missed-beside';
  }
  if (named.length > 0) return 'by-exclusion';
  const listed = possibleIn(decision).includes(cause);
  if (decision.kind === 'no-fault-found') {
    const gone = bad.length === 0 && trips.every(({ every }) => every === 0);
    return gone ? 'concluded' : 'false-no-fault';
  }
  if (decision.kind === 'mechanical') return feel !== 'free' && bad.length === 0 ? 'concluded' : 'open';
  if (!listed) return 'open';
  if (bad.length > 0) return 'rightly-open';
  return decision.suspect.length === 0 ? 'nothing-named' : 'sound-suspect';
}
