import { limitValue } from '../limits.ts';

/**
 * Whether what was true at `last` may still count at `now`: the same day, no long break, no clock set back. ISO times.
 * During a break somebody else may have been at the machine, and a bus may recharge.
 */
export function continues(last: string, now: string): boolean {
  const pause = Date.parse(now) - Date.parse(last);
  const sameDay = last.slice(0, 10) === now.slice(0, 10);
  return sameDay && pause >= 0 && pause <= limitValue('work-pause') * 60_000;
}
