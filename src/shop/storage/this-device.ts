import type { Problem } from '../../kernel/link/problem.ts';
import { readVisit } from '../../visit/record/read-visit.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import type { Database } from '../../visit/storage/database.ts';
import type { VisitStore } from '../../visit/storage/visit-store.ts';
import type { Device } from '../merge/sync.ts';
import type { ShopDatabase } from './shop-database.ts';

/** The storage of this device refused: the exchange ends, and nothing of it is half done. */
export class DeviceRefused extends Error {
  override name = 'DeviceRefused';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

interface Parts {
  visits: Database;
  store: Pick<VisitStore, 'add' | 'save' | 'load' | 'remove'>;
  shop: Pick<ShopDatabase, 'device' | 'known' | 'remember'>;
}

/** The visits in this browser, for the exchange. Each change is checked by revision, as between two tabs. */
export function thisDevice({ visits, store, shop }: Parts): Device {
  return {
    async read() {
      const rows = await visits.run('readonly', (all) => all.getAll());
      const read = rows.map(({ id, record }) => ({ id, result: readVisit(record) }));
      return {
        device: await shop.device(),
        known: await shop.known(),
        visits: new Map(read.flatMap(({ id, result }) => (result.ok ? [[id, result.value]] : []))),
        unreadable: new Set(read.flatMap(({ id, result }) => (result.ok ? [] : [id]))),
      };
    },
    async store(visit, before) {
      const result =
        before === undefined ? await store.add(visit) : await store.save({ ...visit, revision: before.revision });
      if (result.ok) return true;
      if (changedMeanwhile(result.problem)) return false;
      throw new DeviceRefused(result.problem);
    },
    async remove(before) {
      const now = await store.load(before.id);
      if (!now.ok || now.value.revision !== before.revision) return false;
      const removed = await store.remove(before.id);
      if (removed.ok) return true;
      throw new DeviceRefused(removed.problem);
    },
    remember: (known) => shop.remember(known),
  };
}

const changedMeanwhile = ({ kind }: Problem) =>
  kind === 'conflict' || kind === 'deleted-elsewhere' || kind === 'already-here' || kind === 'not-found';

/** In the order of a list: by machine, axis, then the time at which they were begun. */
export function inListOrder(visits: Iterable<VisitRecord>): VisitRecord[] {
  const key = ({ machine, axis, createdAt }: VisitRecord) => `${machine}\n${axis}\n${createdAt}`;
  return [...visits].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}
