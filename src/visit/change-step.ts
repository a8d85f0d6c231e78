import { busReading, busTyped } from './bus-reading.ts';
import { type EvaluatedVisit, evaluate } from './evaluate.ts';
import { newestBusReading } from './guide/dead-proofs.ts';
import { answerStep, noteDecision } from './record/change-visit.ts';
import { sameForm } from './record/visit-draft.ts';
import type { StepRecord, VisitRecord } from './record/visit-schema.ts';
import { stepCalculators } from './steps/calculators.ts';
import type { Form } from './steps/fields.ts';
import { type StepId, stepIds } from './steps/ids.ts';
import { isMeasured, questions } from './steps/questions.ts';
import { holdsOneStretch } from './steps/rules.ts';
import { decisionAdvice, decisionHeadline } from './words/decision.ts';

/**
 * The visit with a step's form as it is now. Only an answer that means something else to the guide takes a new number:
 * a remark or another spelling must not make the person confirm later steps again.
 */
export function enterStep(before: EvaluatedVisit, id: StepId, typed: Form, now: string): EvaluatedVisit {
  const step = before.visit.steps[id];
  if (sameForm(step?.form ?? {}, typed)) return before;
  const today = evaluate(before.visit, now, before);
  const form = formOfNow(today, id, typed);
  const entered = put(today, id, form, now);
  const answered = isMeasured(id) ? entered.steps[id].answer : questions[id].read(form);
  if (step === undefined || JSON.stringify(today.steps[id].answer) !== JSON.stringify(answered)) {
    return withDecision(entered, now);
  }
  const written = entered.visit.steps[id] ?? step;
  // Another spelling of a proof is not a new proof, so it keeps the time at which it was given. A form that was not an
  // answer proved nothing, so what is entered now has the time of now.
  const isProof = holdsOneStretch(id) && today.steps[id].answer !== undefined;
  const kept = isProof ? { ...step, form: written.form } : { ...written, seq: step.seq };
  const visit = { ...entered.visit, seq: today.visit.seq, steps: { ...entered.visit.steps, [id]: kept } };
  return evaluate(visit, now, entered);
}

/** The part of the form that holds in the present stretch of work. */
function formOfNow(today: EvaluatedVisit, id: StepId, typed: Form): Form {
  const step = today.visit.steps[id];
  if (id === 'bridge') return withoutOldBus(today, typed);
  return holdsOneStretch(id) && step !== undefined ? provedNow(today, step, typed) : typed;
}

/** In a form begun in an earlier stretch of work, only what is entered now is proved now. */
function provedNow({ stretch }: EvaluatedVisit, step: StepRecord, typed: Form): Form {
  if (step.stretch === stretch) return typed;
  return Object.fromEntries(Object.entries(typed).filter(([field, value]) => (step.form[field] ?? '') !== value));
}

/**
 * Drops a bus reading that was in the form before a break: it was not measured after it. The form of the new stretch
 * asks for it; this covers a first entry that comes before that form is drawn.
 */
function withoutOldBus({ visit, stretch, answers }: EvaluatedVisit, typed: Form): Form {
  if (stretch === visit.stretch) return typed;
  const newest = newestBusReading(answers);
  const old = [visit.steps.bridge?.form.busVoltage, busTyped(newest && visit.steps[newest])?.value];
  return old.includes(typed.busVoltage) ? { ...typed, busVoltage: '' } : typed;
}

/** The person confirms that the answer still holds after earlier steps were changed. */
export function confirmStep(before: EvaluatedVisit, id: StepId, now: string): EvaluatedVisit {
  const form = before.visit.steps[id]?.form;
  return form === undefined ? before : withDecision(put(evaluate(before.visit, now, before), id, form, now), now);
}

/** Adds the snapshots and the decision to a record that came without them, such as one from a link. */
export function completed(evaluated: EvaluatedVisit, now: string): VisitRecord {
  const steps = stepIds.flatMap((id) => {
    const step = evaluated.visit.steps[id];
    const { snapshot } = evaluated.steps[id];
    return step === undefined ? [] : [[id, { ...step, ...(snapshot && { snapshot }) }] as const];
  });
  const visit = { ...evaluated.visit, steps: Object.fromEntries(steps) };
  return withDecision({ ...evaluated, visit }, now).visit;
}

function put(today: EvaluatedVisit, id: StepId, form: Form, now: string): EvaluatedVisit {
  const fields = isMeasured(id) ? stepCalculators[id].fields : questions[id].fields;
  const readings = fields.filter(({ kind }) => kind === 'reading').map((field) => field.id);
  const entered = evaluate(answerStep(today.visit, id, { form, readings }, now), now, today);
  const step = entered.visit.steps[id];
  if (step === undefined || !isMeasured(id)) return entered;
  const readAt = id === 'bridge' ? withBusTime(today, step, now) : step.readAt;
  const { snapshot } = entered.steps[id];
  const steps = { ...entered.visit.steps, [id]: { ...step, readAt, ...(snapshot && { snapshot }) } };
  return { ...entered, visit: { ...entered.visit, steps } };
}

/** A bus reading filled in from the lockout keeps the time of the lockout. */
function withBusTime(today: EvaluatedVisit, { form, readAt }: StepRecord, now: string): StepRecord['readAt'] {
  const bus = busReading(today);
  if (bus === undefined || bus.value !== form.busVoltage || readAt.busVoltage !== now) return readAt;
  return { ...readAt, busVoltage: bus.at };
}

/** Stores the present decision in the record, and removes one that no longer holds. */
function withDecision(evaluated: EvaluatedVisit, now: string): EvaluatedVisit {
  const { decision } = evaluated.guide;
  if (decision !== undefined) {
    const sentences = [decisionHeadline(decision), ...decisionAdvice(decision)];
    // That something was put right is in the headline.
    const { corrected: _, ...stored } = decision;
    return { ...evaluated, visit: noteDecision(evaluated.visit, { ...stored, sentences }, now) };
  }
  const { decision: _outOfDate, ...open } = evaluated.visit;
  return { ...evaluated, visit: open };
}
