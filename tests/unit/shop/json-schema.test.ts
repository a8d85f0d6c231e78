import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { GET } from '../../../src/pages/schema/shop-1.json.ts';
import { shopJsonSchema } from '../../../src/shop/file/json-schema.ts';
import { readShopText, writeShop, writeState } from '../../../src/shop/file/shop-file.ts';
import { driveOnly, visitOf } from '../../support/marrow-bay-visits.ts';

// Ajv judges independently of the library that wrote the schema; `format` is left to the pattern beside it.
const fits = new Ajv2020({ strict: true, validateFormats: false }).compile(shopJsonSchema());
const visit = visitOf(driveOnly);
const now = '2026-03-03T08:00:00+01:00';
const states = [
  { id: visit.id, versions: { 'tablet-number-a': 2 }, visit },
  { id: visit.id, versions: { a2345678: 2, b2345678: 1 }, contentVersions: { a2345678: 2 }, visit },
  { id: 'marrow-bay-9', versions: { 'tablet-number-a': 3, 'tablet-number-b': 1 }, visit: undefined },
];

test('what is written is valid by the published schema, and reads back the same', () => {
  for (const state of states) {
    const text = writeState(state, now);
    expect(fits(JSON.parse(text)), JSON.stringify(fits.errors)).toBe(true);
    expect(readShopText(text)).toEqual({ ok: true, value: { states: [state], axes: [], problems: [] } });
  }
  const text = writeShop(states, [], now);
  expect(fits(JSON.parse(text))).toBe(true);
  expect(readShopText(text)).toEqual({ ok: true, value: { states, axes: [], problems: [] } });
});

describe('what the schema refuses is refused', () => {
  const [first] = states;
  const good = first === undefined ? {} : (JSON.parse(writeState(first, now)) as Record<string, unknown>);
  test.each([
    ['another format', { ...good, format: 'other' }],
    ['another version', { ...good, version: 2 }],
    ['an id with a slash', { ...good, id: 'a/b/c/d/e' }],
    ['a negative number of changes', { ...good, versions: { 'tablet-number-a': -1 } }],
    ['an unknown kind', { ...good, kind: 'motor' }],
    ['a version of its content that is no version', { ...good, contentVersions: { 'tablet-number-a': 'one' } }],
    ['a visit that does not fit', { ...good, visit: { ...visit, machine: 7 } }],
  ])('%s', (_what, data) => {
    expect(fits(data)).toBe(false);
    expect(readShopText(JSON.stringify(data)).ok).toBe(false);
  });
});

test('the page gives this schema as JSON', async () => {
  const response = await GET({} as Parameters<typeof GET>[0]);
  expect(await response.json()).toEqual(JSON.parse(JSON.stringify(shopJsonSchema())));
});
