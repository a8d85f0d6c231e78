import type { FormField } from '../../kernel/form/field.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import type { FieldsState } from '../../ui/form/use-fields.ts';
import { QuestionField } from '../../visit/app/QuestionField.tsx';
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
        <QuestionField key={field.id} name="call" field={field} form={form} />
      ))}
    </>
  );
}
