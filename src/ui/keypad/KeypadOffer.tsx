/** Brings the keypad of the page back after the person chose that of the device. */
export function KeypadOffer({ onTake }: { onTake: () => void }) {
  return (
    // A press must not take the focus out of the field.
    <button type="button" class="plain keypad-offer" onMouseDown={(event) => event.preventDefault()} onClick={onTake}>
      Use the keypad of this page
    </button>
  );
}
