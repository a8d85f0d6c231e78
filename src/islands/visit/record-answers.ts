import type { Assessment } from '../../calc/index.ts';
import type { Answered, Answers, MeasurementAnswer, StepId, VisitAnswers } from '../../guide/answers.ts';
import { type Form, plainAnswer, ticked } from '../../record/step-answers.ts';
import { isMeasurement, type MeasurementStepId, stepIds } from '../../record/step-forms.ts';
import { stretchAt } from '../../record/stretch.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { bridgeForm } from '../bridge/form.ts';
import type { CalculatorForm } from '../form/calculator-form.ts';
import { isBlank } from '../form/field.ts';
import { readForm } from '../form/read-form.ts';
import { insulationForm } from '../insulation/form.ts';
import { isolationForm } from '../isolation/form.ts';
import { windingForm } from '../winding/form.ts';

/**
 * The record as the guide sees it at `now`, computed anew from the typed texts; snapshots count for nothing. A form that
 * is incomplete or can't be read gives no answer, so that its step stays due. What was answered in an earlier stretch of
 * work than the one that `now` belongs to is marked.
 */
export function recordAnswers(visit: VisitRecord, now: string): VisitAnswers {
  const stretch = stretchAt(visit, now);
  const answers = stepIds.flatMap((id) => {
    const step = visit.steps[id];
    const answer = step && stepAnswer(id, step.form);
    if (answer === undefined) return [];
    return [[id, { seq: step?.seq, answer, ...(step && step.stretch < stretch && { earlier: true }) }] as const];
  });
  return Object.fromEntries(answers) as VisitAnswers;
}

/** The answer of one step from its form as typed. Never throws. */
export function stepAnswer<Id extends StepId>(id: Id, form: Form): Answered<Answers[Id]>['answer'] | undefined {
  const answer = isMeasurement(id) ? measurements[id](form) : plainAnswer(id, form);
  return answer as Answers[Id] | undefined;
}

const measurements: { [Id in MeasurementStepId]: (form: Form) => Answers[Id] | undefined } = {
  bridge: (form) => measured(bridgeForm, form),
  // A visit begins with a trip: the strict point holds, whatever occasion a hand has written into the record.
  insulation: (form) => measured(insulationForm, { ...form, occasion: 'after-trip' }),
  isolation: (form) => measured(isolationForm, form),
  winding: (form) => measured(windingForm, form),
  'winding-motor': (form) => measured(windingForm, form),
};

/** A step that is left open may be blank: its assessment then says that all is missing. */
function measured<A extends Assessment>(calculator: CalculatorForm<A>, form: Form): MeasurementAnswer<A> | undefined {
  const leftOpen = ticked(form, 'leftOpen');
  const read = readForm(calculator.fields, form);
  if (Object.keys(read.errors).length > 0 || read.unchosen.length > 0) return undefined;
  if (isBlank(calculator.fields, form) && !leftOpen) return undefined;
  return { assessment: calculator.assess(read), leftOpen };
}
