import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readVisitFile, readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { typicalVisit } from './support/typical-visit.ts';

const visit = typicalVisit();
const good = JSON.stringify(visit);

/** Fixed, independent of FIELDBOOK_RUNS. */
const fuzzed = 10_000;

/** Values that break a careless JSON reader. */
const nasty = fc.constantFrom<unknown>(
  '<img src=x onerror=alert(1)>',
  '</script><script>alert(1)</script>',
  'javascript:alert(1)',
  '__proto__',
  { __proto__: { polluted: true } },
  JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}'),
  { toString: 'no function', valueOf: 1 },
  [[[[[[[[[[]]]]]]]]]],
  '\u0000\u202E\uFEFF',
  1e308,
  -0,
  null,
);

/** Every place of a record, as a list of keys. */
function places(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => places(inner, [...path, key]))];
}

function put(path: readonly string[], value: unknown): unknown {
  const [last, ...before] = [...path].reverse();
  if (last === undefined) return value;
  const copy = JSON.parse(good);
  const target = before.reverse().reduce((at, key) => at[key], copy);
  target[last] = value;
  return copy;
}

describe('fuzz: each of 10,000 files gives a record that fits or a problem with a message; none throws', () => {
  test('any value at any place of a good record', () => {
    const anywhere = fc.constantFrom(...places(visit));
    fc.assert(
      fc.property(anywhere, fc.oneof(nasty, fc.jsonValue({ maxDepth: 3 })), (path, value) => {
        const read = readVisitText(JSON.stringify(put(path, value)) ?? '');
        if (!read.ok) expect(read.problem.message.length).toBeGreaterThan(20);
        // An accepted record is the same after writing and reading, and the prototypes are unchanged.
        else expect(readVisitText(JSON.stringify(read.value.visit))).toEqual(read);
        expect('polluted' in {}).toBe(false);
      }),
      { numRuns: fuzzed },
    );
  });

  test('good files with places cut out, doubled or overwritten', () => {
    const change = fc.record({
      at: fc.nat({ max: good.length - 1 }),
      take: fc.nat({ max: 60 }),
      put: fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('"', '{', '}', ',', '\\', '\u0000', '[')),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const text = changes.reduce((t, c) => t.slice(0, c.at) + c.put + t.slice(c.at + c.take), good);
        const read = readVisitText(text);
        if (!read.ok) expect(read.problem.message.length).toBeGreaterThan(20);
      }),
      { numRuns: fuzzed },
    );
  });

  test('bytes at random, as a file', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        const read = await readVisitFile(new Blob([new Uint8Array(bytes)]));
        expect(read.ok).toBe(false);
      }),
      { numRuns: fuzzed },
    );
  });
});
