import { expect, test } from 'vitest';
import { answerStep, newVisit } from '../../../../src/visit/record/change-visit.ts';
import { database } from '../../../../src/visit/storage/database.ts';
import { unfinishedVisit } from '../../../../src/visit/storage/unfinished-visit.ts';
import { must } from '../record/support/must.ts';
import { freshName, putRaw, tab } from '../record/support/store.ts';
import { at, typicalVisit } from '../record/support/typical-visit.ts';

// The machine of the invented Marrow Bay Glassworks.

const lift = newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' });
const baseline = newVisit('visit-bridge', at(5), { machine: 'Line 2', axis: 'Bridge', purpose: 'baseline' });
const found = (name: string) => unfinishedVisit(database(name));

test('the visit without a decision that was saved last', async () => {
  const name = freshName();
  expect(await found(name)).toBeUndefined();
  must(await tab(name).save(lift));
  must(await tab(name).save({ ...typicalVisit(), revision: 0 }));
  expect(typicalVisit().decision).toBeDefined();
  expect(await found(name)).toMatchObject({ id: 'visit-lift', title: 'Line 2, Lift' });
});

test('a baseline counts until its axis is connected again: it never has a decision', async () => {
  const name = freshName();
  must(await tab(name).save(lift));
  const saved = must(await tab(name).save(baseline));
  expect(await found(name)).toMatchObject({ id: 'visit-bridge' });
  must(await tab(name).save(answerStep(saved, 'reconnect', { form: { done: 'yes' } }, at(6))));
  expect(await found(name)).toMatchObject({ id: 'visit-lift' });
});

test('a damaged record is passed over', async () => {
  const name = freshName();
  must(await tab(name).save(lift));
  await putRaw(name, 'visit-broken', { machine: 7, steps: 'none' });
  expect(await found(name)).toMatchObject({ id: 'visit-lift' });
});
