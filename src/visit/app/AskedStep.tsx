import type { FormField, Typed } from '../../kernel/form/field.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import { type FieldsState, useFields } from '../../ui/form/use-fields.ts';
import { type AskedStepId, questions } from '../steps/questions.ts';
import { TextInput } from './TextInput.tsx';
import { TickInput } from './TickInput.tsx';

interface Props {
  id: AskedStepId;
  start: Typed;
  onTyped: (typed: Typed) => void;
  onSettled: (typed: Typed) => void;
}

/** A step that asks a few questions. */
export function AskedStep({ id, start, onTyped, onSettled }: Props) {
  const { fields } = questions[id];
  const form = useFields({ fields, start, onTyped, onSettled });
  return (
    <form class="step-form" {...formProps}>
      {fields.map((field) => (
        <Field key={field.id} name={id} field={field} form={form} />
      ))}
    </form>
  );
}

function Field({ name, field, form }: { name: string; field: FormField; form: FieldsState }) {
  const id = `${name}-${field.id}`;
  const value = form.typed[field.id] ?? '';
  switch (field.kind) {
    case 'choice':
      return <Choices name={name} field={field} form={form} />;
    case 'reading':
      return <ReadingInput name={name} field={field} form={form} />;
    case 'tick':
      return <TickInput id={id} label={field.name} value={value} onChoose={(next) => form.choose(field.id, next)} />;
    case 'text':
      return (
        <TextInput
          id={id}
          label={field.name}
          hint={field.hint}
          value={value}
          digits={field.digits}
          long={field.long}
          onInput={(next) => form.type(field.id, next)}
          onLeave={form.leave}
        />
      );
  }
}
