import type { VisitRecord } from '../../record/visit-schema.ts';

/** What a visit is called: machine and axis, as far as they are written down. */
export function visitTitle({ machine, axis }: Pick<VisitRecord, 'machine' | 'axis'>): string {
  const title = [machine, axis]
    .map((part) => part.trim())
    .filter(Boolean)
    .join(', ');
  return title === '' ? 'Visit without a name' : title;
}

/** `2026-03-02, 05:58`, in the clock of the place where it was written. */
export function shownTime(isoWithOffset: string): string {
  return `${isoWithOffset.slice(0, 10)}, ${isoWithOffset.slice(11, 16)}`;
}
