import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { newId } from '../../visit/storage/new-id.ts';
import type { Known } from '../merge/merge-visit.ts';

/** What this device remembers of the exchange, beside its visits. */
interface ShopSchema extends DBSchema {
  known: { key: string; value: Known };
  setup: { key: 'device' | 'folder' | 'exchangedAt'; value: unknown };
}

export interface ShopDatabase {
  /** The id of this device: random, made at the first call. */
  device(): Promise<string>;
  known(): Promise<Map<string, Known>>;
  remember(known: ReadonlyMap<string, Known>): Promise<void>;
  /** What the browser gave for the shared folder; undefined if none is chosen. */
  folder(): Promise<unknown>;
  chooseFolder(handle: unknown): Promise<void>;
  /** ISO time of the last exchange with the folder. */
  exchangedAt(): Promise<string | undefined>;
  noteExchange(at: string): Promise<void>;
}

/** Opened for each use and closed at once, so that it never holds up another tab or a page kept for "back". */
export function shopDatabase(name = 'overcurrent-fieldbook-shop'): ShopDatabase {
  const use = async <T>(work: (db: IDBPDatabase<ShopSchema>) => Promise<T>): Promise<T> => {
    const db = await openDB<ShopSchema>(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore('known');
        fresh.createObjectStore('setup');
      },
    });
    try {
      return await work(db);
    } finally {
      db.close();
    }
  };
  const put = (key: 'folder' | 'exchangedAt', value: unknown) =>
    use(async (db) => {
      await db.put('setup', value, key);
    });
  return {
    device: () =>
      use(async (db) => {
        const tx = db.transaction('setup', 'readwrite');
        const stored = await tx.store.get('device');
        const device = typeof stored === 'string' ? stored : newId();
        if (stored !== device) await tx.store.put(device, 'device');
        await tx.done;
        return device;
      }),
    known: () =>
      use(async (db) => {
        const tx = db.transaction('known');
        const [ids, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
        return new Map(ids.flatMap((id, index) => (values[index] === undefined ? [] : [[id, values[index]]])));
      }),
    remember: (known) =>
      use(async (db) => {
        const tx = db.transaction('known', 'readwrite');
        for (const [id, one] of known) void tx.store.put(one, id);
        await tx.done;
      }),
    folder: () => use((db) => db.get('setup', 'folder')),
    chooseFolder: (handle) => put('folder', handle),
    exchangedAt: () =>
      use(async (db) => {
        const at = await db.get('setup', 'exchangedAt');
        return typeof at === 'string' ? at : undefined;
      }),
    noteExchange: (at) => put('exchangedAt', at),
  };
}
