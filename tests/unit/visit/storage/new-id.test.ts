import { expect, test, vi } from 'vitest';
import { visitId } from '../../../../src/kernel/link/schema-parts.ts';
import { newId, newPhotographId } from '../../../../src/visit/storage/new-id.ts';

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

test('ids of photographs differ and keep the order of time', () => {
  const times = [0, 1, 999, 1_772_517_600_000, 1_772_517_600_001, 2 ** 44];
  const ids = times.map((time) => newPhotographId(time));
  expect([...ids].sort()).toEqual(ids);
  expect(ids.every((id) => /^[0-9a-f]{32}$/.test(id))).toBe(true);
  expect(newPhotographId(5)).not.toBe(newPhotographId(5));
});
