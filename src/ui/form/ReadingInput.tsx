import { useRef, useState } from 'preact/hooks';
import type { ReadingField } from '../../kernel/form/field.ts';
import { type Quantity, quantityRules } from '../../kernel/reading/quantity.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { markOf } from '../keypad/decimal-mark.ts';
import { KeypadOffer } from '../keypad/KeypadOffer.tsx';
import { LateKeypad } from '../keypad/LateKeypad.tsx';
import { useKeypad } from '../keypad/use-keypad.ts';
import { focusNextQuestion } from './form-behaviour.ts';
import { MendReading } from './MendReading.tsx';
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
 * Which keyboard of the device comes up where the keypad doesn't. A keyboard of digits has no k, M, Ω, < or >, no OL
 * and, on some devices, no minus: the readings need letters. A percentage and a number of counts never do. Capitals stay
 * off, since `m` is not `M`; the next key goes on to the next field, so that a gloved thumb need not find it.
 */
const keyboardOf = (quantity: Quantity) => (quantity === 'percent' || quantity === 'counts' ? 'decimal' : 'text');

/** A text field for a reading: label, hint, field, keypad, what was understood, error, offers to mend it. */
export function ReadingInput({ name, field, form, likelyUnit }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const { typed, rowUnits } = form;
  /** The person wanted to go on from an entry that can't be read. */
  const [asked, setAsked] = useState(false);
  const unread = form.read.errors[field.id];
  const note = form.notes[field.id];
  const id = `${name}-${field.id}`;
  const { shown, onPointerDown, inputProps, ...keypad } = useKeypad({
    input,
    deviceMode: keyboardOf(field.quantity),
    onLeave: () => {
      setAsked(false);
      form.leave();
    },
  });
  // Between two keys of the keypad nearly every entry lacks something: nothing is marked until the person goes on.
  const typing = shown === 'keypad' && !asked;
  const error = typing ? undefined : asked ? unread : form.errors[field.id];
  const described = [field.hint && `${id}-hint`, note && `${id}-note`, error ? `${id}-error` : `${id}-echo`]
    .filter(Boolean)
    .join(' ');
  const offered = rowUnits.offered(field.id);
  const taken = rowUnits.taken(field.id);
  const inDoubt = rowUnits.inDoubt(field.id);
  return (
    <div class={error ? 'field is-bad' : 'field'} onPointerDown={onPointerDown}>
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
        autoCapitalize="off"
        autocorrect="off"
        spellcheck={false}
        enterKeyHint="next"
        aria-describedby={described}
        aria-invalid={error ? 'true' : undefined}
        value={typed[field.id]}
        onInput={(event) => {
          setAsked(false);
          form.type(field.id, event.currentTarget.value);
        }}
        {...inputProps}
      />
      {shown === 'keypad' && (
        <LateKeypad
          input={input}
          label={field.name}
          quantity={field.quantity}
          units={field.units ?? quantityRules[field.quantity].units}
          mark={markOf(Object.keys(form.read.readings).map((one) => typed[one] ?? ''))}
          rowUnit={(taken ?? offered)?.symbol}
          confirms={inDoubt}
          onNext={() => {
            if (inDoubt === undefined && unread !== undefined) {
              setAsked(true);
              return;
            }
            if (inDoubt !== undefined) form.confirmRowUnit(field.id);
            if (input.current !== null) focusNextQuestion(input.current);
          }}
          onDevice={keypad.toDevice}
          onLeave={keypad.leave}
          onMissing={keypad.onMissing}
        />
      )}
      <p class="echo" id={`${id}-echo`}>
        {offered && `${offered.symbol} as in “${offered.from}”, or type a unit`}
        {typing && inDoubt !== undefined && `${inDoubt}? Next takes it; or type the unit that the meter shows`}
        {readback(form.read.readings[field.id] ?? missing, typed[field.id])}
        {taken && <b>, unit of “{taken.from}”</b>}
        {typing && inDoubt === undefined && unread && (unread.code === 'unit-missing' ? 'Which unit?' : 'Not complete')}
      </p>
      {shown === 'offered' && <KeypadOffer onTake={keypad.toKeypad} />}
      <MendReading
        id={id}
        error={error}
        likelyUnit={likelyUnit}
        isAt={() => input.current === document.activeElement}
        onTake={(text) => {
          form.choose(field.id, text);
          // The button goes away with the error: without a field to go to, the keyboard would shut.
          if (input.current !== null) focusNextQuestion(input.current);
        }}
      />
    </div>
  );
}
