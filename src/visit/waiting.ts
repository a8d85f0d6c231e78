/** A wait that somebody has started. `startedAt`: in ms, as `Date.now` gives it. */
export interface Wait {
  id: string;
  name: string;
  after: string;
  minutes: number;
  startedAt: number;
}

/**
 * What is left of a wait at `now`, in whole seconds, rounded up. A clock that was set back gives the whole wait again, never
 * less.
 */
export function secondsLeft({ minutes, startedAt }: Wait, now: number): number {
  const whole = minutes * 60;
  const passed = (now - startedAt) / 1000;
  return passed < 0 ? whole : Math.max(0, Math.ceil(whole - passed));
}

/** `4:05`, minutes and seconds. */
export function clockFace(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
