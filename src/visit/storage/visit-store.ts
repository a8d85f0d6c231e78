import { isObject } from '../../kernel/link/parse-json.ts';
import { type Problem, type Result, succeeded } from '../../kernel/link/problem.ts';
import { withPhotographs } from '../record/export-visit.ts';
import { mergedPhotographs, type Photograph } from '../record/photograph.ts';
import { overBudget } from '../record/photograph-problem.ts';
import { readVisit } from '../record/read-visit.ts';
import type { VisitDraft } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { type Database, database, type Photographs, type Visits } from './database.ts';
import { type DraftStore, draftStore } from './draft-store.ts';
import { keepWaits } from './kept-waits.ts';
import { forgetLocalCaptions } from './local-captions.ts';
import { forgetLocalDraft } from './local-draft.ts';
import { newId } from './new-id.ts';
import { deleteKeepingOrder, nextOrder } from './order.ts';
import { askToPersist } from './persistence.ts';
import { ofVisit, type PhotographStore, photographStore, photographsOf } from './photograph-store.ts';
import { type Decided, importDecision, nextRevision, type Stored, storedIn, unfitToSave } from './save-decision.ts';
import { storageProblem, storageRefused } from './storage-problem.ts';
import { type StoredVisits, storedVisits } from './stored-visits.ts';
import { type TabChannel, tabChannel, type VisitChange } from './tab-channel.ts';

/** The result of a save. After a problem `mine` is the caller's visit, `stored` the one in the storage. */
export type SaveResult =
  | { ok: true; value: VisitRecord }
  | { ok: false; problem: Problem; mine: VisitRecord; stored?: VisitRecord };

/** What `remove` has deleted, for `restore`. Without a visit: what was there could not be read. */
export interface Removed {
  visit: VisitRecord | undefined;
  photographs: Photograph[];
}

export interface VisitStore extends DraftStore {
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
  /**
   * Imports a visit from a file or a link. If it is already stored and `onDuplicate` is absent: `already-here`. Replacing
   * a visit keeps the photographs that are stored, beside those given: a link has none.
   */
  add(
    visit: VisitRecord,
    onDuplicate?: 'replace' | 'keep-both',
    photographs?: readonly Photograph[],
  ): Promise<SaveResult>;
  /** Deletes a visit with its photographs and returns both. An unreadable visit is deleted too. */
  remove(id: string): Promise<Result<Removed>>;
  /** Undoes `remove`. */
  restore(visit: VisitRecord, photographs?: readonly Photograph[]): Promise<SaveResult>;
  photographs: PhotographStore;
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

/** What is stored with a visit in the same transaction. */
interface Beside {
  draft?: VisitDraft;
  photographs?: readonly Photograph[];
}

/** The visits in this browser. No function throws or rejects: a failure of the storage is returned as a problem. */
export function visitStore(parts: StoreParts = {}): VisitStore {
  const { database: db = database(), tabs = tabChannel(), persist = askToPersist } = parts;
  const nextId = parts.newId ?? newId;

  /** Runs one change: `decide` gets what is stored and returns what to store instead. */
  const put = async (
    mine: VisitRecord,
    decide: (stored: Stored) => Decided,
    { draft, photographs = [] }: Beside = {},
  ): Promise<SaveResult> => {
    const unfit = unfitToSave(mine);
    if (unfit !== undefined) return { ok: false, problem: unfit, mine };
    try {
      const { result, first } = await db.run('readwrite', async (visits, pictures) => {
        const stored = storedIn(await visits.get(mine.id));
        const allowed = decide(stored);
        const decided = allowed.ok ? await withPictures(pictures, allowed, photographs) : allowed;
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

  const reading = async <T>(
    work: (visits: Visits<'readonly'>, pictures: Photographs<'readonly'>) => Promise<Result<T>>,
  ): Promise<Result<T>> => {
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
      reading(async (visits, pictures) => {
        const row = await visits.get(id);
        if (row === undefined) return storageRefused('not-found');
        const { record } = row;
        const photographs = await photographsOf(pictures, id);
        return succeeded(JSON.stringify(isObject(record) ? withPhotographs(record, photographs) : record, null, 2));
      }),
    save: (mine, draft) => put(mine, (stored) => nextRevision(mine, stored), { ...(draft && { draft }) }),
    async add(mine, onDuplicate, photographs = []) {
      const result = await put(mine, (stored) => importDecision(mine, stored, onDuplicate, nextId), { photographs });
      // A draft of the replaced visit does not belong to the new one.
      if (result.ok) forgetLocalDraft(result.value.id);
      return result;
    },
    ...draftStore(db),
    restore: (mine, photographs = []) =>
      put(mine, (stored) => (stored.kind === 'nothing' ? succeeded(mine) : storageRefused('conflict')), {
        photographs,
      }),
    photographs: photographStore(db, tabs),
    async remove(id) {
      try {
        const removed = await db.run('readwrite', async (visits, pictures) => {
          const stored = storedIn(await visits.get(id));
          const photographs = await photographsOf(pictures, id);
          await deleteKeepingOrder(visits, id);
          await pictures.delete(ofVisit(id));
          return { stored, photographs };
        });
        const { stored, photographs } = removed;
        if (stored.kind === 'nothing') return storageRefused('not-found');
        forgetLocalDraft(id);
        forgetLocalCaptions(id);
        keepWaits(id, []);
        tabs.announce({ id, change: 'removed' });
        return succeeded({ visit: stored.kind === 'visit' ? stored.visit : undefined, photographs });
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

/** Stores the photographs given beside those that are there, if the visit has room for both. */
async function withPictures(
  pictures: Photographs<'readwrite'>,
  decided: Extract<Decided, { ok: true }>,
  given: readonly Photograph[],
): Promise<Decided> {
  if (given.length === 0) return decided;
  const visit = decided.value.id;
  const all = mergedPhotographs(await photographsOf(pictures, visit), given);
  const problem = overBudget(all);
  if (problem !== undefined) return { ok: false, problem };
  for (const one of all) await pictures.put({ ...one, visit });
  return decided;
}
