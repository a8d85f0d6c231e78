import { type Result, succeeded } from '../../kernel/link/problem.ts';
import { inOrder, type Photograph } from '../record/photograph.ts';
import { overBudget } from '../record/photograph-problem.ts';
import type { Database, PhotographKey, Photographs } from './database.ts';
import { storageProblem, storageRefused } from './storage-problem.ts';
import type { TabChannel } from './tab-channel.ts';

/** The photographs of the visits in this browser. `visit`: the id of a visit. No function throws or rejects. */
export interface PhotographStore {
  /** In the order in which they were attached. */
  of(visit: string): Promise<Result<Photograph[]>>;
  /**
   * Stores one that is new or has a new caption. Refused if the visit is not stored, or with it would hold more than a
   * visit may; in both cases nothing is changed.
   */
  put(visit: string, photograph: Photograph): Promise<Result<undefined>>;
  remove(visit: string, photograph: Pick<Photograph, 'step' | 'id'>): Promise<Result<undefined>>;
}

export function photographStore(db: Database, tabs: TabChannel): PhotographStore {
  /** One change of a visit's photographs, of which the other tabs hear. */
  const change = async (
    visit: string,
    work: (pictures: Photographs<'readwrite'>, isVisit: boolean) => Promise<Result<undefined>>,
  ): Promise<Result<undefined>> => {
    try {
      const result = await db.run('readwrite', async (visits, pictures) =>
        work(pictures, (await visits.getKey(visit)) !== undefined),
      );
      if (result.ok) tabs.announce({ id: visit, change: 'photographs' });
      return result;
    } catch (error) {
      return { ok: false, problem: storageProblem(error) };
    }
  };

  return {
    async of(visit) {
      try {
        return succeeded(await db.run('readonly', (_visits, pictures) => photographsOf(pictures, visit)));
      } catch (error) {
        return { ok: false, problem: storageProblem(error) };
      }
    },
    put: (visit, photograph) =>
      change(visit, async (pictures, isVisit) => {
        if (!isVisit) return storageRefused('not-found');
        const others = (await photographsOf(pictures, visit)).filter(({ id }) => id !== photograph.id);
        const problem = overBudget([...others, photograph]);
        if (problem !== undefined) return { ok: false, problem };
        await pictures.put({ ...photograph, visit });
        return succeeded(undefined);
      }),
    remove: (visit, { step, id }) =>
      change(visit, async (pictures) => {
        await pictures.delete([visit, step, id]);
        return succeeded(undefined);
      }),
  };
}

export async function photographsOf(
  pictures: Photographs<'readonly'> | Photographs<'readwrite'>,
  visit: string,
): Promise<Photograph[]> {
  const rows = await pictures.getAll(ofVisit(visit));
  return inOrder(rows.map(({ visit: _visit, ...photograph }) => photograph));
}

/** The keys of all photographs of a visit: an array sorts after every text. */
export function ofVisit(visit: string): IDBKeyRange {
  return IDBKeyRange.bound([visit], [visit, []] as unknown as PhotographKey);
}
