import type { AxisStore } from '../../axes/storage/axis-store.ts';
import type { Problem } from '../../kernel/link/problem.ts';
import type { Photograph } from '../../visit/record/photograph.ts';
import { overBudget } from '../../visit/record/photograph-problem.ts';
import { readVisit } from '../../visit/record/read-visit.ts';
import type { Database, Photographs } from '../../visit/storage/database.ts';
import type { VisitStore } from '../../visit/storage/visit-store.ts';
import { type Content, type Picture, picturesChanged, picturesOf, withPictures } from '../merge/content.ts';
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
  store: Pick<VisitStore, 'add' | 'save' | 'load' | 'remove' | 'restore' | 'photographs'>;
  register: Pick<AxisStore, 'load' | 'unite'>;
  shop: Pick<ShopDatabase, 'device' | 'known' | 'remember'>;
}

/** The visits in this browser, for the exchange. Each change is checked by revision, as between two tabs. */
export function thisDevice({ visits, store, register, shop }: Parts): Device {
  /** The photographs with their pictures: from the file, or from the visit here; undefined if one is gone meanwhile. */
  const whole = async (content: Content): Promise<Photograph[] | undefined> => {
    const wanted = picturesOf(content);
    if (wanted.every(({ jpeg }) => jpeg !== undefined)) return wanted as Photograph[];
    const stored = new Map<string, Photograph>();
    for (const id of [content.id, content.secondVersionOf]) {
      const here = id === undefined ? undefined : await store.photographs.of(id);
      for (const one of here?.ok ? here.value : []) stored.set(one.id, one);
    }
    const found = wanted.map(({ jpeg = undefined, ...head }) => {
      const picture = jpeg ?? stored.get(head.id)?.jpeg;
      return picture && { ...head, jpeg: picture };
    });
    return found.every((one) => one !== undefined) ? found : undefined;
  };

  const captionsChanged = async (before: Content): Promise<boolean> => {
    const here = await store.photographs.of(before.id);
    return !here.ok || picturesChanged(picturesOf(before), here.value);
  };

  /** The photographs of a visit that was replaced. True if all are stored. */
  const replacePictures = async (before: Content, pictures: readonly Photograph[]): Promise<boolean> => {
    const { id } = before;
    // One that was attached meanwhile is not among these, and stays.
    for (const one of picturesOf(before)) {
      if (!pictures.some((wanted) => wanted.id === one.id)) await store.photographs.remove(id, one);
    }
    for (const one of pictures) if (!(await store.photographs.put(id, one)).ok) return false;
    return true;
  };

  return {
    async read() {
      const { rows, pictures } = await visits.run('readonly', async (all, photographs) => ({
        rows: await all.getAll(),
        pictures: await headsByVisit(photographs),
      }));
      const read = rows.map(({ id, record }) => ({ id, result: readVisit(record) }));
      return {
        device: await shop.device(),
        known: await shop.known(),
        visits: new Map(
          read.flatMap(({ id, result }) =>
            result.ok ? [[id, withPictures(result.value, pictures.get(id) ?? [])]] : [],
          ),
        ),
        unreadable: new Set(read.flatMap(({ id, result }) => (result.ok ? [] : [id]))),
      };
    },
    async store(content, before) {
      const { photographs: _pictures, ...visit } = content;
      const pictures = await whole(content);
      // What this device has no room for stays in the folder, and comes once there is room.
      if (pictures === undefined || overBudget(pictures) !== undefined) return false;
      // What was typed into a caption meanwhile is in no state yet: it waits for the next exchange.
      if (before !== undefined && (await captionsChanged(before))) return false;
      const result =
        before === undefined
          ? await store.add(visit, undefined, pictures)
          : await store.save({ ...visit, revision: before.revision });
      if (!result.ok) {
        if (changedMeanwhile(result.problem)) return false;
        throw new DeviceRefused(result.problem);
      }
      return before === undefined || replacePictures(before, pictures);
    },
    async pictures(id) {
      const stored = await store.photographs.of(id);
      if (!stored.ok) throw new DeviceRefused(stored.problem);
      return stored.value;
    },
    async remove(before) {
      const now = await store.load(before.id);
      if (!now.ok || now.value.revision !== before.revision) return false;
      const removed = await store.remove(before.id);
      if (!removed.ok) throw new DeviceRefused(removed.problem);
      const { visit, photographs } = removed.value;
      // Every one that was there is known, with its caption.
      if (visit === undefined || !picturesChanged(photographs, picturesOf(before))) return true;
      // A photograph was attached meanwhile, or got another caption.
      await store.restore(visit, photographs);
      return false;
    },
    remember: (known) => shop.remember(known),
    async axes() {
      const loaded = await register.load();
      if (!loaded.ok) throw new DeviceRefused(loaded.problem);
      return loaded.value.records;
    },
    async uniteAxes(axes) {
      if (axes.length === 0) return;
      const united = await register.unite(axes);
      if (!united.ok) throw new DeviceRefused(united.problem);
    },
  };
}

/** What is known of each photograph, by visit, one after the other: all pictures at once would fill the memory. */
async function headsByVisit(photographs: Photographs<'readonly'>): Promise<Map<string, Picture[]>> {
  const heads = new Map<string, Picture[]>();
  for (let cursor = await photographs.openCursor(); cursor !== null; cursor = await cursor.continue()) {
    const { visit, jpeg: _picture, ...head } = cursor.value;
    heads.set(visit, [...(heads.get(visit) ?? []), head]);
  }
  return heads;
}

const changedMeanwhile = ({ kind }: Problem) =>
  kind === 'conflict' || kind === 'deleted-elsewhere' || kind === 'already-here' || kind === 'not-found';

/** In the order of a list: by machine, axis, then the time at which they were begun. */
export function inListOrder(visits: Iterable<Content>): Content[] {
  const key = ({ machine, axis, createdAt }: Content) => `${machine}\n${axis}\n${createdAt}`;
  return [...visits].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}
