import { useEffect, useReducer, useRef, useState } from 'preact/hooks';
import { useSettling } from './use-settling.ts';

interface Options<T> {
  start: T;
  /** Fills in what the typed text leaves out; gives the same object if that is nothing. For settling, and on leaving. */
  complete?: ((typed: T) => T) | undefined;
  /** Takes each key, so that it can be kept. */
  onTyped?: ((typed: T) => void) | undefined;
  /** Takes the entries once the person has paused, left a field or chosen an answer. */
  onSettled: (settled: T) => void;
}

/** What is typed in a form: the only thing that its controls are drawn from. */
export interface Entries<T> {
  typed: T;
  /** The entries, completed, when the person last paused, left a field or chose an answer. */
  settled: T;
  /** Something was typed that has not settled. */
  pending: boolean;
  /** A key was pressed: the entries settle when the person pauses. */
  type: (next: (before: T) => T) => void;
  /** The person left a field: the entries settle soon. */
  leave: () => void;
  /** A whole answer was given: the entries settle at once. Returns the entries before. */
  replace: (next: (before: T) => T) => T;
}

/** The state of any form: calculators, the questions of a step, the details of a visit. */
export function useEntries<T extends object>({ start, complete, onTyped, onSettled }: Options<T>): Entries<T> {
  const [typed, setTyped] = useState<T>(start);
  const [settled, setSettled] = useState({ from: typed, whole: typed });
  // Two events can come between two renders: each builds on the entries of the one before.
  const latest = useRef<T>(typed);
  useRedrawOnShow();
  const { onType, onLeave, settle } = useSettling(() => {
    const from = latest.current;
    const whole = complete?.(from) ?? from;
    setSettled({ from, whole });
    // What is kept of each key must not differ from what is judged.
    if (whole !== from) onTyped?.(whole);
    onSettled(whole);
  });
  const put = (next: T) => {
    latest.current = next;
    setTyped(next);
    onTyped?.(next);
  };
  return {
    typed,
    settled: settled.whole,
    pending: typed !== settled.from,
    type: (next) => {
      put(next(latest.current));
      onType();
    },
    leave: () => {
      const whole = complete?.(latest.current) ?? latest.current;
      if (whole !== latest.current) {
        put(whole);
        onType();
      }
      onLeave();
    },
    replace: (next) => {
      const before = latest.current;
      put(next(before));
      settle();
      return before;
    },
  };
}

/**
 * Draws the component again whenever the page is shown. A browser that brings a page back, by reload or from its cache,
 * may have emptied or filled the controls by itself; drawing sets each control to the state that is judged.
 */
function useRedrawOnShow(): void {
  const [, redraw] = useReducer((count: number, _: undefined) => count + 1, 0);
  useEffect(() => {
    // Some browsers restore the controls only after they have said that the page is shown.
    const draw = () => {
      redraw(undefined);
      setTimeout(() => redraw(undefined));
    };
    addEventListener('pageshow', draw);
    return () => removeEventListener('pageshow', draw);
  }, []);
}
