import { expect, test } from 'vitest';
import { changeDetails, newVisit } from '../../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import { visitSaver } from '../../../../src/visit/storage/visit-saver.ts';
import type { SaveResult } from '../../../../src/visit/storage/visit-store.ts';
import { must } from '../record/support/must.ts';
import { freshName, tab } from '../record/support/store.ts';
import { at } from '../record/support/typical-visit.ts';

const lift = newVisit('visit-lift', at(0), { axis: 'Lift' });
const noted = (notes: string): VisitRecord => changeDetails(lift, { notes }, at(1));

test('changes in quick succession never conflict with each other; the last one is stored', async () => {
  const store = tab(freshName());
  const results: SaveResult[] = [];
  const saver = visitSaver(store, 0, (result) => results.push(result));
  for (const notes of ['a', 'ab', 'abc', 'abcd']) saver.save(noted(notes));
  await saver.idle();
  saver.save(noted('abcde'));
  await saver.idle();
  expect(results.map(({ ok }) => ok)).toEqual([true, true, true]);
  expect(must(await store.load(lift.id))).toMatchObject({ notes: 'abcde', revision: 3 });
});

test('a save that failed is tried again with the next change, on the same revision', async () => {
  const store = tab(freshName());
  const saved = must(await store.save(lift));
  let refuse = true;
  const results: SaveResult[] = [];
  const flaky = {
    save: (visit: VisitRecord): Promise<SaveResult> =>
      refuse ? Promise.resolve({ ok: false, problem: { kind: 'full', message: '' }, mine: visit }) : store.save(visit),
  };
  const saver = visitSaver(flaky, saved.revision, (result) => results.push(result));
  saver.save(noted('lost?'));
  await saver.idle();
  refuse = false;
  saver.save(noted('not lost'));
  await saver.idle();
  expect(results.map(({ ok }) => ok)).toEqual([false, true]);
  expect(must(await store.load(lift.id))).toMatchObject({ notes: 'not lost', revision: 2 });
});

test('a conflict with another tab is reported, and the other version is not overwritten', async () => {
  const name = freshName();
  const store = tab(name);
  const saved = must(await store.save(lift));
  const results: SaveResult[] = [];
  const saver = visitSaver(store, saved.revision, (result) => results.push(result));
  must(await tab(name).save({ ...saved, notes: 'other tab' }));
  saver.save(noted('this tab'));
  await saver.idle();
  expect(results).toMatchObject([
    { ok: false, problem: { kind: 'conflict' }, mine: { notes: 'this tab' }, stored: { notes: 'other tab' } },
  ]);
  expect(must(await store.load(lift.id)).notes).toBe('other tab');
});
