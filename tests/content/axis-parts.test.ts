import { describe, expect, test } from 'vitest';
import { axisParts } from '../../src/library/plate/axis-parts.ts';
import { knownAddresses } from './support/addresses.ts';

// The parts of the front page's drawing: every way on leads to a page, and to a heading that it has.

const known = knownAddresses();

describe.each(axisParts)('$name', ({ fails, limits, measured }) => {
  test('says what fails, and how it is measured and judged', () => {
    expect(fails.length).toBeGreaterThan(0);
    expect(measured.length).toBeGreaterThan(0);
    expect(limits.length).toBeGreaterThan(0);
    expect(new Set(limits).size).toBe(limits.length);
  });

  test.each(measured)('$path exists', ({ path }) => {
    const [page = '', id] = path.split('#');
    const ids = known.get(page);
    expect(ids).toBeDefined();
    if (id !== undefined && ids !== null) expect(ids).toContain(id);
  });
});

test('each part has an id of its own', () => {
  expect(new Set(axisParts.map(({ id }) => id)).size).toBe(axisParts.length);
});
