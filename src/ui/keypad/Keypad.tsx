import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import { nextQuestion } from '../form/form-behaviour.ts';
import { makeRoom } from './keep-in-sight.ts';
import { keypadLayout, type TypingKey, type TypingKeyCap } from './keys.ts';
import { typeKey } from './type-key.ts';

interface Props {
  input: RefObject<HTMLInputElement>;
  /** What the field is called. */
  label: string;
  quantity: Quantity;
  units: readonly string[];
  mark: '.' | ',';
  /** The unit that a figure without one gets here, such as `kΩ`. */
  rowUnit?: string | undefined;
  /** The reading that the next key takes, since a unit is missing: it stands on the key. */
  confirms?: string | undefined;
  onNext: () => void;
  onDevice: () => void;
  /** The focus has gone from a key to somewhere outside. */
  onLeave: () => void;
}

/**
 * A keypad at the bottom of the window that types into one field. It stands right after the field in the page, so that
 * a screen reader comes to it, and never takes the focus from it.
 */
export function Keypad({ input, label, quantity, units, mark, rowUnit, confirms, onNext, onDevice, onLeave }: Props) {
  const place = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const [keypad, field] = [place.current, input.current];
    return keypad === null || field === null ? undefined : makeRoom(keypad, field);
  }, []);
  const layout = keypadLayout(quantity, units, mark);
  const type = (key: TypingKey) => input.current !== null && pressInto(input.current, key);
  const rows = [0, 1, 2, 3].map((row) => layout.digits.slice(3 * row, 3 * row + 3));
  const cap = (one: TypingKeyCap | undefined) => (
    <TypingButton one={one} isRowUnit={one?.cap === rowUnit} type={type} />
  );
  const isLast = input.current !== null && nextQuestion(input.current) === undefined;
  return (
    // A press must not take the focus from the field.
    <section
      ref={place}
      class="keypad"
      aria-label={`Keypad for ${label}`}
      onMouseDown={(event) => event.preventDefault()}
      onFocusOut={({ relatedTarget }) => {
        const within = relatedTarget instanceof Node && place.current?.contains(relatedTarget);
        if (!within && relatedTarget !== input.current) onLeave();
      }}
    >
      {layout.units.length > 0 && <div class="keypad-units">{layout.units.map(cap)}</div>}
      <div class="keypad-keys">
        {rows[0]?.map(cap)}
        {cap(layout.signs[0])}
        <TypingButton one={{ key: { kind: 'delete' }, cap: '⌫', name: 'Delete' }} type={type} />
        {rows[1]?.map(cap)}
        {cap(layout.signs[1])}
        <button type="button" class="keypad-device" aria-label="Use the keyboard of this device" onClick={onDevice}>
          Keyboard of this device
        </button>
        {rows[2]?.map(cap)}
        {cap(layout.signs[2])}
        <button type="button" class="keypad-close" onClick={() => input.current?.blur()}>
          Close
        </button>
        {rows[3]?.map(cap)}
        <button type="button" class="keypad-next" onClick={onNext}>
          {confirms !== undefined && <b>{confirms}</b>}
          <span>{isLast ? 'Done' : 'Next'}</span>
        </button>
      </div>
    </section>
  );
}

interface ButtonProps {
  one: TypingKeyCap | undefined;
  isRowUnit?: boolean;
  type: (key: TypingKey) => void;
}

/**
 * A key types when the finger touches it, so that none is lost when two thumbs overlap; the click that follows a touch
 * types nothing more. A mouse, a keyboard and a screen reader click only.
 */
function TypingButton({ one, isRowUnit = false, type }: ButtonProps) {
  const touched = useRef(false);
  if (one === undefined) return <span />;
  const { key, cap, name } = one;
  return (
    <button
      type="button"
      class={isRowUnit ? 'is-row-unit' : undefined}
      data-kind={key.kind}
      aria-label={name}
      onPointerDown={({ pointerType, isPrimary, button }) => {
        touched.current = pointerType === 'touch' || (pointerType === 'pen' && isPrimary && button === 0);
        if (touched.current) type(key);
      }}
      onClick={({ detail }) => {
        if (!touched.current || detail === 0) type(key);
        touched.current = false;
      }}
    >
      {cap}
    </button>
  );
}

/** Types into a field as a keyboard does: at its caret, and the field says that it was typed into. */
function pressInto(input: HTMLInputElement, key: TypingKey): void {
  const { value, selectionStart, selectionEnd } = input;
  const before = { text: value, start: selectionStart ?? value.length, end: selectionEnd ?? value.length };
  const after = typeKey(before, key);
  if (after.text === value && after.start === before.start && after.end === before.end) return;
  input.value = after.text;
  input.setSelectionRange(after.start, after.end);
  if (after.text !== value) input.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertText' }));
}
