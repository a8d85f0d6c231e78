import { enterStep } from '../../visit/change-step.ts';
import { type EvaluatedVisit, evaluate } from '../../visit/evaluate.ts';
import { newVisit } from '../../visit/record/change-visit.ts';
import type { Form } from '../../visit/steps/fields.ts';
import { type StepId, stepIds } from '../../visit/steps/ids.ts';
import { isMeasured } from '../../visit/steps/questions.ts';
import type { VisitCase } from './case-schema.ts';
import { gantry } from './marrow-bay.ts';

/** The visit of a case, answered step by step with the guide. `id` is that of the case. */
export function caseVisit(id: string, data: VisitCase): EvaluatedVisit {
  const { date, message, steps } = data.visit;
  const { drive, motor, servedAxes, instruments } = gantry(data.axis);
  // The plant uses winter time all year, so that an invented day needs no calendar.
  const time = (clock: string) => `${date}T${clock}:00+01:00`;
  const begun = newVisit(`case-${id}`, time(steps[0]?.at ?? '00:00'), {
    machine: 'Line 2, glass-cutting gantry',
    axis: data.axis,
    drive,
    motor,
    controllerMessage: message,
    site: 'Marrow Bay Glassworks',
    person: 'Ines',
    servedAxes,
    instruments,
    notes: `Invented: worked case “${data.title}”. The plant, its people and all readings are made up.`,
  });
  return steps.reduce(
    (visit, { step, at, form }) => {
      const known = stepIds.find((one) => one === step);
      if (known === undefined) throw new Error(`${id}: the guide has no step “${step}”`);
      return enterStep(visit, known, form ?? calculatorForm(id, known, data), time(at));
    },
    evaluate(begun, begun.createdAt),
  );
}

/** What was typed into the calculator of a measured step. */
function calculatorForm(id: string, step: StepId, { forms }: VisitCase): Form {
  const form = isMeasured(step) ? forms[step === 'winding-motor' ? 'winding' : step] : undefined;
  if (form === undefined) throw new Error(`${id}: step “${step}” has neither a form nor a calculator of that name`);
  return form;
}
