import type { DBSchema, IDBPObjectStore, StoreNames } from 'idb';
import type { Photograph } from '../record/photograph.ts';
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

/** A photograph of a visit: `visit` is its id. Apart from the visit, so that saving one does not write the other. */
export interface PhotographRow extends Photograph {
  visit: string;
}

/** Visit, step, photograph. */
export type PhotographKey = [string, string, string];

interface VisitSchema extends DBSchema {
  visits: { key: string; value: VisitRow; indexes: { order: number } };
  photographs: { key: PhotographKey; value: PhotographRow };
}

type Mode = 'readonly' | 'readwrite';
type Store<Name extends 'visits' | 'photographs', M extends Mode> = IDBPObjectStore<
  VisitSchema,
  StoreNames<VisitSchema>[],
  Name,
  M
>;
export type Visits<M extends Mode> = Store<'visits', M>;
export type Photographs<M extends Mode> = Store<'photographs', M>;

export interface Database {
  /** Runs `work` in one transaction: everything is stored or nothing. Throws what the browser throws. */
  run<T, M extends Mode>(mode: M, work: (visits: Visits<M>, photographs: Photographs<M>) => Promise<T>): Promise<T>;
  close(): void;
}

/** Version of the database's layout, not of the records in it. */
const databaseVersion = 2;

/** The database of the visits. */
export function database(name = 'overcurrent-fieldbook', version = databaseVersion): Database {
  const { run, close } = openStores<VisitSchema>({
    name,
    version,
    stores: ['visits', 'photographs'],
    upgrade(db, from) {
      if (from < 1) db.createObjectStore('visits', { keyPath: 'id' }).createIndex('order', 'order');
      if (from < 2) db.createObjectStore('photographs', { keyPath: ['visit', 'step', 'id'] });
    },
  });
  return {
    run: (mode, work) => run(mode, (tx) => work(tx.objectStore('visits'), tx.objectStore('photographs'))),
    close,
  };
}
