import { deleteDB, openDB } from 'idb';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { newAxis, textIn, withValues } from '../../../../src/axes/record/change-axis.ts';
import { axisDatabase } from '../../../../src/axes/storage/axis-database.ts';
import { type AxisStore, axisStore } from '../../../../src/axes/storage/axis-store.ts';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { database } from '../../../../src/visit/storage/database.ts';
import { freshName, tab as visitTab } from '../../visit/record/support/store.ts';

// Common practice of browsers' storage, no source.

const now = '2026-03-02T08:00:00+01:00';
const lift = { machine: 'Gantry 2', axis: 'Lift' };

function tab(name: string): AxisStore {
  const store = axisStore({
    axes: axisDatabase(`${name}-axes`),
    visits: database(name),
    channel: `${name}-axes`,
    persist: () => Promise.resolve(),
  });
  onTestFinished(() => store.close());
  return store;
}

async function must<T>(result: Promise<{ ok: true; value: T } | { ok: false }>): Promise<T> {
  const done = await result;
  if (!done.ok) throw new Error('refused');
  return done.value;
}

const headsOf = async (store: AxisStore) => (await must(store.load())).heads.map(({ axis }) => axis).sort();

describe('the visits in the register', () => {
  test('are read when they are saved, changed and deleted, whatever the order', async () => {
    const name = freshName();
    const [visits, store] = [visitTab(name), tab(name)];
    expect(await headsOf(store)).toEqual([]);
    const first = await must(visits.save(newVisit('visit-one', now, lift)));
    const second = await must(visits.save(newVisit('visit-two', now, { ...lift, axis: 'Bridge' })));
    expect(await headsOf(store)).toEqual(['Bridge', 'Lift']);
    await must(visits.save({ ...first, axis: 'Hoist' }));
    expect(await headsOf(store)).toEqual(['Bridge', 'Hoist']);
    // The last saved one goes, and the next save takes its place in the order.
    await visits.remove(first.id);
    await must(visits.save({ ...second, axis: 'Carriage' }));
    expect(await headsOf(store)).toEqual(['Carriage']);
    await visits.remove(second.id);
    await must(visits.save(newVisit('visit-three', now, lift)));
    expect(await headsOf(store)).toEqual(['Lift']);
  });

  test('are read after one was deleted and imported again, whatever was saved in between', async () => {
    const name = freshName();
    const [visits, store] = [visitTab(name), tab(name)];
    const first = await must(visits.save(newVisit('visit-one', now, lift)));
    const second = newVisit('visit-two', now, { ...lift, axis: 'Bridge' });
    await must(visits.save(second));
    expect(await headsOf(store)).toEqual(['Bridge', 'Lift']);
    await visits.remove(second.id);
    await must(visits.save({ ...first, axis: 'Hoist' }));
    await must(visits.add({ ...second, axis: 'Carriage' }));
    expect(await headsOf(store)).toEqual(['Carriage', 'Hoist']);
    await visits.remove(second.id);
    await must(visits.add({ ...second, axis: 'Bridge' }));
    expect(await headsOf(store)).toEqual(['Bridge', 'Hoist']);
  });

  test('are read after the last one was deleted and imported again, whichever number the storage begins at', async () => {
    for (const beginning of [0.2, 0.7]) {
      const name = freshName();
      const [visits, store] = [visitTab(name), tab(name)];
      const chance = vi.spyOn(Math, 'random').mockReturnValueOnce(0.5).mockReturnValueOnce(beginning);
      const only = newVisit('visit-one', now, lift);
      await must(visits.save(only));
      expect(await headsOf(store)).toEqual(['Lift']);
      await visits.remove(only.id);
      await must(visits.add({ ...only, axis: 'Hoist' }));
      expect(await headsOf(store)).toEqual(['Hoist']);
      chance.mockRestore();
    }
  });

  test('come back by themselves if the register’s database is lost', async () => {
    const name = freshName();
    const visits = visitTab(name);
    await must(visits.save(newVisit('visit-one', now, lift)));
    expect(await headsOf(tab(name))).toEqual(['Lift']);
    const store = tab(name);
    store.close();
    const other = axisStore({ axes: axisDatabase(`${name}-new`), visits: database(name), channel: `${name}-new` });
    onTestFinished(() => other.close());
    expect(await headsOf(other)).toEqual(['Lift']);
    void deleteDB(`${name}-axes`);
  });
});

describe('a record', () => {
  test('saved by two tabs from the same beginning has what both typed', async () => {
    const name = freshName();
    const [one, other] = [tab(name), tab(name)];
    const begin = await must(one.save(newAxis(lift, now)));
    await must(one.save(withValues(begin, { motor: 'SM-40' }, now)));
    const united = await must(other.save(withValues(begin, { label: 'R12' }, now)));
    expect([textIn(united, 'motor'), textIn(united, 'label'), united.revision]).toEqual(['SM-40', 'R12', 3]);
    expect((await must(one.load())).records).toEqual([united]);
  });

  test('tells the other tabs', async () => {
    const name = freshName();
    const [one, other] = [tab(name), tab(name)];
    const heard = vi.fn();
    other.listen(heard);
    await must(one.save(newAxis(lift, now)));
    await vi.waitFor(() => expect(heard).toHaveBeenCalled());
  });

  test('of a newer edition is not overwritten', async () => {
    const name = freshName();
    const db = axisDatabase(`${name}-axes`);
    const record = { ...newAxis(lift, now), version: 99 };
    await db.run('readwrite', (tx) => tx.objectStore('axes').put({ id: record.id, record }));
    const store = tab(name);
    expect(await store.save(newAxis(lift, now))).toMatchObject({ ok: false });
    expect((await must(store.load())).unreadable).toMatchObject([{ id: record.id, problem: { kind: 'newer' } }]);
    expect(await db.run('readonly', (tx) => tx.objectStore('axes').getAll())).toEqual([{ id: record.id, record }]);
    db.close();
  });
});

describe('tabs of different editions', () => {
  test('a newer layout waits for no tab: this one closes, and is then asked to reload', async () => {
    const name = freshName();
    const store = tab(name);
    await must(store.load());
    const newer = await openDB(`${name}-axes`, 2, { upgrade: () => undefined });
    expect(await store.load()).toMatchObject({ ok: false, problem: { kind: 'newer-site' } });
    newer.close();
  });

  test('an edition without a register opens the same visits', async () => {
    const name = freshName();
    await must(tab(name).load());
    const visits = visitTab(name);
    expect((await visits.save(newVisit('visit-one', now, lift))).ok).toBe(true);
  });
});
