import 'fake-indexeddb/auto';
import { onTestFinished } from 'vitest';
import { type VisitChange, type VisitChanges, visitChanges } from '../../../../../src/visit/storage/changes.ts';
import { database } from '../../../../../src/visit/storage/database.ts';
import { type StoreParts, type VisitStore, visitStore } from '../../../../../src/visit/storage/visit-store.ts';

let opened = 0;

/** A name that no other test uses. */
export const freshName = () => `visits-${++opened}`;

/** One tab on the storage of that name; each call is another tab. */
export function tab(name: string, parts: StoreParts = {}): VisitStore {
  const store = visitStore({
    database: database(name),
    changes: visitChanges(name),
    persist: () => Promise.resolve(),
    ...parts,
  });
  onTestFinished(() => store.close());
  return store;
}

/** A channel that only writes down what was told. */
export function noted(): VisitChanges & { told: VisitChange[] } {
  const told: VisitChange[] = [];
  return { told, tell: (change) => told.push(change), listen: () => () => undefined, close: () => undefined };
}

/** Puts something under an id without the store's checks, as another edition or a fault of the disk would. */
export async function putRaw(name: string, id: string, record: unknown): Promise<void> {
  const db = database(name);
  await db.run('readwrite', (visits) => visits.put({ id, order: 1000, record }));
  db.close();
}
