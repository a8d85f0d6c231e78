import type { FormField } from '../../kernel/form/field.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import type { FieldsState } from '../../ui/form/use-fields.ts';
import { Several } from './Several.tsx';
import { TextInput } from './TextInput.tsx';
import { TickInput } from './TickInput.tsx';

interface Props {
  name: string;
  field: FormField;
  form: FieldsState;
  /** It asks nothing at the moment. */
  isMoot?: boolean;
}

/** One question of a form, as its kind is asked. `name`: what the ids of the form begin with. */
export function QuestionField({ name, field, form, isMoot = false }: Props) {
  const id = `${name}-${field.id}`;
  const value = form.typed[field.id] ?? '';
  switch (field.kind) {
    case 'choice':
      return <Choices name={name} field={field} form={form} />;
    case 'several':
      return <Several name={name} field={field} form={form} />;
    case 'reading':
      return <ReadingInput name={name} field={field} form={form} />;
    case 'tick':
      return (
        <TickInput
          id={id}
          label={field.name}
          value={value}
          disabled={isMoot}
          onChoose={(next) => form.choose(field.id, next)}
        />
      );
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
