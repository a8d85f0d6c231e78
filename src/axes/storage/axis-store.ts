import { type Problem, type Result, succeeded } from '../../kernel/link/problem.ts';
import { type Database, database } from '../../visit/storage/database.ts';
import { askToPersist } from '../../visit/storage/persistence.ts';
import { storageProblem, storageRefused } from '../../visit/storage/storage-problem.ts';
import { tabChannel } from '../../visit/storage/tab-channel.ts';
import type { AxisRecord } from '../record/axis-schema.ts';
import { mergeAxes } from '../record/merge-axes.ts';
import { readAxis } from '../record/read-axis.ts';
import type { VisitHead, VisitReadings } from '../record/visit-digest.ts';
import { type AxisDatabase, axisDatabase } from './axis-database.ts';
import { syncVisits } from './sync-visits.ts';

/** All that the list of axes is made from. */
export interface Stored {
  records: AxisRecord[];
  heads: VisitHead[];
  /** Records that this edition can't read; they stay stored as they are. */
  unreadable: { id: string; problem: Problem }[];
}

export interface AxisStore {
  /** The records, and the visits as they are stored now. */
  load(): Promise<Result<Stored>>;
  /** The readings of these visits; one without any is absent. */
  readings(ids: readonly string[]): Promise<Result<VisitReadings[]>>;
  /** Stores a record, united with what is stored under its id, and returns the result. */
  save(record: AxisRecord): Promise<Result<AxisRecord>>;
  /** Unites records of another device with those here. One that can't be united is left as it is here. */
  unite(records: readonly AxisRecord[]): Promise<Result<AxisRecord[]>>;
  /** Calls `listener` when another tab has changed a record or a visit. Returns the function that stops this. */
  listen(listener: () => void): () => void;
  close(): void;
}

export interface StoreParts {
  axes?: AxisDatabase;
  visits?: Database;
  channel?: string;
  persist?: () => Promise<unknown>;
}

/** The register in this browser. No function throws or rejects: a failure of the storage is returned as a problem. */
export function axisStore(parts: StoreParts = {}): AxisStore {
  const { axes = axisDatabase(), visits = database(), persist = askToPersist } = parts;
  const ownTabs = tabChannel(parts.channel ?? 'overcurrent-fieldbook-axes');
  const visitTabs = tabChannel();

  const attempt = async <T>(work: () => Promise<Result<T>>): Promise<Result<T>> => {
    try {
      return await work();
    } catch (error) {
      return { ok: false, problem: storageProblem(error) };
    }
  };

  const unite = (records: readonly AxisRecord[]) =>
    attempt(async () => {
      for (const record of records) {
        const read = readAxis(record);
        if (!read.ok) return storageRefused('not-savable', read.problem.where);
      }
      const united = await axes.run('readwrite', async (tx) => {
        const store = tx.objectStore('axes');
        const done: AxisRecord[] = [];
        for (const mine of records) {
          const row = await store.get(mine.id);
          const read = row && readAxis(row.record);
          // It may be of a newer edition: an unreadable record is never overwritten.
          if (read?.ok === false) continue;
          const both = read ? mergeAxes(read.value, mine) : mine;
          const record = { ...both, revision: both.revision + 1 };
          await store.put({ id: record.id, record });
          done.push(record);
        }
        return done;
      });
      for (const { id } of united) ownTabs.announce({ id, change: 'saved' });
      void persist();
      return succeeded(united);
    });

  return {
    load: () =>
      attempt(async () => {
        const [heads, rows] = await Promise.all([
          syncVisits(visits, axes),
          axes.run('readonly', (tx) => tx.objectStore('axes').getAll()),
        ]);
        const stored: Stored = { records: [], heads, unreadable: [] };
        for (const { id, record } of rows) {
          const read = readAxis(record);
          if (read.ok) stored.records.push(read.value);
          else stored.unreadable.push({ id, problem: read.problem });
        }
        return succeeded(stored);
      }),
    readings: (ids) =>
      attempt(async () =>
        succeeded(
          await axes.run('readonly', async (tx) => {
            const store = tx.objectStore('readings');
            const rows = await Promise.all(ids.map((id) => store.get(id)));
            return rows.flatMap((row) => row ?? []);
          }),
        ),
      ),
    async save(record) {
      const result = await unite([record]);
      if (!result.ok) return result;
      const [saved] = result.value;
      return saved === undefined ? storageRefused('newer-site') : succeeded(saved);
    },
    unite,
    listen(listener) {
      const stops = [ownTabs.listen(listener), visitTabs.listen(listener)];
      return () => {
        for (const stop of stops) stop();
      };
    },
    close() {
      ownTabs.close();
      visitTabs.close();
      axes.close();
      visits.close();
    },
  };
}
