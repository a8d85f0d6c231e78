import { useEffect, useState } from 'preact/hooks';
import type { WaitKind } from '../steps/waits.ts';
import { keepWaits, keptWaits } from '../storage/kept-waits.ts';
import { secondsLeft, type Wait } from '../waiting.ts';

export interface Waits {
  running: readonly Wait[];
  /** In ms, as `Date.now` gives it; grows each second while a wait runs. */
  now: number;
  /** Starts a wait, or starts it again. */
  start: (kind: WaitKind, minutes: number) => void;
  remove: (id: string) => void;
}

/** The waits of a visit. Only their start is kept, so that a reload or a dark screen loses no second. */
export function useWaits(visit: string): Waits {
  const [running, setRunning] = useState(() => keptWaits(visit));
  const [now, setNow] = useState(Date.now);
  const change = (next: Wait[]) => {
    keepWaits(visit, next);
    setRunning(next);
    setNow(Date.now());
  };
  const isRunning = running.some((wait) => secondsLeft(wait, now) > 0);
  useEffect(() => {
    if (!isRunning) return;
    const look = () => setNow(Date.now());
    const timer = setInterval(look, 1000);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [isRunning]);
  return {
    running,
    now,
    start: ({ id, name, after }, minutes) =>
      change([...running.filter((wait) => wait.id !== id), { id, name, after, minutes, startedAt: Date.now() }]),
    remove: (id) => change(running.filter((wait) => wait.id !== id)),
  };
}
