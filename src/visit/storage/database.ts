import { type DBSchema, type IDBPDatabase, type IDBPObjectStore, openDB } from 'idb';
import { HeldByOtherTab, NoStorage } from './storage-problem.ts';

/** A visit as it lies in the storage. `order` grows with each save of any visit, so that no clock sorts the list. */
export interface VisitRow {
  id: string;
  order: number;
  /** Of any version of the format: read it with `readVisit`. */
  record: unknown;
  /** What was typed and is not part of the record yet: read it with `readDraft`. */
  draft?: unknown;
}

interface VisitSchema extends DBSchema {
  visits: { key: string; value: VisitRow; indexes: { order: number } };
}

type Mode = 'readonly' | 'readwrite';
export type Visits<M extends Mode> = IDBPObjectStore<VisitSchema, ['visits'], 'visits', M>;

export interface Database {
  /** Runs `work` in one transaction: all of it is stored, or nothing. Throws what the browser throws. */
  run<T, M extends Mode>(mode: M, work: (visits: Visits<M>) => Promise<T>): Promise<T>;
  close(): void;
}

/** Of the form of the storage, not of the records in it. */
export const databaseVersion = 1;

/** Opens when first used, and again after the browser or another tab has closed it. */
export function database(name = 'overcurrent-fieldbook', version = databaseVersion): Database {
  let opening: Promise<IDBPDatabase<VisitSchema>> | undefined;
  let held: Promise<never> | undefined;
  const running = new Set<{ abort(): void }>();

  const forget = (which: Promise<unknown> | undefined) => {
    if (opening === which) opening = undefined;
  };

  const begin = () => {
    const { promise: heldByOther, reject } = rejection();
    held = heldByOther;
    const promise = openDB<VisitSchema>(name, version, {
      upgrade(db, from) {
        if (from < 1) db.createObjectStore('visits', { keyPath: 'id' }).createIndex('order', 'order');
      },
      blocked: () => reject(new HeldByOtherTab()),
      // A newer tab wants to change the form of the storage: make way, or it waits for ever.
      blocking: () => {
        forget(promise);
        void promise.then((db) => db.close());
      },
      terminated: () => forget(promise),
    });
    promise.catch(() => forget(promise));
    return promise;
  };

  const open = async () => {
    // Reading the property alone throws where the person has switched storage off.
    if (typeof indexedDB === 'undefined') throw new NoStorage();
    opening ??= begin();
    // The first of two that are settled wins: once the other tab has made way, this is open.
    return Promise.race([opening, held as Promise<never>]);
  };

  const transaction = async <M extends Mode>(mode: M) => {
    // Strict: the tablet's battery may go at any moment, and "saved" must mean on the disk.
    const start = async () => (await open()).transaction('visits', mode, { durability: 'strict' });
    try {
      return await start();
    } catch (error) {
      if (opening === undefined || !(error instanceof DOMException && error.name === 'InvalidStateError')) throw error;
      // The connection was closed under us; a new one is worth one try.
      forget(opening);
      return start();
    }
  };

  const close = () => {
    void opening?.then((db) => db.close()).catch(() => undefined);
    opening = undefined;
  };

  // A page that the browser keeps for "back" keeps its transactions too, and in WebKit the next page waits for them for
  // ever. What is given up here is in the journal of drafts, or in the window that comes back.
  const makeWay = ({ persisted }: PageTransitionEvent) => {
    if (!persisted) return;
    for (const tx of running) abort(tx);
    close();
  };
  globalThis.addEventListener?.('pagehide', makeWay);

  return {
    async run(mode, work) {
      const tx = await transaction(mode);
      running.add(tx);
      const ended = tx.done.then(
        () => undefined,
        (error: unknown) => tx.error ?? error,
      );
      try {
        const value = await work(tx.store);
        const error = await ended;
        if (error !== undefined) throw error;
        return value;
      } catch (error) {
        abort(tx);
        await ended;
        // The transaction knows the reason, such as a full disk; a request may only know that it was given up.
        throw tx.error ?? error;
      } finally {
        running.delete(tx);
      }
    },
    close() {
      globalThis.removeEventListener?.('pagehide', makeWay);
      close();
    },
  };
}

/** A promise that can only be rejected, and that nobody needs to listen to. */
function rejection(): { promise: Promise<never>; reject: (error: Error) => void } {
  let reject: (error: Error) => void = () => undefined;
  const promise = new Promise<never>((_, refuse) => {
    reject = refuse;
  });
  promise.catch(() => undefined);
  return { promise, reject };
}

function abort(tx: { abort(): void }): void {
  try {
    tx.abort();
  } catch {
    // Already ended.
  }
}
