import 'fake-indexeddb/auto';
import { onTestFinished } from 'vitest';
import { database } from '../../../../../src/visit/storage/database.ts';
import { type TabChannel, tabChannel, type VisitChange } from '../../../../../src/visit/storage/tab-channel.ts';
import { type StoreParts, type VisitStore, visitStore } from '../../../../../src/visit/storage/visit-store.ts';

let opened = 0;

/** A name that no other test uses. */
export const freshName = () => `visits-${++opened}`;

/** One tab on the storage of that name; each call is another tab. */
export function tab(name: string, parts: StoreParts = {}): VisitStore {
  const store = visitStore({
    database: database(name),
    tabs: tabChannel(name),
    persist: () => Promise.resolve(),
    ...parts,
  });
  onTestFinished(() => store.close());
  return store;
}

/** A channel that only records what is announced. */
export function recordingChannel(): TabChannel & { announced: VisitChange[] } {
  const announced: VisitChange[] = [];
  return {
    announced,
    announce: (change) => announced.push(change),
    listen: () => () => undefined,
    close: () => undefined,
  };
}

/** Stores a record without the store's checks, like another edition or a damaged disk. */
export async function putRaw(name: string, id: string, record: unknown): Promise<void> {
  const db = database(name);
  await db.run('readwrite', (visits) => visits.put({ id, order: 1000, record }));
  db.close();
}
