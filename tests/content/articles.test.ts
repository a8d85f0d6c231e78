import { describe, expect, test } from 'vitest';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limitIds } from '../../src/kernel/limits.ts';
import {
  attributesOf,
  isStepsFirst,
  listed,
  matterProse,
  splitArticle,
  typedProse,
  wordCount,
} from './support/article-text.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { allowedNumbers, typedNumbers } from './support/typed-numbers.ts';

// The build checks the shape of the front matter; these tests check references between files, and what authors forget.

const articles = filesOf('content/articles/**/*.mdx');
const sourceIds = Object.keys(jsonOf('content/sources/sources.json')[0]?.data as object);
const articleIds = articles.map(({ path }) => path.replace(/^content\/articles\/|\.mdx$/g, ''));
const figureNames = filesOf('src/library/figures/*.astro').map(({ path }) => path.replace(/^.*\/|\.astro$/g, ''));

test('there are articles in every section', () => {
  expect(articles.length).toBeGreaterThanOrEqual(24);
  const sections = new Set(articles.map(({ path }) => path.split('/')[2]));
  expect([...sections].sort()).toEqual(['deciding', 'measuring', 'safety', 'trip']);
});

describe.each(articles)('$path', ({ path, text }) => {
  const limitsUsed = attributesOf(text, 'Limit', 'id');
  const { body } = splitArticle(text);

  test('quotes limits that exist', () => {
    expect(limitsUsed.filter((id) => !(limitIds as string[]).includes(id))).toEqual([]);
  });

  test('cites sources that exist', () => {
    const cited = [...attributesOf(text, 'Cite', 'id'), ...listed(text, 'sources')];
    expect(cited.filter((id) => !sourceIds.includes(id))).toEqual([]);
  });

  test('lists every source that it cites or that a quoted limit has', () => {
    const ofLimits = limitIds.filter((id) => limitsUsed.includes(id)).map((id) => limitLabels[id].source);
    const used = [...attributesOf(text, 'Cite', 'id'), ...ofLimits.filter((id) => id !== null)];
    expect([...new Set(used)].filter((id) => !listed(text, 'sources').includes(id))).toEqual([]);
  });

  test('relates to other articles that exist', () => {
    const related = listed(text, 'related');
    expect(related.filter((id) => !articleIds.includes(id) || path.includes(`${id}.mdx`))).toEqual([]);
    expect(related.length).toBeGreaterThan(0);
    expect(attributesOf(text, 'PageLink', 'id').filter((id) => !articleIds.includes(id))).toEqual([]);
  });

  test('types no figure with a unit that has no reason to be typed', () => {
    const typed = typedNumbers(`${matterProse(text)}\n${typedProse(text)}`).filter(
      (figure) => !(figure in allowedNumbers),
    );
    expect(typed, 'write <Limit id="…"/> or <Reading>, compute it, or give a reason in typed-numbers.ts').toEqual([]);
  });

  test('says what it cannot tell, and before steps what can hurt and what must be true', () => {
    expect(listed(text, 'cannotTell').length).toBeGreaterThan(0);
    const isProcedure = /^1\. /m.test(body) || body.includes('<Calculator');
    if (!isProcedure) return;
    expect(listed(text, 'hazards').length, 'hazards').toBeGreaterThan(0);
    expect(listed(text, 'preconditions').length, 'preconditions').toBeGreaterThan(0);
  });

  test('shows and captions each drawing that it imports', () => {
    const imported = [...body.matchAll(/src\/library\/figures\/(\w+)\.astro/g)].map((match) => match[1] ?? '');
    expect(imported.filter((name) => !figureNames.includes(name) || !body.includes(`<${name} />`))).toEqual([]);
    expect(attributesOf(body, 'Figure', 'caption')).toHaveLength(imported.length);
  });

  // Other rules hold for these: tests/content/steps-first.test.ts.
  if (isStepsFirst(text)) return;

  test('is neither a note nor a book', () => {
    const words = wordCount(typedProse(text));
    expect(words).toBeGreaterThanOrEqual(900);
    expect(words).toBeLessThanOrEqual(2500);
  });

  test('says of its examples that they are invented, and names the mistakes that people make', () => {
    if (/^## Worked example$/m.test(body)) {
      expect(body).toMatch(/^## Worked example\n\n\*Marrow Bay Glassworks.*invented\.\*$/m);
    }
    if (/<Reading>|\.example\.ts/.test(body)) expect(body).toMatch(/invented/i);
    expect(body).toMatch(/^## Mistakes that people make$/m);
  });
});
