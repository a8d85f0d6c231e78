import type { VisitRecord } from '../record/visit-schema.ts';

/** What a visit is called: machine and axis, as far as they are written down. */
export function visitTitle({ machine, axis }: Pick<VisitRecord, 'machine' | 'axis'>): string {
  const title = [machine, axis]
    .map((part) => part.trim())
    .filter(Boolean)
    .join(', ');
  return title === '' ? 'Visit without a name' : title;
}
