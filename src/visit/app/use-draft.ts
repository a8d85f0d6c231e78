import { useRef, useState } from 'preact/hooks';
import { useRedrawOnShow } from '../../ui/form/use-redraw.ts';
import { useSettling } from '../../ui/form/use-settling.ts';

export interface Draft<T> {
  value: T;
  set: (value: T) => void;
  /** The person left the field. */
  leave: () => void;
}

/** What is being typed: each key is handed to `onTyped`, and the whole to `onSettled` when the person pauses or leaves. */
export function useDraft<T>(start: T, onTyped: (value: T) => void, onSettled: (value: T) => void): Draft<T> {
  const [value, setValue] = useState(start);
  const latest = useRef(value);
  useRedrawOnShow();
  const { onType, onLeave } = useSettling(() => onSettled(latest.current));
  return {
    value,
    leave: onLeave,
    set(next) {
      latest.current = next;
      setValue(next);
      onTyped(next);
      onType();
    },
  };
}
