import { describe, expect, test } from 'vitest';
import { formatQuantity } from '../../src/calc/format-reading.ts';
import { limit, limitValue } from '../../src/calc/limits.ts';
import type { Unit } from '../../src/calc/reading.ts';
import { filesOf, jsonOf } from './support/files.ts';

// The shape of the front matter is checked by the build; here is what lies between files.

const articles = filesOf('content/articles/**/*.mdx');
const limitIds = jsonOf('content/limits/*.json').flatMap(({ data }) =>
  Object.keys((data as { limits: object }).limits),
);

/** As a reader sees them. Others, such as 5 MΩ, are also plausible readings, so they can't be told apart here. */
const neverTyped = (['after-trip-point', 'touch-voltage', 'residual-voltage-60'] as const).map((id) =>
  formatQuantity(limitValue(id), limit(id).unit as Unit),
);
const sourceIds = Object.keys(jsonOf('content/sources/sources.json')[0]?.data as object);
const articleIds = articles.map(({ path }) => path.replace(/^content\/articles\/|\.mdx$/g, ''));

const idsIn = (text: string, component: string) =>
  [...text.matchAll(new RegExp(`<${component}\\b[^>]*\\bid="([^"]*)"`, 'g'))].map((match) => match[1] ?? '');

/** Entries of a list in the front matter, written in one line or one a line. */
function listed(text: string, field: string): string[] {
  const matter = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
  const list = new RegExp(`^${field}:((?:\\s*\\[[^\\]]*\\])|(?:\\n\\s*- .*)+)`, 'm').exec(matter)?.[1] ?? '';
  return [...list.matchAll(/[\w][\w/-]*/g)].map((match) => match[0]);
}

describe.each(articles)('$path', ({ text }) => {
  test('quotes limits that exist', () => {
    expect(idsIn(text, 'Limit').filter((id) => !limitIds.includes(id))).toEqual([]);
  });

  test('cites sources that exist', () => {
    expect([...idsIn(text, 'Cite'), ...listed(text, 'sources')].filter((id) => !sourceIds.includes(id))).toEqual([]);
  });

  test('relates to articles that exist', () => {
    expect(listed(text, 'related').filter((id) => !articleIds.includes(id))).toEqual([]);
  });

  test('types no well-known limit as a plain number', () => {
    const prose = text.replace(/^---[\s\S]*?\n---/, '').replaceAll('\u00a0', ' ');
    const typed = neverTyped.filter((shown) => new RegExp(`(?<![\\d.,])${shown}`).test(prose));
    expect(typed, 'write <Limit id="…"/>').toEqual([]);
  });
});

test('there are articles', () => {
  expect(articles.length).toBeGreaterThan(0);
});
