import type { ComponentChildren } from 'preact';
import type { ReadingField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
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
    </fieldset>
  );
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
    .flatMap(({ id }) => /[^\s\d.,<>+-]+$/.exec((typed[id] ?? '').trim()) ?? []);
  return lastIn(units);
}
