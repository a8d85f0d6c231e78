import type { ComponentChildren } from 'preact';
import type { ChoiceField, ReadingField } from '../../kernel/form/field.ts';
import { Choices } from './Choices.tsx';
import { useOpening } from './folded-parts.ts';
import { ReadingInput } from './ReadingInput.tsx';
import type { FieldsState } from './use-fields.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  summary: string;
  hint?: string;
  fields: readonly ReadingField[];
  choices?: readonly ChoiceField[];
  form: FieldsState;
  /** One of the children holds an answer. */
  answered?: boolean;
  children?: ComponentChildren;
}

/** Optional fields, folded away until one holds an entry: nothing that counts is hidden. */
export function MoreFields({ name, summary, hint, fields, choices = [], form, answered = false, children }: Props) {
  const used =
    fields.some(({ id }) => (form.typed[id] ?? '') !== '') ||
    choices.some(({ id, initial }) => (form.typed[id] ?? initial) !== initial);
  return (
    <details class="more" ref={useOpening(used || answered)}>
      <summary>{summary}</summary>
      {hint && <p class="hint">{hint}</p>}
      {fields.map((field) => (
        <ReadingInput key={field.id} name={name} field={field} form={form} />
      ))}
      {choices.map((field) => (
        <Choices key={field.id} name={name} field={field} form={form} />
      ))}
      {children}
    </details>
  );
}
