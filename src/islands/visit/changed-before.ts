import type { StepId } from '../../guide/answers.ts';
import type { PathStep } from '../../guide/next-step.ts';
import { definitions } from '../../guide/steps.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';

/** The numbers, from 1, of the earlier steps that were changed after this one and that it rests on. */
export function changedBefore(visit: VisitRecord, path: readonly PathStep[], id: StepId): number[] {
  const own = visit.steps[id]?.seq ?? 0;
  const index = path.findIndex((step) => step.id === id);
  const later = path
    .map((step, position) => ({ id: step.id, number: position + 1 }))
    .slice(0, Math.max(index, 0))
    .filter((step) => (visit.steps[step.id]?.seq ?? 0) > own);
  const named = restsOn(id);
  const counted = later.filter(
    (step) => named === undefined || named.has(step.id) || /^lockout|^prove|^support-axis/.test(step.id),
  );
  return (counted.length > 0 ? counted : later).map(({ number }) => number);
}

/** Lockouts and support rest on what the guide put them before. */
function restsOn(id: StepId): Set<StepId> | undefined {
  return id in definitions ? new Set(definitions[id as keyof typeof definitions].restsOn) : undefined;
}
