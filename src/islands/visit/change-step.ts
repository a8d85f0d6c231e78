import type { StepId } from '../../guide/answers.ts';
import { nextStep } from '../../guide/next-step.ts';
import { answerStep, noteDecision } from '../../record/change-visit.ts';
import type { Form } from '../../record/step-answers.ts';
import { stepIds } from '../../record/step-forms.ts';
import { sameForm } from '../../record/visit-draft.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { decisionAdvice, decisionHeadline } from '../../texts/decision.ts';
import { recordAnswers, stepAnswer } from './record-answers.ts';
import { snapshotOf } from './snapshot.ts';
import { readingFields } from './step-readings.ts';

/**
 * The visit with a step's form as it now stands. Only an answer that the guide reads differently takes a new number: a
 * remark or another spelling must not ask the person to look at later steps again.
 */
export function enterStep(visit: VisitRecord, id: StepId, form: Form, now: string): VisitRecord {
  const before = visit.steps[id];
  if (sameForm(before?.form ?? {}, form)) return visit;
  const entered = put(visit, id, form, now);
  const answer = (of: Form | undefined) => JSON.stringify(of && stepAnswer(id, of));
  if (before === undefined || answer(before.form) !== answer(form)) return withDecision(entered, now);
  const step = entered.steps[id];
  const kept = step === undefined ? entered.steps : { ...entered.steps, [id]: { ...step, seq: before.seq } };
  return { ...entered, seq: visit.seq, steps: kept };
}

/** The person has looked again, and the answer holds after what was changed before it. */
export function confirmStep(visit: VisitRecord, id: StepId, now: string): VisitRecord {
  const form = visit.steps[id]?.form;
  return form === undefined ? visit : withDecision(put(visit, id, form, now), now);
}

/** A visit that came without what is computed from it, such as one from a link: computed anew. */
export function completed(visit: VisitRecord, now: string): VisitRecord {
  const steps = stepIds.flatMap((id) => {
    const step = visit.steps[id];
    const snapshot = step && snapshotOf(id, step.form);
    return step === undefined ? [] : [[id, { ...step, ...(snapshot && { snapshot }) }] as const];
  });
  return withDecision({ ...visit, steps: Object.fromEntries(steps) }, now);
}

function put(visit: VisitRecord, id: StepId, form: Form, now: string): VisitRecord {
  const readings = readingFields(id).map((field) => field.id);
  return answerStep(visit, id, { form, readings, snapshot: snapshotOf(id, form) }, now);
}

/** The decision as it is given now is kept with the record; one that no longer stands is dropped. */
function withDecision(visit: VisitRecord, now: string): VisitRecord {
  const { decision } = nextStep(recordAnswers(visit));
  if (decision !== undefined) {
    const sentences = [decisionHeadline(decision), ...decisionAdvice(decision)];
    return noteDecision(visit, { ...decision, sentences }, now);
  }
  const { decision: _outOfDate, ...open } = visit;
  return open;
}
