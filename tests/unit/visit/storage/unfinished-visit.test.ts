import { afterEach, expect, test, vi } from 'vitest';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { database } from '../../../../src/visit/storage/database.ts';
import { draftKey } from '../../../../src/visit/storage/local-draft-text.ts';
import { unfinishedVisit } from '../../../../src/visit/storage/unfinished-visit.ts';
import { must } from '../record/support/must.ts';
import { freshName, tab } from '../record/support/store.ts';
import { at } from '../record/support/typical-visit.ts';

const id = 'visit-lift';
const draftOf = (count: number, values: Record<string, string>) => ({
  count,
  steps: {},
  details: { values, at: at(1) },
});

async function titleOf(saved: Record<string, string>, draft?: ReturnType<typeof draftOf>): Promise<string | undefined> {
  const name = freshName();
  const store = tab(name);
  must(await store.save(newVisit(id, at(0), saved)));
  if (draft) await store.noteDraft(id, draft);
  return (await unfinishedVisit(database(name)))?.title;
}
const kept = (text: string | null) =>
  vi.stubGlobal('localStorage', { getItem: (key: string) => (key === draftKey(id) ? text : null) });

afterEach(() => vi.unstubAllGlobals());

test('a name that is typed and not saved yet names the visit, from either copy, the newer one first', async () => {
  const machine = 'Marrow Bay line 2 (invented)';
  kept(null);
  expect(await titleOf({})).toBe('Visit without a name');
  expect(await titleOf({}, draftOf(3, { machine }))).toBe(machine);
  kept(JSON.stringify(draftOf(4, { machine, axis: 'Lift' })));
  expect(await titleOf({})).toBe(`${machine}, Lift`);
  expect(await titleOf({}, draftOf(9, { machine: 'Marrow Bay line 3' }))).toBe('Marrow Bay line 3');
  expect(await titleOf({ machine, axis: 'Bridge' }, draftOf(9, { axis: 'Carriage' }))).toBe(`${machine}, Carriage`);
});

test('a draft that can not be read takes no name away', async () => {
  kept('{');
  expect(await titleOf({ machine: 'Marrow Bay line 2 (invented)' })).toBe('Marrow Bay line 2 (invented)');
});
