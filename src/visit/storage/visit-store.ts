import { limitValue } from '../../kernel/limits.ts';
import { type Problem, type Result, succeeded } from '../../kernel/link/problem.ts';
import { copyOf } from '../record/change-visit.ts';
import { byteLength, readVisit } from '../record/read-visit.ts';
import { emptyDraft, readDraft, type VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { type VisitChange, type VisitChanges, visitChanges } from './changes.ts';
import { type Database, database, type VisitRow, type Visits } from './database.ts';
import { forgetLocalDraft } from './local-draft.ts';
import { newId } from './new-id.ts';
import { askToPersist } from './persistence.ts';
import { type Shelf, shelfOf } from './shelf.ts';
import { storageProblem, storageRefused } from './storage-problem.ts';

/** What came of a save. After a problem `mine` is what the caller still holds, `stored` what the storage has instead. */
export type SaveResult =
  | { ok: true; value: VisitRecord }
  | { ok: false; problem: Problem; mine: VisitRecord; stored?: VisitRecord };

export interface VisitStore {
  /** The visits on this device, the last saved first; those that can't be read are named, not hidden. */
  list(): Promise<Result<Shelf>>;
  load(id: string): Promise<Result<VisitRecord>>;
  /** What lies in the storage under an id, as text, however damaged: so that it can be taken out as a file. */
  loadRaw(id: string): Promise<Result<string>>;
  /**
   * Stores the visit if nobody has since it was loaded, and gives it back with its new revision. `conflict`: another
   * tab has saved meanwhile. `deleted-elsewhere`: it is gone; `restore` puts it back.
   */
  save(visit: VisitRecord, draft?: VisitDraft): Promise<SaveResult>;
  /** Takes in a visit from a file or a link. One that is here already is `already-here` until the caller chooses. */
  add(visit: VisitRecord, whenHere?: 'replace' | 'keep-both'): Promise<SaveResult>;
  /** Deletes a visit and gives it back for `restore`. One that can't be read is deleted too, and is undefined. */
  remove(id: string): Promise<Result<VisitRecord | undefined>>;
  /** What was typed into a visit and is not part of it yet; an empty draft if there is none, or the storage refuses. */
  loadDraft(id: string): Promise<VisitDraft>;
  /** Keeps what is being typed into a stored visit, or forgets it. Never fails: the window still holds it. */
  noteDraft(id: string, draft: VisitDraft | undefined): Promise<void>;
  /** Undoes `remove`. */
  restore(visit: VisitRecord): Promise<SaveResult>;
  /** Hears of changes by other tabs. */
  listen(listener: (change: VisitChange) => void): () => void;
  close(): void;
}

export interface StoreParts {
  database?: Database;
  changes?: VisitChanges;
  newId?: () => string;
  persist?: () => Promise<unknown>;
}

/** The visits in this browser. No function throws or rejects; a storage that refuses gives a problem that says so. */
export function visitStore(parts: StoreParts = {}): VisitStore {
  const { database: db = database(), changes = visitChanges(), persist = askToPersist } = parts;
  const nextId = parts.newId ?? newId;

  /** Runs one change; `decide` sees what is stored and says what to store instead. */
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
        changes.tell({ id: result.value.id, change: 'saved' });
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
    list: () => reading(async (visits) => succeeded(shelfOf(await visits.index('order').getAll()))),
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
    async add(mine, whenHere) {
      const result = await put(mine, (stored) => takenIn(mine, stored, whenHere, nextId));
      // What was typed into the one that was here does not belong to the one that replaces it.
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
        // The other copy is in `localStorage`; a save that fails speaks for itself.
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
        changes.tell({ id, change: 'removed' });
        return succeeded(removed.kind === 'visit' ? removed.visit : undefined);
      } catch (error) {
        return { ok: false, problem: storageProblem(error) };
      }
    },
    listen: (listener) => changes.listen(listener),
    close() {
      changes.close();
      db.close();
    },
  };
}

type Stored = { kind: 'nothing' } | { kind: 'visit'; visit: VisitRecord } | { kind: 'unreadable'; problem: Problem };
type Decided = { ok: true; value: VisitRecord } | { ok: false; problem: Problem };

function storedIn(row: VisitRow | undefined): Stored {
  if (row === undefined) return { kind: 'nothing' };
  const read = readVisit(row.record);
  return read.ok ? { kind: 'visit', visit: read.value } : { kind: 'unreadable', problem: read.problem };
}

function nextRevision(mine: VisitRecord, stored: Stored): Decided {
  switch (stored.kind) {
    case 'unreadable':
      // Perhaps of a newer edition: what can't be read is never written over.
      return { ok: false, problem: stored.problem };
    case 'nothing':
      return mine.revision === 0 ? succeeded({ ...mine, revision: 1 }) : storageRefused('deleted-elsewhere');
    case 'visit':
      return stored.visit.revision === mine.revision
        ? succeeded({ ...mine, revision: mine.revision + 1 })
        : storageRefused('conflict');
  }
}

function takenIn(
  mine: VisitRecord,
  stored: Stored,
  whenHere: 'replace' | 'keep-both' | undefined,
  newId: () => string,
): Decided {
  if (stored.kind === 'nothing') return succeeded({ ...mine, revision: Math.max(1, mine.revision) });
  if (whenHere === 'keep-both') return succeeded({ ...copyOf(mine, newId()), revision: 1 });
  if (whenHere === undefined || stored.kind === 'unreadable') return storageRefused('already-here');
  // Above both, so that a tab that holds either of them learns of it.
  return succeeded({ ...mine, revision: Math.max(mine.revision, stored.visit.revision) + 1 });
}

/** What can't be read back must not be stored. */
function unfitToSave(visit: VisitRecord): Problem | undefined {
  const read = readVisit(visit);
  if (!read.ok) return storageRefused('not-savable', read.problem.where).problem;
  const size = byteLength(JSON.stringify(visit));
  return size > limitValue('record-file') ? storageRefused('visit-too-large').problem : undefined;
}

async function nextOrder(visits: Visits<'readwrite'>): Promise<number> {
  const last = await visits.index('order').openKeyCursor(null, 'prev');
  return Number(last?.key ?? 0) + 1;
}
