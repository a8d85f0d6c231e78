const two = (number: number) => String(Math.trunc(Math.abs(number))).padStart(2, '0');

/** `2026-03-02T05:58:00+01:00`: local time with its offset. `offsetMinutes` east of UTC. */
export function isoTime(moment: Date, offsetMinutes = -moment.getTimezoneOffset()): string {
  const local = new Date(moment.getTime() + offsetMinutes * 60_000).toISOString().slice(0, 19);
  const sign = offsetMinutes < 0 ? '-' : '+';
  return `${local}${sign}${two(offsetMinutes / 60)}:${two(offsetMinutes % 60)}`;
}

/** `2026-03-02, 05:58`, in the local time of the place where it was written. */
export function shownTime(isoWithOffset: string): string {
  return `${isoWithOffset.slice(0, 10)}, ${isoWithOffset.slice(11, 16)}`;
}
