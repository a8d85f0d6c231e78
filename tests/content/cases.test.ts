import { describe, expect, test } from 'vitest';
import { visitCaseSchema } from '../../src/schemas/case.ts';
import { jsonOf } from './support/files.ts';

const cases = jsonOf('content/cases/*.json');

test('there is a worked visit', () => {
  expect(cases.length).toBeGreaterThan(0);
});

describe.each(cases)('$path', ({ data }) => {
  test('has the shape that the schema asks for', () => {
    expect(visitCaseSchema.safeParse(data).error?.issues ?? []).toEqual([]);
  });

  test('is set at the invented Marrow Bay Glassworks', () => {
    expect(JSON.stringify(data)).toContain('Marrow Bay');
  });
});
