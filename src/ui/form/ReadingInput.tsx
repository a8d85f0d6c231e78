import { useEffect, useRef } from 'preact/hooks';
import type { ReadingField } from '../../kernel/form/field.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { focusNextQuestion } from './form-behaviour.ts';
import { readback } from './readback.ts';
import type { FieldsState } from './use-fields.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  field: ReadingField;
  form: FieldsState;
  /** The unit of a neighbour in the row: what has it is offered first. */
  likelyUnit?: string | undefined;
}

/**
 * Which keyboard a screen brings up. A keyboard of digits has no k, M, Ω, < or >, no OL and, on some devices, no minus:
 * the readings need letters. A percentage and a number of counts never do. Capitals stay off, since `m` is not `M`;
 * the next key goes on to the next field, so that a gloved thumb need not find it.
 */
const keyboardOf = (quantity: Quantity) => (quantity === 'percent' || quantity === 'counts' ? 'decimal' : 'text');

/** A text field for a reading: label, hint, field, what was understood, error, offers to mend it. */
export function ReadingInput({ name, field, form, likelyUnit }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const error = form.errors[field.id];
  const note = form.notes[field.id];
  const id = `${name}-${field.id}`;
  const described = [field.hint && `${id}-hint`, note && `${id}-note`, error ? `${id}-error` : `${id}-echo`]
    .filter(Boolean)
    .join(' ');
  const place = useInView(input, error?.message);
  const suggestions = likeliestFirst(error?.suggestions ?? [], likelyUnit);
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
        ref={input}
        id={id}
        name={field.id}
        type="text"
        inputMode={keyboardOf(field.quantity)}
        autoCapitalize="off"
        autocorrect="off"
        spellcheck={false}
        enterKeyHint="next"
        aria-describedby={described}
        aria-invalid={error ? 'true' : undefined}
        value={form.typed[field.id]}
        onInput={(event) => form.type(field.id, event.currentTarget.value)}
        onBlur={form.leave}
      />
      <p class="echo" id={`${id}-echo`}>
        {readback(form.read.readings[field.id] ?? missing, form.typed[field.id])}
      </p>
      <div ref={place} class="mend">
        {error && (
          <p class="error" id={`${id}-error`}>
            {error.message}
          </p>
        )}
        {suggestions.length > 0 && (
          <div class="suggestions">
            {suggestions.map((text) => (
              <button
                type="button"
                key={text}
                onClick={() => {
                  form.choose(field.id, text);
                  // The button goes away with the error: without a field to go to, the keyboard would shut.
                  if (input.current !== null) focusNextQuestion(input.current);
                }}
              >
                {text}
              </button>
            ))}
          </div>
        )}
      </div>
    </div>
  );
}

/** An error that comes up beside the field that somebody is at must not lie below the window's edge or the bar there. */
function useInView(input: { current: HTMLInputElement | null }, message: string | undefined) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (message === undefined || input.current !== document.activeElement) return;
    place.current?.scrollIntoView({ block: 'nearest' });
  }, [message]);
  return place;
}

const unitOf = (text: string) => text.replace(/^[<>\s]*[-\d.,\s]+/, '');

function likeliestFirst(suggestions: readonly string[], unit: string | undefined): string[] {
  const likely = (text: string) => Number(unitOf(text) === unit);
  return [...suggestions].sort((a, b) => likely(b) - likely(a));
}
