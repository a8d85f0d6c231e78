import type { StepId } from '../../guide/answers.ts';
import { changeDetails } from '../../record/change-visit.ts';
import { unsavedPart, type VisitDraft } from '../../record/visit-draft.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { enterStep } from './change-step.ts';

/**
 * The visit with what was typed before its window was left or the browser ended. Each entry keeps the time at which it
 * was typed: a lockout that was half written down yesterday is no lockout of today.
 */
export function replayDraft(visit: VisitRecord, draft: VisitDraft): VisitRecord {
  const { steps, details } = unsavedPart(draft, visit);
  const withSteps = Object.entries(steps).reduce(
    (before, [id, typed]) => (typed === undefined ? before : enterStep(before, id as StepId, typed.form, typed.at)),
    visit,
  );
  return details === undefined ? withSteps : changeDetails(withSteps, defined(details.values), details.at);
}

/** Without the fields that hold nothing at all, which would take away what the visit has. */
function defined<T extends object>(values: { [K in keyof T]?: T[K] | undefined }): Partial<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Partial<T>;
}
