import { useMemo } from 'preact/hooks';
import type { ChoiceField } from './field.ts';
import type { FieldError } from './read-form.ts';
import { fieldError } from './shown-error.ts';
import type { FormState } from './use-form.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  field: ChoiceField;
  form: FormState;
}

/** A question with a few answers, all of them in sight. */
export function Choices({ name, field, form }: Props) {
  const value = form.typed[field.id];
  const error = fieldError(form, field.id);
  // As in `ReadingInput`: built anew only when something about this question has changed.
  return useMemo(() => <Question {...{ name, field, form, value, error }} />, [name, field, value, error]);
}

interface QuestionProps extends Props {
  value: string | undefined;
  error: FieldError | undefined;
}

function Question({ name, field, form, value, error }: QuestionProps) {
  const id = `${name}-${field.id}`;
  const short = field.options.every(({ label, hint }) => label.length < 12 && hint === undefined);
  return (
    <fieldset id={id} tabIndex={-1} aria-describedby={field.hint && `${id}-hint`}>
      <legend>{field.name}</legend>
      {field.hint && (
        <p class="hint" id={`${id}-hint`}>
          {field.hint}
        </p>
      )}
      <div class={short ? 'choices short' : 'choices'}>
        {field.options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={field.id}
              value={option.value}
              checked={value === option.value}
              onChange={() => form.choose(field.id, option.value)}
            />
            <span>
              {option.label}
              {option.hint && <span class="option-hint">{option.hint}</span>}
            </span>
          </label>
        ))}
      </div>
      {error && <p class="error">{error.message}</p>}
    </fieldset>
  );
}
