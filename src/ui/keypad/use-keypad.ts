import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { fetchKeypad } from './LateKeypad.tsx';
import { doWithoutKeypad, holdBackKeyboard, isTouch, opensKeypad, preferKeyboard, watchTouch } from './touch.ts';

interface Options {
  input: RefObject<HTMLInputElement>;
  /** Which keyboard of the device suits the field, as `inputmode` names it. */
  deviceMode: 'text' | 'decimal';
  /** The person has left the field, and its keypad. */
  onLeave: () => void;
}

/** The keypad of one field: whether it is open, and what opens and closes it. */
export function useKeypad({ input, deviceMode, onLeave }: Options) {
  /** `offered`: the person types with the keyboard of the device by choice, and can come back. */
  const [shown, setShown] = useState<'keypad' | 'offered'>();
  useEffect(watchTouch, []);
  const open = () => {
    input.current?.setAttribute('inputmode', opensKeypad() ? 'none' : deviceMode);
    setShown(opensKeypad() ? 'keypad' : isTouch() ? 'offered' : undefined);
  };
  const leave = () => {
    setShown(undefined);
    input.current?.setAttribute('inputmode', deviceMode);
    onLeave();
  };
  /** Leaves the field and comes back, so that the keyboard of the device comes or goes. */
  const change = (which: 'device' | 'keypad') => {
    const field = input.current;
    if (field === null) return;
    field.blur();
    field.setAttribute('inputmode', which === 'keypad' ? 'none' : deviceMode);
    field.focus();
    setShown(which === 'keypad' ? 'keypad' : 'offered');
  };
  return {
    shown,
    /** For what surrounds the field and its label: a touch there may bring the focus. */
    onPointerDown: () => {
      if (input.current !== null) holdBackKeyboard(input.current);
      // A failure is met when the keypad is to be shown.
      if (opensKeypad()) fetchKeypad().catch(() => undefined);
    },
    inputProps: {
      'data-keypad': '',
      inputMode: shown === 'keypad' ? ('none' as const) : deviceMode,
      onFocus: open,
      onClick: open,
      onBlur: ({ relatedTarget }: FocusEvent) => {
        if (!(relatedTarget instanceof Element && relatedTarget.closest('.keypad') !== null)) leave();
      },
    },
    toDevice: () => {
      preferKeyboard('device');
      change('device');
    },
    toKeypad: () => {
      preferKeyboard('keypad');
      change('keypad');
    },
    /** The keypad can't be shown. The person's choice of keyboard stays. */
    onMissing: () => {
      doWithoutKeypad();
      change('device');
    },
    leave,
  };
}
