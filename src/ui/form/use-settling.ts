import { useEffect, useRef } from 'preact/hooks';

/** Long enough to finish typing `450k` with a gloved thumb, short enough to feel live. */
const pauseMilliseconds = 700;

/** A message that appears under the pointer moves what the person is about to press: the press comes first. */
const leaveMilliseconds = 250;

/** The forms of this page, each with what settles it. */
const forms = new Set<() => void>();

/** Settles what is typed in every form of the page: for what is made of all entries, such as a file. */
export function settleEntries(): void {
  for (const settleTyped of forms) settleTyped();
}

export interface Settling {
  /** A key was pressed: settle when the person pauses. */
  onType: () => void;
  /** The field was left: settle soon, if something was typed. */
  onLeave: () => void;
  /** Settle at once, whether or not something was typed. */
  settle: () => void;
}

/**
 * Calls `settle` once the person pauses or leaves a field, and at once when the page is left, hidden or printed, or the
 * form goes away: nobody loses the last word typed, and no sheet of paper shows a verdict on older entries.
 */
export function useSettling(settle: () => void): Settling {
  const latest = useRef(settle);
  latest.current = settle;
  const timer = useRef<ReturnType<typeof setTimeout>>();

  const now = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    latest.current();
  };
  const settleTyped = () => {
    if (timer.current !== undefined) now();
  };
  const wait = (milliseconds: number) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(now, milliseconds);
  };

  useEffect(() => {
    forms.add(settleTyped);
    addEventListener('pagehide', settleTyped);
    addEventListener('beforeprint', settleTyped);
    document.addEventListener('visibilitychange', settleTyped);
    return () => {
      forms.delete(settleTyped);
      removeEventListener('pagehide', settleTyped);
      removeEventListener('beforeprint', settleTyped);
      document.removeEventListener('visibilitychange', settleTyped);
      settleTyped();
    };
  }, []);

  return {
    onType: () => wait(pauseMilliseconds),
    onLeave: () => {
      if (timer.current !== undefined) wait(leaveMilliseconds);
    },
    settle: now,
  };
}
