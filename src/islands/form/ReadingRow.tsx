import type { ReadingField } from './field.ts';
import { ReadingInput } from './ReadingInput.tsx';
import type { FormState } from './use-form.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  legend: string;
  hint?: string;
  fields: readonly ReadingField[];
  form: FormState;
}

/** Readings that belong together, side by side where there is room. */
export function ReadingRow({ name, legend, hint, fields, form }: Props) {
  return (
    <fieldset class="reading-row">
      <legend>{legend}</legend>
      {hint && <p class="hint">{hint}</p>}
      {fields.map((field) => (
        <ReadingInput key={field.id} name={name} field={field} form={form} />
      ))}
    </fieldset>
  );
}
