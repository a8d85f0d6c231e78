import { enterStep } from '../change-step.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { changeDetails } from '../record/change-visit.ts';
import { takenOver } from '../record/stretch.ts';
import { unsavedPart, type VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { StepId } from '../steps/ids.ts';

/**
 * The visit with what was typed before its window was left or the browser ended. Each entry keeps the time at which it
 * was typed, and they follow each other by it: a lockout that was half written down yesterday is no lockout of today, and
 * none that was written down before power was given stands after it.
 */
export function replayDraft(stored: EvaluatedVisit, draft: VisitDraft): VisitRecord {
  const { visit } = stored;
  const { steps, details } = unsavedPart(draft, visit);
  const typed = Object.entries(steps)
    .flatMap(([id, entry]) => (entry === undefined ? [] : [{ id: id as StepId, ...entry }]))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const withTyped = typed.reduce((before, { id, form, at }) => enterStep(before, id, form, at), stored).visit;
  // Typed before what the visit has already: nothing tells what happened in between.
  const withSteps = typed.some(({ at }) => isBeforeAnswersOf(visit, at)) ? takenOver(withTyped) : withTyped;
  return details === undefined ? withSteps : changeDetails(withSteps, defined(details.values), details.at);
}

function isBeforeAnswersOf(visit: VisitRecord, at: string): boolean {
  return Object.values(visit.steps).some((step) => step !== undefined && Date.parse(step.at) > Date.parse(at));
}

/** Without the fields that hold nothing at all, which would take away what the visit has. */
function defined<T extends object>(values: { [K in keyof T]?: T[K] | undefined }): Partial<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Partial<T>;
}
