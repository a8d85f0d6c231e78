import { type Problem, type Result, succeeded } from '../../kernel/link/problem.ts';
import { readVisit } from '../record/read-visit.ts';
import { emptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { type Database, database, type Visits } from './database.ts';
import { forgetLocalDraft } from './local-draft.ts';
import { newId } from './new-id.ts';
import { askToPersist } from './persistence.ts';
import { type Decided, importDecision, nextRevision, type Stored, storedIn, unfitToSave } from './save-decision.ts';
import { storageProblem, storageRefused } from './storage-problem.ts';
import { type StoredVisits, storedVisits } from './stored-visits.ts';
import { type TabChannel, tabChannel, type VisitChange } from './tab-channel.ts';

/** The result of a save. After a problem `mine` is the caller's visit, `stored` the one in the storage. */
export type SaveResult =
  | { ok: true; value: VisitRecord }
  | { ok: false; problem: Problem; mine: VisitRecord; stored?: VisitRecord };

export interface VisitStore {
  /** The visits on this device, the last saved first; unreadable ones are listed too. */
  list(): Promise<Result<StoredVisits>>;
  load(id: string): Promise<Result<VisitRecord>>;
  /** The stored data under an id as text, even if damaged, for export as a file. */
  loadRaw(id: string): Promise<Result<string>>;
  /**
   * Stores the visit if it has not been saved elsewhere since it was loaded, and returns it with its new revision.
   * `conflict`: another tab has saved it. `deleted-elsewhere`: it was deleted; `restore` puts it back.
   */
  save(visit: VisitRecord, draft?: VisitDraft): Promise<SaveResult>;
  /** Imports a visit from a file or a link. If it is already stored and `onDuplicate` is absent: `already-here`. */
  add(visit: VisitRecord, onDuplicate?: 'replace' | 'keep-both'): Promise<SaveResult>;
  /** Deletes a visit and returns it for `restore`; undefined for an unreadable one, which is deleted too. */
  remove(id: string): Promise<Result<VisitRecord | undefined>>;
  /** What was typed into a visit and is not part of it yet; an empty draft if there is none or the storage refuses. */
  loadDraft(id: string): Promise<VisitDraft>;
  /** Stores or removes the draft of a stored visit. Never fails: the window still has what was typed. */
  noteDraft(id: string, draft: VisitDraft | undefined): Promise<void>;
  /** Undoes `remove`. */
  restore(visit: VisitRecord): Promise<SaveResult>;
  /** Calls `listener` for changes by other tabs. Returns the function that stops this. */
  listen(listener: (change: VisitChange) => void): () => void;
  close(): void;
}

export interface StoreParts {
  database?: Database;
  tabs?: TabChannel;
  newId?: () => string;
  persist?: () => Promise<unknown>;
}

/** The visits in this browser. No function throws or rejects: a failure of the storage is returned as a problem. */
export function visitStore(parts: StoreParts = {}): VisitStore {
  const { database: db = database(), tabs = tabChannel(), persist = askToPersist } = parts;
  const nextId = parts.newId ?? newId;

  /** Runs one change: `decide` gets what is stored and returns what to store instead. */
  const put = async (
    mine: VisitRecord,
    decide: (stored: Stored) => Decided,
    draft?: VisitDraft,
  ): Promise<SaveResult> => {
    const unfit = unfitToSave(mine);
    if (unfit !== undefined) return { ok: false, problem: unfit, mine };
    try {
      const { result, first } = await db.run('readwrite', async (visits) => {
        const stored = storedIn(await visits.get(mine.id));
        const decided = decide(stored);
        if (decided.ok) {
          const { id } = decided.value;
          const order = await nextOrder(visits);
          await visits.put({ id, order, record: decided.value, ...(draft && { draft }) });
        }
        const other = stored.kind === 'visit' ? { stored: stored.visit } : {};
        return { result: decided.ok ? decided : { ...decided, mine, ...other }, first: stored.kind === 'nothing' };
      });
      if (result.ok) {
        tabs.announce({ id: result.value.id, change: 'saved' });
        if (first) void persist();
      }
      return result;
    } catch (error) {
      return { ok: false, problem: storageProblem(error), mine };
    }
  };

  const reading = async <T>(work: (visits: Visits<'readonly'>) => Promise<Result<T>>): Promise<Result<T>> => {
    try {
      return await db.run('readonly', work);
    } catch (error) {
      return { ok: false, problem: storageProblem(error) };
    }
  };

  return {
    list: () => reading(async (visits) => succeeded(storedVisits(await visits.index('order').getAll()))),
    load: (id) =>
      reading(async (visits) => {
        const row = await visits.get(id);
        return row === undefined ? storageRefused('not-found') : readVisit(row.record);
      }),
    loadRaw: (id) =>
      reading(async (visits) => {
        const row = await visits.get(id);
        return row === undefined ? storageRefused('not-found') : succeeded(JSON.stringify(row.record, null, 2));
      }),
    save: (mine, draft) => put(mine, (stored) => nextRevision(mine, stored), draft),
    async add(mine, onDuplicate) {
      const result = await put(mine, (stored) => importDecision(mine, stored, onDuplicate, nextId));
      // A draft of the replaced visit does not belong to the new one.
      if (result.ok) forgetLocalDraft(result.value.id);
      return result;
    },
    async loadDraft(id) {
      const result = await reading(async (visits) => succeeded((await visits.get(id))?.draft));
      return result.ok ? readDraft(result.value) : emptyDraft;
    },
    async noteDraft(id, draft) {
      try {
        await db.run('readwrite', async (visits) => {
          const row = await visits.get(id);
          if (row === undefined) return;
          const { draft: _before, ...rest } = row;
          await visits.put({ ...rest, ...(draft && { draft }) });
        });
      } catch {
        // `localStorage` has the other copy, and a failed save is reported.
      }
    },
    restore: (mine) =>
      put(mine, (stored) => (stored.kind === 'nothing' ? succeeded(mine) : storageRefused('conflict'))),
    async remove(id) {
      try {
        const removed = await db.run('readwrite', async (visits) => {
          const stored = storedIn(await visits.get(id));
          await visits.delete(id);
          return stored;
        });
        if (removed.kind === 'nothing') return storageRefused('not-found');
        forgetLocalDraft(id);
        tabs.announce({ id, change: 'removed' });
        return succeeded(removed.kind === 'visit' ? removed.visit : undefined);
      } catch (error) {
        return { ok: false, problem: storageProblem(error) };
      }
    },
    listen: (listener) => tabs.listen(listener),
    close() {
      tabs.close();
      db.close();
    },
  };
}

async function nextOrder(visits: Visits<'readwrite'>): Promise<number> {
  const last = await visits.index('order').openKeyCursor(null, 'prev');
  return Number(last?.key ?? 0) + 1;
}
