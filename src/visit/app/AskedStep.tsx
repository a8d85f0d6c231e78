import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { type FieldsState, useFields } from '../../ui/form/use-fields.ts';
import type { FieldGroup } from '../steps/fields.ts';
import type { Question } from '../steps/question.ts';
import { type AskedStepId, questions } from '../steps/questions.ts';
import { QuestionField } from './QuestionField.tsx';

interface Props {
  id: AskedStepId;
  start: Typed;
  onTyped: (typed: Typed) => void;
  onSettled: (typed: Typed) => void;
}

/** A step that asks a few questions. */
export function AskedStep({ id, start, onTyped, onSettled }: Props) {
  const question: Question<unknown> = questions[id];
  const { fields, groups = [], older = [] } = question;
  const form = useFields({ fields, start, onTyped, onSettled });
  const isShown = (field: FormField) => !older.includes(field) || (form.typed[field.id] ?? '') !== '';
  return (
    <form class="step-form" {...formProps}>
      {fields.map((field) => {
        const group = groups.find((one) => one.fields.includes(field));
        if (group === undefined) return <QuestionField key={field.id} name={id} field={field} form={form} />;
        // The whole group stands at the place of its first field.
        const shown = group.fields[0] === field ? group.fields.filter(isShown) : [];
        return shown.length === 0 ? null : (
          <Group key={group.legend} group={group} form={form}>
            {shown.map((one) => (
              <QuestionField
                key={one.id}
                name={id}
                field={one}
                form={form}
                isMoot={group.moot?.(form.typed) === one.id}
              />
            ))}
          </Group>
        );
      })}
    </form>
  );
}

interface GroupProps {
  group: FieldGroup;
  form: FieldsState;
  children: ComponentChildren;
}

/** Questions under one heading, and one key that answers all of them that are still open. */
function Group({ group: { legend, hint, fields, offer }, form, children }: GroupProps) {
  const place = useRef<HTMLFieldSetElement>(null);
  const open = fields.filter(({ id }) => (form.typed[id] ?? '') === '');
  return (
    <fieldset class="point-rows" tabIndex={-1} ref={place}>
      <legend>{legend}</legend>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {children}
      {offer !== undefined && open.length > 0 && (
        <button
          type="button"
          class="plain"
          onClick={() => {
            form.chooseAll(
              open.map(({ id }) => id),
              offer.value,
            );
            // The button goes away, and the focus would go with it.
            place.current?.focus({ preventScroll: true });
          }}
        >
          {offer.label}
        </button>
      )}
    </fieldset>
  );
}
