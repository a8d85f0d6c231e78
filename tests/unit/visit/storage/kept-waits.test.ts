import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { keepWaits, keptWaits } from '../../../../src/visit/storage/kept-waits.ts';
import { must } from '../record/support/must.ts';
import { freshName, tab } from '../record/support/store.ts';
import { at } from '../record/support/typical-visit.ts';

const wait = { id: 'label', name: 'The label', after: 'Measure.', minutes: 5, startedAt: 1_772_500_000_000 };
let stored: Map<string, string>;

beforeEach(() => {
  stored = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => stored.get(key) ?? null,
    setItem: (key: string, value: string) => stored.set(key, value),
    removeItem: (key: string) => stored.delete(key),
  });
});

afterEach(() => vi.unstubAllGlobals());

test('the waits of a visit go with it', async () => {
  const store = tab(freshName());
  must(await store.save(newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' })));
  keepWaits('visit-lift', [wait]);
  keepWaits('visit-bridge', [wait]);
  must(await store.remove('visit-lift'));
  expect(keptWaits('visit-lift')).toEqual([]);
  expect(keptWaits('visit-bridge')).toEqual([wait]);
});

test.each(['no JSON', '{}', '[{"id":"label"}]', '[{"id":"label","name":"x","after":"y","minutes":"5","startedAt":1}]'])(
  'what can’t be read counts as no wait: %s',
  (text) => {
    stored.set('fieldbook-waits-visit-lift', text);
    expect(keptWaits('visit-lift')).toEqual([]);
  },
);
