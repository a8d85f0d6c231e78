import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { GET } from '../../../../src/pages/schema/visit-1.json.ts';
import { exportVisit } from '../../../../src/visit/record/export-visit.ts';
import { visitJsonSchema } from '../../../../src/visit/record/json-schema.ts';
import { readVisit } from '../../../../src/visit/record/read-visit.ts';
import { arbitraryVisit } from './support/arbitrary-visit.ts';
import { typicalVisit } from './support/typical-visit.ts';

// Ajv judges independently of the library that wrote the schema; `format` is left to the pattern beside it.
const fits = new Ajv2020({ strict: true, validateFormats: false }).compile(visitJsonSchema());

test('an exported visit is valid by the published schema', () => {
  expect(fits(JSON.parse(exportVisit(typicalVisit()).text))).toBe(true);
});

test('every record that can be read is valid too', () => {
  fc.assert(
    fc.property(arbitraryVisit, (visit) => {
      expect(readVisit(visit).ok).toBe(true);
      expect(fits(JSON.parse(exportVisit(visit).text))).toBe(true);
    }),
    { numRuns: 300 },
  );
});

describe('the published schema refuses what the site refuses', () => {
  const visit = typicalVisit();
  test.each([
    ['an unknown entry', { ...visit, extra: 1 }],
    ['another format', { ...visit, format: 'other' }],
    ['another version', { ...visit, version: 3 }],
    ['an unknown step', { ...visit, steps: { swap: visit.steps.bridge } }],
    ['a reading that is no text', { ...visit, steps: { bridge: { ...visit.steps.bridge, form: { plusU: 1 } } } }],
    ['a time without offset', { ...visit, createdAt: '2026-03-03T05:58:12' }],
    ['an id with a slash', { ...visit, id: 'a/b/c/d/e' }],
    ['a text that is too long', { ...visit, machine: 'x'.repeat(limitValue('record-text') + 1) }],
  ])('%s', (_what, data) => {
    expect(readVisit(data).ok).toBe(false);
    expect(fits(data)).toBe(false);
  });
});

test('the page gives this schema as JSON', async () => {
  const response = await GET({} as Parameters<typeof GET>[0]);
  expect(await response.json()).toEqual(JSON.parse(JSON.stringify(visitJsonSchema())));
});
