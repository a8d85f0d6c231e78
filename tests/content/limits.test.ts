import { describe, expect, test } from 'vitest';
import { limitIds } from '../../src/kernel/limits.ts';
import { limitTopicSchema } from '../../src/library/tables/limit-schema.ts';
import { sourceSchema } from '../../src/library/tables/source-schema.ts';
import { filesOf, jsonOf } from './support/files.ts';

const topics = jsonOf('content/limits/*.json');
const sources = jsonOf('content/sources/sources.json')[0]?.data as Record<string, unknown>;
const limits = topics.flatMap(({ path, data }) =>
  Object.entries(limitTopicSchema.parse(data).limits).map(([id, limit]) => ({ path, id, limit })),
);

describe('limits', () => {
  test.each(topics)('$path has the shape that the schema asks for', ({ data }) => {
    expect(limitTopicSchema.safeParse(data).error?.issues ?? []).toEqual([]);
  });

  test('no id is defined twice, in any topic', () => {
    const ids = limits.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  test('the calculators load every topic', () => {
    expect([...limitIds].sort()).toEqual(limits.map(({ id }) => id).sort());
  });

  test('no key is written twice in one file: JSON would silently keep the last', () => {
    const repeated = filesOf('content/limits/*.json').flatMap(({ path, text }) => {
      const written = [...text.matchAll(/^\s{4}"([a-z0-9-]+)": \{/gm)].map((match) => match[1]);
      return written.filter((id, i) => written.indexOf(id) !== i).map((id) => `${path}: ${id}`);
    });
    expect(repeated).toEqual([]);
  });

  test('every source that a limit names is in the bibliography', () => {
    const named = limits.flatMap(({ limit }) => limit.source ?? []);
    expect(named.filter((id) => !(id in sources))).toEqual([]);
  });

  test('tables are in ascending order, so that they can be interpolated', () => {
    const unordered = limits.filter(({ limit }) =>
      limit.points?.some(([input], i, all) => i > 0 && input <= (all[i - 1]?.[0] ?? -Infinity)),
    );
    expect(unordered.map(({ id }) => id)).toEqual([]);
  });

  test('no range runs from the larger to the smaller end', () => {
    const turned = limits.filter(({ limit: { range } }) => (range?.from ?? -Infinity) > (range?.to ?? Infinity));
    expect(turned.map(({ id }) => id)).toEqual([]);
  });
});

describe('sources', () => {
  test.each(Object.entries(sources))('%s has the shape that the schema asks for', (_id, source) => {
    expect(sourceSchema.safeParse(source).error?.issues ?? []).toEqual([]);
  });

  test('each is used: by a limit, an article, a text or a comment in code', () => {
    const users = filesOf('{src,content,tests}/**/*.{ts,tsx,astro,mdx,json}').filter(
      ({ path }) => path !== 'content/sources/sources.json',
    );
    const written = users.map(({ text }) => text).join('\n');
    const wanted = Object.entries(sources).map(([id, source]) => ({ id, short: sourceSchema.parse(source).short }));
    expect(wanted.filter(({ id, short }) => !written.includes(id) && !written.includes(short))).toEqual([]);
  });
});
