import { useEffect, useRef } from 'preact/hooks';
import type { FieldError } from '../../kernel/form/read-form.ts';

interface Props {
  /** Of the field. */
  id: string;
  error: FieldError | undefined;
  /** What has this unit is offered first. */
  likelyUnit: string | undefined;
  /** Whether the person is at the field. */
  isAt: () => boolean;
  onTake: (text: string) => void;
}

/** What is wrong with an entry, and readable texts to take instead. */
export function MendReading({ id, error, likelyUnit, isAt, onTake }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const message = error?.message;
  // An error that comes up beside the field that somebody is at must not lie below the window's edge or the bar there.
  useEffect(() => {
    if (message !== undefined && isAt()) place.current?.scrollIntoView({ block: 'nearest' });
  }, [message]);
  const suggestions = likeliestFirst(error?.suggestions ?? [], likelyUnit);
  return (
    <div ref={place} class="mend">
      {error && (
        <p class="error" id={`${id}-error`}>
          {error.message}
        </p>
      )}
      {suggestions.length > 0 && (
        <div class="suggestions">
          {suggestions.map((text) => (
            <button type="button" key={text} onClick={() => onTake(text)}>
              {text}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

const unitOf = (text: string) => text.replace(/^[<>\s]*[-\d.,\s]+/, '');

function likeliestFirst(suggestions: readonly string[], unit: string | undefined): string[] {
  const likely = (text: string) => Number(unitOf(text) === unit);
  return [...suggestions].sort((a, b) => likely(b) - likely(a));
}
