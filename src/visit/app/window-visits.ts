import type { VisitRecord } from '../record/visit-schema.ts';

/** Visits of this window that could not be saved. They outlive a change of view, so that nothing typed is lost. */
const held = new Map<string, VisitRecord>();

export function hold(visit: VisitRecord): void {
  held.set(visit.id, visit);
}

export function letGo(id: string): void {
  held.delete(id);
}

export function heldVisit(id: string): VisitRecord | undefined {
  return held.get(id);
}

export function heldVisits(): VisitRecord[] {
  return [...held.values()];
}

/** Closing the window would lose them: the browser asks first. */
export function warnBeforeLoss(): () => void {
  const warn = (event: BeforeUnloadEvent) => {
    if (held.size > 0) event.preventDefault();
  };
  addEventListener('beforeunload', warn);
  return () => removeEventListener('beforeunload', warn);
}
