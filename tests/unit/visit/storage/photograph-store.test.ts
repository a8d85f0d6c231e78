import { openDB } from 'idb';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { changeDetails, newVisit } from '../../../../src/visit/record/change-visit.ts';
import { readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { plainJpegOf } from '../../../support/jpegs.ts';
import { photograph } from '../../../support/photographs.ts';
import { must } from '../record/support/must.ts';
import { freshName, recordingChannel, tab } from '../record/support/store.ts';
import { at } from '../record/support/typical-visit.ts';

const lift = newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' });
const bridge = newVisit('visit-bridge', at(5), { machine: 'Line 2', axis: 'Bridge' });
const gland = photograph('gland', { caption: 'Core W' });
const plate = photograph('plate', { step: 'bridge', at: at(7), changedAt: at(7) });

afterEach(() => {
  vi.restoreAllMocks();
});

/** A store with the visit `lift`, and the two photographs. */
async function filled(name = freshName()) {
  const store = tab(name);
  const saved = must(await store.save(lift));
  must(await store.photographs.put(lift.id, plate));
  must(await store.photographs.put(lift.id, gland));
  return { name, store, saved };
}

test('photographs are there in another tab and after a reload, in the order in which they were attached', async () => {
  const { name, store } = await filled();
  expect(must(await tab(name).photographs.of(lift.id))).toEqual([gland, plate]);
  store.close();
  expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
  expect(must(await store.photographs.of('visit-none'))).toEqual([]);
});

test('a caption is changed; the picture is not stored twice', async () => {
  const { store } = await filled();
  const named = { ...gland, caption: 'Core W, chafed', changedAt: at(9) };
  must(await store.photographs.put(lift.id, named));
  expect(must(await store.photographs.of(lift.id))).toEqual([named, plate]);
});

test('one is removed, and the others stay', async () => {
  const { store } = await filled();
  must(await store.photographs.remove(lift.id, gland));
  expect(must(await store.photographs.of(lift.id))).toEqual([plate]);
});

test('saving the visit does not write its photographs', async () => {
  const { store, saved } = await filled();
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  must(await store.save(changeDetails(saved, { notes: 'x' }, at(3))));
  expect(put.mock.contexts.map((store) => (store as IDBObjectStore).name)).toEqual(['visits']);
});

test('a visit that is not stored gets none', async () => {
  const store = tab(freshName());
  expect(await store.photographs.put(lift.id, gland)).toMatchObject({ ok: false, problem: { kind: 'not-found' } });
});

test('other tabs hear of each change, and of no refused one', async () => {
  const tabs = recordingChannel();
  const store = tab(freshName(), { tabs });
  await store.photographs.put(lift.id, gland);
  must(await store.save(lift));
  must(await store.photographs.put(lift.id, gland));
  must(await store.photographs.remove(lift.id, gland));
  expect(tabs.announced.map(({ change }) => change)).toEqual(['saved', 'photographs', 'photographs']);
});

describe('the budget of a visit holds in the storage', () => {
  test('by bytes, of all its steps, counting a changed caption once', async () => {
    const { store } = await filled();
    const large = photograph('large', {
      jpeg: new Uint8Array(limitValue('photographs-visit') - 2 * gland.jpeg.length),
    });
    must(await store.photographs.put(lift.id, large));
    must(await store.photographs.put(lift.id, { ...large, caption: 'x' }));
    expect(await store.photographs.put(lift.id, photograph('more'))).toMatchObject({
      ok: false,
      problem: { kind: 'no-room' },
    });
    expect(must(await store.photographs.of(lift.id))).toHaveLength(3);
    must(await store.save(bridge));
    must(await store.photographs.put(bridge.id, photograph('more')));
  });
});

describe('a full device', () => {
  test('the photograph is refused, and everything that was stored stays', async () => {
    const { store } = await filled();
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.photographs.put(lift.id, photograph('late'))).toMatchObject({
      ok: false,
      problem: { kind: 'full' },
    });
    put.mockRestore();
    expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
  });
});

describe('with the visit', () => {
  test('deleted together, and put back together', async () => {
    const { store, saved } = await filled();
    const removed = must(await store.remove(lift.id));
    expect(removed).toEqual({ visit: saved, photographs: [gland, plate] });
    expect(must(await store.photographs.of(lift.id))).toEqual([]);
    must(await store.restore(saved, removed.photographs));
    expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
  });

  test('those of another visit stay when one is deleted', async () => {
    const { store } = await filled();
    const longer = { ...bridge, id: `${lift.id}-2` };
    must(await store.save(longer));
    must(await store.photographs.put(longer.id, gland));
    must(await store.remove(lift.id));
    expect(must(await store.photographs.of(longer.id))).toEqual([gland]);
  });

  test('imported with the file', async () => {
    const store = tab(freshName());
    const added = must(await store.add(lift, undefined, [plate, gland]));
    expect(must(await store.photographs.of(added.id))).toEqual([gland, plate]);
  });

  test('replaced by a file or a link: no photograph of either is lost', async () => {
    const { store } = await filled();
    const fromFile = [
      { ...gland, caption: 'Core W, from the file', changedAt: at(8) },
      photograph('new', { at: at(9) }),
    ];
    expect(await store.add(lift, undefined, fromFile)).toMatchObject({ problem: { kind: 'already-here' } });
    expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
    must(await store.add(lift, 'replace', fromFile));
    expect(must(await store.photographs.of(lift.id)).map(({ caption }) => caption)).toEqual([
      'Core W, from the file',
      '',
      '',
    ]);
    must(await store.add(lift, 'replace'));
    expect(must(await store.photographs.of(lift.id))).toHaveLength(3);
  });

  test('replaced by a file that has more than fits beside those that are here: nothing is changed', async () => {
    const { store, saved } = await filled();
    const full = photograph('full', { jpeg: new Uint8Array(limitValue('photographs-visit')) });
    expect(await store.add({ ...lift, notes: 'x' }, 'replace', [full])).toMatchObject({ problem: { kind: 'no-room' } });
    expect(must(await store.load(lift.id))).toEqual(saved);
    expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
  });

  test('both kept: the copy has its own, with the same ids', async () => {
    const { store } = await filled();
    const copy = must(await store.add(lift, 'keep-both', [gland]));
    expect(must(await store.photographs.of(copy.id))).toEqual([gland]);
    must(await store.photographs.remove(copy.id, gland));
    expect(must(await store.photographs.of(lift.id))).toEqual([gland, plate]);
  });

  test('in the file of a visit that can’t be read here', async () => {
    const { store } = await filled();
    const text = must(await store.loadRaw(lift.id));
    const read = readVisitText(text);
    expect(read.ok && read.value.photographs).toEqual([gland, plate]);
  });
});

test('a database of the edition without photographs keeps its visits', async () => {
  const name = freshName();
  const older = await openDB(name, 1, {
    upgrade(db) {
      db.createObjectStore('visits', { keyPath: 'id' }).createIndex('order', 'order');
    },
  });
  await older.put('visits', { id: lift.id, order: 1, record: { ...lift, revision: 1 } });
  older.close();
  const store = tab(name);
  expect(must(await store.load(lift.id))).toEqual({ ...lift, revision: 1 });
  must(await store.photographs.put(lift.id, { ...gland, jpeg: plainJpegOf(5000) }));
  expect(must(await store.photographs.of(lift.id))[0]?.jpeg.length).toBeGreaterThan(5000);
});
