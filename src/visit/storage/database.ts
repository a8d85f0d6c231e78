import type { DBSchema, IDBPObjectStore, StoreNames } from 'idb';
import { openStores } from './stores.ts';

/** A stored visit. `order` grows with each save of any visit, so that the list does not depend on a clock. */
export interface VisitRow {
  id: string;
  order: number;
  /** Of any version of the format: read it with `readVisit`. */
  record: unknown;
  /** What was typed but is not part of the record yet: read it with `readDraft`. */
  draft?: unknown;
}

interface VisitSchema extends DBSchema {
  visits: { key: string; value: VisitRow; indexes: { order: number } };
}

type Mode = 'readonly' | 'readwrite';
export type Visits<M extends Mode> = IDBPObjectStore<VisitSchema, StoreNames<VisitSchema>[], 'visits', M>;

export interface Database {
  /** Runs `work` in one transaction: everything is stored or nothing. Throws what the browser throws. */
  run<T, M extends Mode>(mode: M, work: (visits: Visits<M>) => Promise<T>): Promise<T>;
  close(): void;
}

/** Version of the database's layout, not of the records in it. */
const databaseVersion = 1;

/** The database of the visits. */
export function database(name = 'overcurrent-fieldbook', version = databaseVersion): Database {
  const { run, close } = openStores<VisitSchema>({
    name,
    version,
    stores: ['visits'],
    upgrade(db, from) {
      if (from < 1) db.createObjectStore('visits', { keyPath: 'id' }).createIndex('order', 'order');
    },
  });
  return { run: (mode, work) => run(mode, (tx) => work(tx.objectStore('visits'))), close };
}
