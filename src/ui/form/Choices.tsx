import type { ChoiceField } from '../../kernel/form/field.ts';
import type { FieldsState } from './use-fields.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  field: ChoiceField;
  form: FieldsState;
}

/** A question with a few answers, all of them in sight. */
export function Choices({ name, field, form }: Props) {
  const value = form.typed[field.id];
  const error = form.errors[field.id];
  const id = `${name}-${field.id}`;
  const plain = field.options.every(({ hint }) => hint === undefined);
  const longest = Math.max(...field.options.map(({ label }) => label.length));
  const layout = plain && longest < 12 ? ' short' : plain && longest < 25 && field.options.length === 2 ? ' pair' : '';
  return (
    <fieldset id={id} tabIndex={-1} aria-describedby={field.hint && `${id}-hint`}>
      <legend>{field.name}</legend>
      {field.hint && (
        <p class="hint" id={`${id}-hint`}>
          {field.hint}
        </p>
      )}
      <div class={`choices${layout}`}>
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
