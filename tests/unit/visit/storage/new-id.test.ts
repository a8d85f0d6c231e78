import { expect, test, vi } from 'vitest';
import { visitId } from '../../../../src/kernel/link/schema-parts.ts';
import { newId } from '../../../../src/visit/storage/new-id.ts';

test('an id is valid for a visit, and different each time', () => {
  const ids = Array.from({ length: 200 }, newId);
  expect(ids.filter((id) => !visitId.safeParse(id).success)).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids[0]).toMatch(/^[0-9a-f]{32}$/);
});

test('it works in a page served by plain http', () => {
  vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
  expect(newId()).toHaveLength(32);
  vi.unstubAllGlobals();
});
