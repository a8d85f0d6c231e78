import type { FormField } from '../../kernel/form/field.ts';
import { readForm } from '../../kernel/form/read-form.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import type { Cell } from '../../kernel/words/csv.ts';
import type { EvaluatedVisit } from '../../visit/evaluate.ts';
import { stepCalculators } from '../../visit/steps/calculators.ts';
import { type StepId, stepIds } from '../../visit/steps/ids.ts';
import { isMeasured, questions } from '../../visit/steps/questions.ts';

/** The head of the table. Figures are in the base unit of the quantity, which stands beside them. */
export const readingColumns = [
  ...['visit', 'machine', 'axis', 'site', 'drive', 'motor', 'step', 'field', 'name', 'typed', 'quantity'],
  ...['unit', 'kind', 'value', 'at least', 'at most', 'measured at', 'verdict of the step', 'counts now'],
] as const;

/** Every reading of a visit, one row each, also those that can't be read: what was typed is the truth. */
export function readingRows({ visit, steps }: EvaluatedVisit): Cell[][] {
  const { id, machine, axis, site, drive, motor } = visit;
  return stepIds.flatMap((step) => {
    const record = visit.steps[step];
    if (record === undefined) return [];
    const fields = fieldsOf(step);
    const { readings, errors } = readForm(fields, record.form);
    return fields.flatMap((field): Cell[][] => {
      const typed = (record.form[field.id] ?? '').trim();
      if (field.kind !== 'reading' || typed === '') return [];
      const reading = readings[field.id];
      const figures = reading === undefined || errors[field.id] ? ['', 'unreadable', '', '', ''] : figuresOf(reading);
      const { snapshot, onWay } = steps[step];
      return [
        [
          ...[id, machine, axis, site, drive, motor],
          ...[questions[step].title, field.id, field.name, typed, field.quantity, ...figures],
          ...[record.readAt[field.id] ?? record.at, snapshot?.verdict ?? '', onWay?.status === 'done' ? 'yes' : 'no'],
        ],
      ];
    });
  });
}

function fieldsOf(step: StepId): readonly FormField[] {
  return isMeasured(step) ? stepCalculators[step].fields : questions[step].fields;
}

/** Unit, kind, value, at least, at most. */
function figuresOf(reading: Reading): Cell[] {
  switch (reading.kind) {
    case 'value':
      return [reading.unit, 'value', reading.value, '', ''];
    case 'over':
      return [reading.unit, 'over range', '', reading.atLeast ?? '', ''];
    case 'under':
      return [reading.unit, 'under range', '', '', reading.atMost ?? ''];
    case 'missing':
      return ['', 'missing', '', '', ''];
  }
}
