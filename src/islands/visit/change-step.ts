import type { StepId } from '../../guide/answers.ts';
import { newestBusReading } from '../../guide/dead-proofs.ts';
import { nextStep } from '../../guide/next-step.ts';
import { answerStep, noteDecision } from '../../record/change-visit.ts';
import type { Form } from '../../record/step-answers.ts';
import { provedInEachStretch, stepIds } from '../../record/step-forms.ts';
import { stretchAt } from '../../record/stretch.ts';
import { sameForm } from '../../record/visit-draft.ts';
import type { StepRecord, VisitRecord } from '../../record/visit-schema.ts';
import { decisionAdvice, decisionHeadline } from '../../texts/decision.ts';
import { busReading } from './prefill.ts';
import { recordAnswers, stepAnswer } from './record-answers.ts';
import { snapshotOf } from './snapshot.ts';
import { readingFields } from './step-readings.ts';

/**
 * The visit with a step's form as it now stands. Only an answer that the guide reads differently takes a new number: a
 * remark or another spelling must not ask the person to look at later steps again.
 */
export function enterStep(visit: VisitRecord, id: StepId, typed: Form, now: string): VisitRecord {
  const before = visit.steps[id];
  if (sameForm(before?.form ?? {}, typed)) return visit;
  const ofNow = id === 'bridge' ? withoutOldBus(visit, typed, now) : typed;
  const form = provedInEachStretch(id) && before ? provedNow(visit, before, typed, now) : ofNow;
  const entered = put(visit, id, form, now);
  const answer = (of: Form | undefined) => JSON.stringify(of && stepAnswer(id, of));
  if (before === undefined || answer(before.form) !== answer(form)) return withDecision(entered, now);
  const step = entered.steps[id];
  if (step === undefined) return entered;
  // Another spelling of a proof is no new proof: it stays of the time at which it was given. What was no answer proved
  // nothing, and what is entered now is of now.
  const isProof = provedInEachStretch(id) && answer(before.form) !== undefined;
  const kept = isProof ? { ...before, form: step.form } : { ...step, seq: before.seq };
  return { ...entered, seq: visit.seq, steps: { ...entered.steps, [id]: kept } };
}

/** Of a form that was begun in an earlier stretch of work, only what is entered now is proved now. */
function provedNow(visit: VisitRecord, before: StepRecord, typed: Form, now: string): Form {
  if (before.stretch === stretchAt(visit, now)) return typed;
  return Object.fromEntries(Object.entries(typed).filter(([field, value]) => (before.form[field] ?? '') !== value));
}

/**
 * A bus reading that stood in the form before a break was not measured after it. The form that is drawn for the new
 * stretch asks for it; this is for the first entry after the break, which may come before that.
 */
function withoutOldBus(visit: VisitRecord, typed: Form, now: string): Form {
  if (stretchAt(visit, now) === visit.stretch) return typed;
  const newest = newestBusReading(recordAnswers(visit, now));
  const old = [visit.steps.bridge, newest && visit.steps[newest]].map((step) => step?.form.busVoltage);
  return old.includes(typed.busVoltage) ? { ...typed, busVoltage: '' } : typed;
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
  const entered = answerStep(visit, id, { form, readings, snapshot: snapshotOf(id, form) }, now);
  const step = entered.steps[id];
  const bus = id === 'bridge' ? busReading(visit, now) : undefined;
  // A bus reading that was taken over from the lockout was measured then, not now.
  if (step === undefined || bus === undefined || bus.value !== form.busVoltage) return entered;
  if (step.readAt.busVoltage !== now) return entered;
  const dated = { ...step, readAt: { ...step.readAt, busVoltage: bus.at } };
  return { ...entered, steps: { ...entered.steps, [id]: dated } };
}

/** The decision as it is given now is kept with the record; one that no longer stands is dropped. */
function withDecision(visit: VisitRecord, now: string): VisitRecord {
  const { decision } = nextStep(recordAnswers(visit, now));
  if (decision !== undefined) {
    const sentences = [decisionHeadline(decision), ...decisionAdvice(decision)];
    return noteDecision(visit, { ...decision, sentences }, now);
  }
  const { decision: _outOfDate, ...open } = visit;
  return open;
}
