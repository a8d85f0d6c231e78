import { expect, onTestFinished, test } from 'vitest';
import { picturesOf } from '../../../src/shop/merge/content.ts';
import { thisDevice } from '../../../src/shop/storage/this-device.ts';
import { newVisit } from '../../../src/visit/record/change-visit.ts';
import { database } from '../../../src/visit/storage/database.ts';
import { photograph } from '../../support/photographs.ts';
import { freshName, tab } from '../visit/record/support/store.ts';

// Common practice of browsers' storage, no source.

test('a caption that is typed while an exchange runs is not lost with the version that the exchange brings', async () => {
  const name = freshName();
  const [visits, store] = [database(name), tab(name)];
  onTestFinished(() => visits.close());
  const device = thisDevice({
    ...{ visits, store },
    register: { load: () => Promise.reject(new Error()), unite: () => Promise.reject(new Error()) },
    shop: { device: async () => 'tablet-a', known: async () => new Map(), remember: async () => undefined },
  });
  const terminal = photograph('terminal-burnt');
  await store.save(newVisit('marrow-bay-1', '2026-03-03T06:00:00+01:00', { machine: 'Marrow Bay (invented)' }));
  await store.photographs.put('marrow-bay-1', terminal);
  const before = (await device.read()).visits.get('marrow-bay-1');
  if (before === undefined) throw new Error('the visit is not stored');

  await store.photographs.put('marrow-bay-1', { ...terminal, caption: 'Core W is black' });
  const { photographs: _none, ...theirs } = before;
  expect(await device.store({ ...theirs, notes: 'from the other tablet' }, before)).toBe(false);
  expect(await device.remove(before)).toBe(false);
  const now = (await device.read()).visits.get('marrow-bay-1');
  expect(now && picturesOf(now).map(({ caption }) => caption)).toEqual(['Core W is black']);

  const again = (await device.read()).visits.get('marrow-bay-1');
  expect(await device.store({ ...theirs, notes: 'from the other tablet' }, again)).toBe(true);
});
