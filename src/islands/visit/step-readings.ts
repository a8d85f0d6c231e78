import type { StepId } from '../../guide/answers.ts';
import { isMeasurement } from '../../record/step-forms.ts';
import type { ReadingField } from '../form/field.ts';
import { stepCalculators } from './step-calculators.ts';
import { stepFields } from './step-fields.ts';

/** The fields of a step that hold what an instrument showed. */
export function readingFields(id: StepId): ReadingField[] {
  const fields = isMeasurement(id) ? stepCalculators[id].fields : stepFields[id];
  return fields.filter((field) => field.kind === 'reading');
}
