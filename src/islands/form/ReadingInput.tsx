import { useMemo } from 'preact/hooks';
import { missing, type Quantity, type Reading } from '../../calc/index.ts';
import { echo } from './echo.ts';
import type { ReadingField } from './field.ts';
import type { FieldError } from './read-form.ts';
import { fieldError } from './shown-error.ts';
import type { FormState } from './use-form.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  field: ReadingField;
  form: FormState;
}

/**
 * Which keyboard a screen brings up. A keyboard of digits has no k, M, Ω, < or >, no OL and, on some devices, no minus:
 * the readings need letters. A percentage and a number of counts never do. Capitals stay off, since `m` is not `M`;
 * the next key goes on to the next field, so that a gloved thumb need not find it.
 */
const keyboardOf = (quantity: Quantity) => (quantity === 'percent' || quantity === 'counts' ? 'decimal' : 'text');

/** A text field for a reading: label, hint, field, what was understood, error, offers to mend it. */
export function ReadingInput({ name, field, form }: Props) {
  const value = form.typed[field.id];
  const reading = form.read.readings[field.id] ?? missing;
  const error = fieldError(form, field.id);
  const note = form.notes[field.id];
  // A key in one field leaves the others as they are: a slow device would build all of them anew. What the form does
  // with an entry (`type`, `leave`, `choose`) is the same at every moment.
  return useMemo(
    () => <Input {...{ name, field, form, value, reading, error, note }} />,
    [name, field, value, reading, error, note],
  );
}

interface InputProps extends Props {
  value: string | undefined;
  reading: Reading;
  error: FieldError | undefined;
  note: string | undefined;
}

function Input({ name, field, form, value, reading, error, note }: InputProps) {
  const id = `${name}-${field.id}`;
  const described = [field.hint && `${id}-hint`, note && `${id}-note`, error ? `${id}-error` : `${id}-echo`]
    .filter(Boolean)
    .join(' ');
  return (
    <div class={error ? 'field is-bad' : 'field'}>
      <label for={id}>{field.label}</label>
      {field.hint && (
        <p class="hint" id={`${id}-hint`}>
          {field.hint}
        </p>
      )}
      {note && (
        <p class="hint filled-in" id={`${id}-note`}>
          {note}
        </p>
      )}
      <input
        id={id}
        name={field.id}
        type="text"
        inputMode={keyboardOf(field.quantity)}
        autoCapitalize="off"
        autoComplete="off"
        autocorrect="off"
        spellcheck={false}
        enterKeyHint="next"
        aria-describedby={described}
        aria-invalid={error ? 'true' : undefined}
        value={value}
        onInput={(event) => form.type(field.id, event.currentTarget.value)}
        onBlur={form.leave}
      />
      <p class="echo" id={`${id}-echo`}>
        {echo(reading, value)}
      </p>
      {error && (
        <p class="error" id={`${id}-error`}>
          {error.message}
        </p>
      )}
      {error && error.suggestions.length > 0 && (
        <div class="suggestions">
          {error.suggestions.map((text) => (
            <button type="button" key={text} onClick={() => form.choose(field.id, text)}>
              {text}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
