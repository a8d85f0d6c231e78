import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB, type StoreNames } from 'idb';
import { HeldByOtherTab, NoStorage } from './storage-problem.ts';

type Mode = 'readonly' | 'readwrite';
export type StoresTransaction<S extends DBSchema, M extends Mode> = IDBPTransaction<S, StoreNames<S>[], M>;

/** The object stores of one database of this browser. */
export interface Stores<S extends DBSchema> {
  /** Runs `work` in one transaction: everything is stored or nothing. Throws what the browser throws. */
  run<T, M extends Mode>(mode: M, work: (transaction: StoresTransaction<S, M>) => Promise<T>): Promise<T>;
  close(): void;
}

export interface Layout<S extends DBSchema> {
  name: string;
  /** Version of the layout, not of the records. */
  version: number;
  stores: StoreNames<S>[];
  /** Brings a database of layout `from` to this one; 0: there was none. */
  upgrade: (db: IDBPDatabase<S>, from: number) => void;
}

/** Opens when first used, and again after the browser or another tab has closed it. */
export function openStores<S extends DBSchema>({ name, version, stores, upgrade }: Layout<S>): Stores<S> {
  let opening: Promise<IDBPDatabase<S>> | undefined;
  let held: Promise<never> | undefined;
  const running = new Set<{ abort(): void }>();

  const forget = (which: Promise<unknown> | undefined) => {
    if (opening === which) opening = undefined;
  };

  const begin = () => {
    const { promise: heldByOther, reject } = rejection();
    held = heldByOther;
    const promise = openDB<S>(name, version, {
      upgrade,
      blocked: () => reject(new HeldByOtherTab()),
      // A newer tab wants to change the database's layout, and waits until this connection is closed.
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
    // If the person has switched storage off, reading the property throws.
    if (typeof indexedDB === 'undefined') throw new NoStorage();
    opening ??= begin();
    // If both are settled the first wins: once the other tab has closed its connection, the database is open.
    return Promise.race([opening, held as Promise<never>]);
  };

  const transaction = async <M extends Mode>(mode: M) => {
    // Strict: a tablet's battery can fail at any moment, and "saved" must mean written to the disk.
    const start = async () => (await open()).transaction(stores, mode, { durability: 'strict' });
    try {
      return await start();
    } catch (error) {
      if (opening === undefined || !(error instanceof DOMException && error.name === 'InvalidStateError')) throw error;
      // The browser closed the connection: try once with a new one.
      forget(opening);
      return start();
    }
  };

  const close = () => {
    void opening?.then((db) => db.close()).catch(() => undefined);
    opening = undefined;
  };

  // A page that the browser keeps for "back" keeps its transactions too, and in WebKit the next page waits for them
  // forever. What is aborted here is in the draft journal, or still in the window when it comes back.
  const releaseDatabase = ({ persisted }: PageTransitionEvent) => {
    if (!persisted) return;
    for (const tx of running) abort(tx);
    close();
  };
  globalThis.addEventListener?.('pagehide', releaseDatabase);

  return {
    async run(mode, work) {
      const tx = await transaction(mode);
      running.add(tx);
      const ended = tx.done.then(
        () => undefined,
        (error: unknown) => tx.error ?? error,
      );
      try {
        const value = await work(tx);
        const error = await ended;
        if (error !== undefined) throw error;
        return value;
      } catch (error) {
        abort(tx);
        await ended;
        // The transaction's error names the reason, such as a full disk; a request's may only say that it was aborted.
        throw tx.error ?? error;
      } finally {
        running.delete(tx);
      }
    },
    close() {
      globalThis.removeEventListener?.('pagehide', releaseDatabase);
      close();
    },
  };
}

/** A promise that can only be rejected, without a warning if nothing handles it. */
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
