import { useEffect, useRef, useState } from 'preact/hooks';

const pauseMilliseconds = 700;

export interface Draft<T> {
  value: T;
  set: (value: T) => void;
  /** Hands on at once: the person left the field. */
  flush: () => void;
}

/** What is being typed, handed on when the person pauses, leaves the field or the page. */
export function useDraft<T>(start: T, onSettled: (value: T) => void): Draft<T> {
  const [value, setValue] = useState(start);
  const latest = useRef(value);
  const listener = useRef(onSettled);
  listener.current = onSettled;
  const timer = useRef<ReturnType<typeof setTimeout>>();

  const flush = () => {
    if (timer.current === undefined) return;
    clearTimeout(timer.current);
    timer.current = undefined;
    listener.current(latest.current);
  };

  useEffect(() => {
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', flush);
    return () => {
      removeEventListener('pagehide', flush);
      document.removeEventListener('visibilitychange', flush);
      flush();
    };
  }, []);

  return {
    value,
    flush,
    set(next) {
      latest.current = next;
      setValue(next);
      clearTimeout(timer.current);
      timer.current = setTimeout(flush, pauseMilliseconds);
    },
  };
}
