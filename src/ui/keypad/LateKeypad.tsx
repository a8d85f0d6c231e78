import type { ComponentProps } from 'preact';
import { useEffect, useReducer } from 'preact/hooks';

type Keypad = typeof import('./Keypad.tsx').Keypad;

let keypad: Keypad | undefined;

/** Fetches the script of the keypad. Rejects without a network on the first visit. */
export async function fetchKeypad(): Promise<void> {
  keypad ??= (await import('./Keypad.tsx')).Keypad;
}

interface Props extends ComponentProps<Keypad> {
  /** The keypad could not be fetched: the keyboard of the device must do. */
  onMissing: () => void;
}

/** The keypad, which comes with the first touch of a reading field: a mouse or a keyboard never needs it. */
export function LateKeypad({ onMissing, ...props }: Props) {
  const [, redraw] = useReducer((count: number, _: undefined) => count + 1, 0);
  const Keypad = keypad;
  // By what was drawn: it may have come since.
  useEffect(() => {
    if (Keypad === undefined) fetchKeypad().then(() => redraw(undefined), onMissing);
  }, []);
  return Keypad === undefined ? null : <Keypad {...props} />;
}
