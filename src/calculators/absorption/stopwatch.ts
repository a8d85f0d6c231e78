/** How far a test is at one moment, in s since the voltage was applied. Pure: the caller passes the clock time. */
export interface StopwatchState {
  elapsed: number;
  /** `soon`: get ready for `mark`. `now`: read. `wait`: `mark` is next. `over`: the last mark has passed. */
  phase: 'wait' | 'soon' | 'now' | 'over';
  mark?: number;
}

/**
 * The state from two timestamps in ms, so that a tab that slept for minutes is right when it wakes. `lead` is how long
 * before a mark it is announced, and how long after it a reading still belongs to it, in s.
 */
export function stopwatchAt(startedAt: number, now: number, marks: readonly number[], lead: number): StopwatchState {
  // A clock that was set back must not give a negative time.
  const elapsed = Math.max(0, (now - startedAt) / 1000);
  const mark = marks.find((at) => elapsed < at + lead);
  if (mark === undefined) return { elapsed, phase: 'over' };
  if (elapsed >= mark) return { elapsed, phase: 'now', mark };
  return { elapsed, phase: elapsed >= mark - lead ? 'soon' : 'wait', mark };
}

/** The name of a mark: `15 s`, `1 min`. */
export function markName(seconds: number): string {
  return seconds < 60 ? `${seconds} s` : `${seconds / 60} min`;
}
