import type { FormField } from '../../kernel/form/field.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { formProps } from '../../ui/form/form-behaviour.ts';
import type { FieldsState } from '../../ui/form/use-fields.ts';
import { TextInput } from '../../visit/app/TextInput.tsx';
import { TickInput } from '../../visit/app/TickInput.tsx';
import { callParts } from '../form.ts';

/** What the caller says, in the order of a call. Nothing is required. */
export function CallForm({ form }: { form: FieldsState }) {
  return (
    <form class="call-form" {...formProps}>
      {callParts.map(({ id, title, fields, folded }) =>
        folded ? (
          <details class="more" key={id}>
            <summary>{title}</summary>
            <Fields fields={fields} form={form} />
          </details>
        ) : (
          <fieldset key={id} class="call-part">
            <legend>{title}</legend>
            <Fields fields={fields} form={form} />
          </fieldset>
        ),
      )}
    </form>
  );
}

function Fields({ fields, form }: { fields: readonly FormField[]; form: FieldsState }) {
  return (
    <>
      {fields.map((field) => (
        <Field key={field.id} field={field} form={form} />
      ))}
    </>
  );
}

function Field({ field, form }: { field: FormField; form: FieldsState }) {
  const id = `call-${field.id}`;
  const value = form.typed[field.id] ?? '';
  switch (field.kind) {
    case 'choice':
      return <Choices name="call" field={field} form={form} />;
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
    case 'several':
    case 'reading':
      // A call has no readings, and asks for one answer at a time.
      return null;
  }
}
