import type { ComponentChildren } from 'preact';
import type { ReadingField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { typedUnit } from '../../kernel/reading/typed-unit.ts';
import { ReadingInput } from './ReadingInput.tsx';
import type { FieldsState } from './use-fields.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  legend: string;
  hint?: string;
  /** Which lead goes where. */
  picture?: ComponentChildren;
  fields: readonly ReadingField[];
  form: FieldsState;
}

/** Readings that belong together, side by side where there is room. */
export function ReadingRow({ name, legend, hint, picture, fields, form }: Props) {
  return (
    <fieldset class="reading-row">
      <legend>{legend}</legend>
      {hint && <p class="hint">{hint}</p>}
      {picture}
      {fields.map((field) => (
        <ReadingInput
          key={field.id}
          name={name}
          field={field}
          form={form}
          likelyUnit={unitOfNeighbours(field, fields, form)}
        />
      ))}
      <p class="visually-hidden" role="status">
        {unitTaken(fields, form)}
      </p>
    </fieldset>
  );
}

/** Said to those who have left the field and don't see what was written into it. */
function unitTaken(fields: readonly ReadingField[], { typed, rowUnits }: FieldsState): string | undefined {
  const field = fields.find(({ id }) => id === rowUnits.lastTaken);
  const taken = field && rowUnits.taken(field.id);
  return taken && `${field.label}: ${typed[field.id]}, unit of “${taken.from}”`;
}

/** The unit that the last neighbour of the same quantity was typed with; undefined while none was. */
function unitOfNeighbours(
  field: ReadingField,
  fields: readonly ReadingField[],
  { typed, read }: FieldsState,
): string | undefined {
  const units = fields
    .filter((other) => other !== field && other.quantity === field.quantity)
    .filter(({ id }) => read.errors[id] === undefined)
    .flatMap(({ id }) => typedUnit(typed[id] ?? '', field.quantity) ?? []);
  return lastIn(units);
}
