import { useEffect, useState } from 'preact/hooks';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { type StopwatchState, stopwatchAt } from './stopwatch.ts';

const key = 'fieldbook-stopwatch-absorption';
const tickMilliseconds = 200;

export interface Stopwatch {
  stage: StopwatchState | undefined;
  start: () => void;
  stop: () => void;
}

/**
 * A stopwatch that stores only its start time, in this tab: a reload, a visit to an article or a dark screen lose no
 * second. `clock` gives ms, as `Date.now` does; tests pass their own.
 */
export function useStopwatch(marks: readonly number[], lead: number, clock: () => number = Date.now): Stopwatch {
  const [startedAt, setStartedAt] = useState<number>();
  const [now, setNow] = useState(0);
  const set = (moment: number | undefined) => {
    setStartedAt(moment);
    setNow(clock());
    keep(moment);
  };
  // After the first render, which equals the server's.
  useEffect(() => {
    const kept = keptStart();
    if (kept !== undefined) set(kept);
  }, []);
  const last = (lastIn(marks) ?? 0) + lead;
  const running = startedAt !== undefined && now - startedAt < last * 1000;
  useEffect(() => {
    if (!running) return;
    const look = () => setNow(clock());
    const timer = setInterval(look, tickMilliseconds);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [running]);
  return {
    stage: startedAt === undefined ? undefined : stopwatchAt(startedAt, now, marks, lead),
    start: () => set(clock()),
    stop: () => set(undefined),
  };
}

function keep(moment: number | undefined): void {
  try {
    if (moment === undefined) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, String(moment));
  } catch {
    // Without storage only a reload loses the start.
  }
}

function keptStart(): number | undefined {
  try {
    const kept = Number.parseFloat(sessionStorage.getItem(key) ?? '');
    return Number.isFinite(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}
