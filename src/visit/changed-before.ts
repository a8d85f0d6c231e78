import { isDeadProof } from './guide/dead-proofs.ts';
import type { PathStep } from './guide/path.ts';
import type { VisitRecord } from './record/visit-schema.ts';
import type { StepId } from './steps/ids.ts';
import { isPlain, rules } from './steps/rules.ts';

/** The numbers, from 1, of the earlier steps that this one rests on and that were changed after it. */
export function changedBefore(visit: VisitRecord, path: readonly PathStep[], id: StepId): number[] {
  const own = visit.steps[id]?.seq ?? 0;
  const index = path.findIndex((step) => step.id === id);
  const later = path
    .map((step, position) => ({ id: step.id, number: position + 1 }))
    .slice(0, Math.max(index, 0))
    .filter((step) => (visit.steps[step.id]?.seq ?? 0) > own);
  const counted = later.filter((step) => restsOn(id, step.id));
  return (counted.length > 0 ? counted : later).map(({ number }) => number);
}

/** A lockout or support rests on all steps before it, and every later step rests on it. */
function restsOn(id: StepId, earlier: StepId): boolean {
  if (!isPlain(id) || isDeadProof(earlier) || earlier === 'support-axis') return true;
  return rules[id].restsOn.includes(earlier);
}
