import { useRef } from 'preact/hooks';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import { focusNextQuestion } from '../../ui/form/form-behaviour.ts';
import { markOf } from '../../ui/keypad/decimal-mark.ts';
import { KeypadOffer } from '../../ui/keypad/KeypadOffer.tsx';
import { LateKeypad } from '../../ui/keypad/LateKeypad.tsx';
import { useKeypad } from '../../ui/keypad/use-keypad.ts';

interface Props {
  id: string;
  label: string;
  quantity: Quantity;
  units: readonly string[];
  describedBy: string;
  /** What is typed in the row, by field. */
  typed: Readonly<Record<string, string>>;
  onType: (text: string) => void;
}

/** A reading of the row that is added: on touch it has the keypad that the readings of every form have. */
export function AddedReading({ id, label, quantity, units, describedBy, typed, onType }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const { shown, onPointerDown, inputProps, ...keypad } = useKeypad({
    input,
    deviceMode: 'text',
    onLeave: () => undefined,
  });
  return (
    <div class="field" onPointerDown={onPointerDown}>
      <label for={`trend-${id}`}>{label}</label>
      <input
        ref={input}
        id={`trend-${id}`}
        type="text"
        autoCapitalize="off"
        spellcheck={false}
        enterKeyHint="next"
        aria-describedby={describedBy}
        value={typed[id]}
        onInput={(event) => onType(event.currentTarget.value)}
        {...inputProps}
      />
      {shown === 'keypad' && (
        <LateKeypad
          input={input}
          label={label}
          quantity={quantity}
          units={units}
          mark={markOf(Object.values(typed))}
          onNext={() => input.current && focusNextQuestion(input.current)}
          onDevice={keypad.toDevice}
          onLeave={keypad.leave}
          onMissing={keypad.onMissing}
        />
      )}
      {shown === 'offered' && <KeypadOffer onTake={keypad.toKeypad} />}
    </div>
  );
}
