import type { SeveralField } from '../../kernel/form/field.ts';
import type { FieldsState } from '../../ui/form/use-fields.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  field: SeveralField;
  form: FieldsState;
}

/** A question that can have several answers at once, as a row of keys. */
export function Several({ name, field, form }: Props) {
  const chosen = (form.typed[field.id] ?? '').split(' ').filter(Boolean);
  const toggle = ({ value, alone }: SeveralField['options'][number]) => {
    const besides = field.options.filter((option) => option.value !== value && !alone && !option.alone);
    const next = field.options.filter((option) =>
      option.value === value ? !chosen.includes(value) : besides.includes(option) && chosen.includes(option.value),
    );
    form.choose(field.id, next.map((option) => option.value).join(' '));
  };
  return (
    <fieldset id={`${name}-${field.id}`} tabIndex={-1} class="several">
      <legend>{field.name}</legend>
      <div class="choices keys">
        {field.options.map((option) => (
          <label key={option.value}>
            <input
              type="checkbox"
              name={`${field.id}-${option.value}`}
              checked={chosen.includes(option.value)}
              onChange={() => toggle(option)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
