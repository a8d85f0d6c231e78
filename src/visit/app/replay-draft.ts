import { enterStep } from '../change-step.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { changeDetails } from '../record/change-visit.ts';
import { asNewStretch } from '../record/stretch.ts';
import { unsavedPart, type VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { StepId } from '../steps/ids.ts';

/**
 * Adds to a visit what was typed before its window was left or the browser ended. The entries are applied in the order of
 * the times at which they were typed, and keep these times: a lockout typed yesterday does not count today, and one typed
 * before a step with power does not count after it.
 */
export function replayDraft(stored: EvaluatedVisit, draft: VisitDraft): VisitRecord {
  const { visit } = stored;
  const { steps, details } = unsavedPart(draft, visit);
  const typed = Object.entries(steps)
    .flatMap(([id, entry]) => (entry === undefined ? [] : [{ id: id as StepId, ...entry }]))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const withTyped = typed.reduce((before, { id, form, at }) => enterStep(before, id, form, at), stored).visit;
  // Typed before an answer that the visit already has: what happened in between is unknown.
  const withSteps = typed.some(({ at }) => isBeforeAnswersOf(visit, at)) ? asNewStretch(withTyped) : withTyped;
  return details === undefined ? withSteps : changeDetails(withSteps, defined(details.values), details.at);
}

function isBeforeAnswersOf(visit: VisitRecord, at: string): boolean {
  return Object.values(visit.steps).some((step) => step !== undefined && Date.parse(step.at) > Date.parse(at));
}

/** Without undefined fields, which would remove what the visit has. */
function defined<T extends object>(values: { [K in keyof T]?: T[K] | undefined }): Partial<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Partial<T>;
}
