import * as replay from '../../src/visit/app/replay-draft.ts';
import * as change from '../../src/visit/change-step.ts';
import { evaluate } from '../../src/visit/evaluate.ts';
import type { VisitDraft } from '../../src/visit/record/visit-draft.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import type { Form } from '../../src/visit/steps/fields.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';

// Changes of a visit from record to record, for tests that only check the record.

export function enterStep(visit: VisitRecord, id: StepId, typed: Form, now: string): VisitRecord {
  return change.enterStep(evaluate(visit, now), id, typed, now).visit;
}

export function confirmStep(visit: VisitRecord, id: StepId, now: string): VisitRecord {
  return change.confirmStep(evaluate(visit, now), id, now).visit;
}

export function completed(visit: VisitRecord, now: string): VisitRecord {
  return change.completed(evaluate(visit, now), now);
}

export function replayDraft(visit: VisitRecord, draft: VisitDraft): VisitRecord {
  return replay.replayDraft(evaluate(visit, visit.changedAt), draft);
}
