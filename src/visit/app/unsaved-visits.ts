import type { VisitRecord } from '../record/visit-schema.ts';
import { askBeforeClosing } from './ask-before-closing.ts';

/** Visits that could not be saved. They stay in this window when the view changes, so that nothing typed is lost. */
const unsaved = new Map<string, VisitRecord>();

export function holdUnsaved(visit: VisitRecord): void {
  unsaved.set(visit.id, visit);
}

export function releaseUnsaved(id: string): void {
  unsaved.delete(id);
}

export function unsavedVisit(id: string): VisitRecord | undefined {
  return unsaved.get(id);
}

export function unsavedVisits(): VisitRecord[] {
  return [...unsaved.values()];
}

/** Makes the browser ask before a window with unsaved visits is closed. Returns the function that stops this. */
export function warnBeforeLoss(): () => void {
  const warn = (event: BeforeUnloadEvent) => {
    if (unsaved.size > 0) askBeforeClosing(event);
  };
  addEventListener('beforeunload', warn);
  return () => removeEventListener('beforeunload', warn);
}

const pending = new Set<Promise<unknown>>();

/** Remembers a save in progress, so that a list does not show the visit as it was before. */
export function trackSave(save: Promise<unknown>): void {
  pending.add(save);
  void save.finally(() => pending.delete(save));
}

/** Resolves when the saves in progress have ended, successfully or not. */
export function pendingSaves(): Promise<unknown> {
  return Promise.allSettled(pending);
}
