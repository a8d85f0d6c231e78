import { describe, expect, test } from 'vitest';
import { answerStep, changeDetails, newVisit } from '../../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import { must } from '../record/support/must.ts';
import { freshName, putRaw, recordingChannel, tab } from '../record/support/store.ts';
import { at, typicalVisit } from '../record/support/typical-visit.ts';

const lift = newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' });
const bridge = newVisit('visit-bridge', at(5), { machine: 'Line 2', axis: 'Bridge' });

describe('saving and loading', () => {
  test('a visit is loaded completely with the next revision, in another tab and after a reload', async () => {
    const name = freshName();
    const visit = { ...typicalVisit(), revision: 0 };
    const store = tab(name);
    const saved = must(await store.save(visit));
    expect(saved).toEqual({ ...visit, revision: 1 });
    expect(must(await tab(name).load(visit.id))).toEqual(saved);
    store.close();
    expect(must(await store.load(visit.id))).toEqual(saved);
  });

  test('save after save, each from the result of the last', async () => {
    const store = tab(freshName());
    let visit = must(await store.save(lift));
    visit = must(await store.save(answerStep(visit, 'reconnect', { form: { done: 'yes' } }, at(1))));
    visit = must(await store.save(changeDetails(visit, { notes: 'Second thought' }, at(2))));
    expect(visit.revision).toBe(3);
    expect(must(await store.load(lift.id))).toMatchObject({ notes: 'Second thought', seq: 1 });
  });

  test('an unknown id is not found', async () => {
    expect(await tab(freshName()).load('visit-none')).toMatchObject({ ok: false, problem: { kind: 'not-found' } });
  });

  test('an entry that could not be read back is not stored, and the problem names it', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const tooLong = changeDetails(saved, { machine: 'x'.repeat(100_000) }, at(1));
    const result = await store.save(tooLong);
    expect(result).toMatchObject({ ok: false, mine: tooLong, problem: { kind: 'not-savable', where: 'machine' } });
    expect(must(await store.load(lift.id))).toEqual(saved);
  });

  test('a visit larger than its file may be is not stored', async () => {
    const long = '€'.repeat(10_000);
    const { steps } = typicalVisit();
    const snapshot = { verdict: 'go' as const, sentences: Array(90).fill(long), limits: [] };
    const huge = { ...lift, steps: { bridge: { ...steps.bridge, snapshot } } } as VisitRecord;
    expect(await tab(freshName()).save(huge)).toMatchObject({ ok: false, problem: { kind: 'visit-too-large' } });
  });
});

describe('the list', () => {
  test('is empty at first', async () => {
    expect(must(await tab(freshName()).list())).toEqual({ visits: [], unreadable: [] });
  });

  test('has the last saved visit first, even if the clock was set back', async () => {
    const store = tab(freshName());
    must(await store.save(bridge));
    must(await store.save({ ...lift, createdAt: at(-500_000), changedAt: at(-500_000) }));
    must(await store.save({ ...typicalVisit(), revision: 0 }));
    const { visits } = must(await store.list());
    expect(visits.map(({ axis }) => axis)).toEqual(['Lift (vertical, with brake)', 'Lift', 'Bridge']);
    expect(visits[0]).toMatchObject({ steps: 11, decision: 'replace', createdAt: at(0) });
    expect(visits[1]).toMatchObject({ steps: 0, decision: undefined });
    const again = must(await store.load(bridge.id));
    must(await store.save(changeDetails(again, { notes: '!' }, at(-900_000))));
    expect(must(await store.list()).visits[0]?.axis).toBe('Bridge');
  });

  test('names unreadable visits beside readable ones', async () => {
    const name = freshName();
    const store = tab(name);
    must(await store.save(lift));
    await putRaw(name, 'visit-newer', { ...lift, id: 'visit-newer', version: 3 });
    await putRaw(name, 'visit-broken', { ...lift, id: 'visit-broken', steps: 'gone' });
    const { visits, unreadable } = must(await store.list());
    expect(visits.map(({ id }) => id)).toEqual([lift.id]);
    expect(unreadable.map(({ id, problem }) => [id, problem.kind]).sort()).toEqual([
      ['visit-broken', 'does-not-fit'],
      ['visit-newer', 'newer'],
    ]);
  });
});

describe('a stored visit that can’t be read', () => {
  const newer = { ...lift, version: 3, extra: 'from a newer edition' };

  test('is never overwritten, neither by a save nor by an import', async () => {
    const name = freshName();
    await putRaw(name, lift.id, newer);
    const store = tab(name);
    expect(await store.save(lift)).toMatchObject({ ok: false, problem: { kind: 'newer' }, mine: lift });
    expect(await store.add(lift, 'replace')).toMatchObject({ ok: false, problem: { kind: 'already-here' } });
    expect(await store.restore(lift)).toMatchObject({ ok: false, problem: { kind: 'conflict' } });
    expect(JSON.parse(must(await store.loadRaw(lift.id)))).toEqual(newer);
  });

  test('can be deleted when the person wants it', async () => {
    const name = freshName();
    await putRaw(name, lift.id, newer);
    const store = tab(name);
    expect(must(await store.remove(lift.id)).visit).toBeUndefined();
    expect(must(await store.list())).toEqual({ visits: [], unreadable: [] });
  });

  test('has a raw text only while it is stored', async () => {
    expect(await tab(freshName()).loadRaw('visit-none')).toMatchObject({ problem: { kind: 'not-found' } });
  });
});

describe('two tabs on one visit', () => {
  async function twoTabs() {
    const name = freshName();
    const [first, second] = [tab(name), tab(name)];
    const saved = must(await first.save(lift));
    const mine = changeDetails(must(await second.load(lift.id)), { notes: 'second tab' }, at(2));
    const theirs = must(await first.save(changeDetails(saved, { notes: 'first tab' }, at(1))));
    return { first, second, mine, theirs };
  }

  test('the later save gets a conflict, with both versions', async () => {
    const { second, mine, theirs } = await twoTabs();
    const result = await second.save(mine);
    expect(result).toEqual({ ok: false, problem: expect.objectContaining({ kind: 'conflict' }), mine, stored: theirs });
    expect(must(await second.load(lift.id))).toEqual(theirs);
  });

  test('both can be kept', async () => {
    const { second, mine, theirs } = await twoTabs();
    const kept = must(await second.add(mine, 'keep-both'));
    // The copy does not know what was done since in the other, so no proof of safety holds in it.
    expect(kept).toEqual({ ...mine, id: kept.id, revision: 1, stretch: mine.stretch + 1 });
    expect(kept.id).not.toBe(mine.id);
    expect(must(await second.load(lift.id))).toEqual(theirs);
    expect(must(await second.list()).visits).toHaveLength(2);
  });

  test('or the later one replaces the other, whose next save gets a conflict', async () => {
    const { first, second, mine, theirs } = await twoTabs();
    const replaced = must(await second.add(mine, 'replace'));
    expect(replaced).toEqual({ ...mine, revision: theirs.revision + 1 });
    expect(await first.save(theirs)).toMatchObject({ problem: { kind: 'conflict' }, stored: { notes: 'second tab' } });
  });

  test('a visit that was deleted in one tab is not lost in the other', async () => {
    const { first, second, mine } = await twoTabs();
    must(await first.remove(lift.id));
    expect(await second.save(mine)).toMatchObject({ problem: { kind: 'deleted-elsewhere' }, mine });
    expect(must(await second.restore(mine))).toEqual(mine);
    expect(must(await second.load(lift.id))).toEqual(mine);
  });

  test('if both save at the same moment, one is saved and the other gets a conflict', async () => {
    const name = freshName();
    const saved = must(await tab(name).save(lift));
    const results = await Promise.all(
      ['one', 'two'].map((notes) => tab(name).save(changeDetails(saved, { notes }, at(1)))),
    );
    expect(results.map(({ ok }) => ok).sort()).toEqual([false, true]);
  });
});

describe('deleting and undoing', () => {
  test('returns the visit, and it can be restored as it was', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const removed = must(await store.remove(lift.id));
    expect(removed).toEqual({ visit: saved, photographs: [] });
    expect(must(await store.list()).visits).toEqual([]);
    expect(must(await store.restore(removed.visit as VisitRecord))).toEqual(saved);
    expect(must(await store.save(saved)).revision).toBe(2);
  });

  test('undo never overwrites a visit that was stored again meanwhile', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    must(await store.remove(lift.id));
    const other = must(await store.save({ ...lift, notes: 'begun again' }));
    expect(await store.restore(saved)).toMatchObject({ problem: { kind: 'conflict' }, stored: other });
  });

  test('an unknown visit can’t be deleted', async () => {
    expect(await tab(freshName()).remove('visit-none')).toMatchObject({ ok: false, problem: { kind: 'not-found' } });
  });
});

describe('importing a visit from a file or a link', () => {
  test('that is new here: stored with its revision', async () => {
    const store = tab(freshName());
    expect(must(await store.add({ ...lift, revision: 12 })).revision).toBe(12);
    expect(must(await store.add(bridge)).revision).toBe(1);
  });

  test('that is already stored: nothing changes before a choice, and both versions are returned', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const foreign = { ...lift, revision: 30, notes: 'from the file' };
    expect(await store.add(foreign)).toEqual({
      ok: false,
      problem: expect.objectContaining({ kind: 'already-here' }),
      mine: foreign,
      stored: saved,
    });
    expect(must(await store.load(lift.id))).toEqual(saved);
    expect(must(await store.add(foreign, 'replace'))).toEqual({ ...foreign, revision: 31 });
  });

  test('that does not fit: nothing is stored', async () => {
    const store = tab(freshName());
    const bad = { ...lift, machine: 7 } as unknown as VisitRecord;
    expect(await store.add(bad)).toMatchObject({ ok: false, problem: { kind: 'not-savable' } });
    expect(must(await store.list())).toEqual({ visits: [], unreadable: [] });
  });
});

describe('what is announced to other tabs', () => {
  test('each change once, and no refused one', async () => {
    const tabs = recordingChannel();
    const store = tab(freshName(), { tabs });
    const saved = must(await store.save(lift));
    await store.save(lift);
    must(await store.save(saved));
    must(await store.remove(lift.id));
    await store.remove(lift.id);
    must(await store.restore(saved));
    expect(tabs.announced).toEqual([
      { id: lift.id, change: 'saved' },
      { id: lift.id, change: 'saved' },
      { id: lift.id, change: 'removed' },
      { id: lift.id, change: 'saved' },
    ]);
  });

  test('the other tab receives it, this one does not', async () => {
    const name = freshName();
    const [first, second] = [tab(name), tab(name)];
    const own: unknown[] = [];
    first.listen((change) => own.push(change));
    const heard = new Promise((resolve) => second.listen(resolve));
    must(await first.save(lift));
    expect(await heard).toEqual({ id: lift.id, change: 'saved' });
    expect(own).toEqual([]);
  });
});

describe('keeping the storage', () => {
  test('is asked for when a visit is first saved, not at each save', async () => {
    let asked = 0;
    const store = tab(freshName(), { persist: async () => ++asked });
    const saved = must(await store.save(lift));
    must(await store.save(saved));
    expect(asked).toBe(1);
  });
});
