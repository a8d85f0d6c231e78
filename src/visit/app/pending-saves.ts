const pending = new Set<Promise<unknown>>();

/** Remembers a save that is under way, so that a list does not show the visit as it was before. */
export function track(save: Promise<unknown>): void {
  pending.add(save);
  void save.finally(() => pending.delete(save));
}

/** When the saves that are under way have ended, well or not. */
export function pendingSaves(): Promise<unknown> {
  return Promise.allSettled(pending);
}
