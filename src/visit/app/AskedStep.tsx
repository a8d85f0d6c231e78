import type { Typed } from '../../kernel/form/field.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { formProps } from '../../ui/form/form-props.ts';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import type { FieldsState } from '../../ui/form/use-form.ts';
import type { AskedField } from '../steps/fields.ts';
import { type AskedStepId, questions } from '../steps/questions.ts';
import { TextInput } from './TextInput.tsx';
import { useStepForm } from './use-step-form.ts';

interface Props {
  id: AskedStepId;
  start: Typed;
  onTyped: (typed: Typed) => void;
  onSettled: (typed: Typed) => void;
}

/** A step that asks a few questions. */
export function AskedStep({ id, start, onTyped, onSettled }: Props) {
  const { fields } = questions[id];
  const form = useStepForm(fields, start, onTyped, onSettled);
  return (
    <form class="step-form" {...formProps}>
      {fields.map((field) => (
        <Field key={field.id} name={id} field={field} form={form} />
      ))}
    </form>
  );
}

function Field({ name, field, form }: { name: string; field: AskedField; form: FieldsState }) {
  const id = `${name}-${field.id}`;
  const value = form.typed[field.id] ?? '';
  switch (field.kind) {
    case 'choice':
      return <Choices name={name} field={field} form={form} />;
    case 'reading':
      return <ReadingInput name={name} field={field} form={form} />;
    case 'tick':
      return (
        <div class="choices tick">
          <label for={id}>
            <input
              type="checkbox"
              id={id}
              checked={value === 'yes'}
              onChange={(event) => form.choose(field.id, event.currentTarget.checked ? 'yes' : '')}
            />
            <span>{field.name}</span>
          </label>
        </div>
      );
    case 'words':
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
