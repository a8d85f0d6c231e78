import { expect, test } from 'vitest';
import { glossarySchema } from '../../src/library/glossary/glossary-schema.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { typedNumbers } from './support/typed-numbers.ts';

const files = jsonOf('content/glossary/*.json').map(({ data }) => glossarySchema.parse(data));
const terms = files.flatMap((file) => Object.entries(file).map(([id, term]) => ({ id, ...term })));
const ids = terms.map(({ id }) => id);
const articleIds = filesOf('content/articles/**/*.mdx').map(({ path }) =>
  path.replace(/^content\/articles\/|\.mdx$/g, ''),
);

const repeated = (words: string[]) => words.filter((word, i) => words.indexOf(word) !== i);

test('there are at least eighty terms, each id and each term once', () => {
  expect(ids.length).toBeGreaterThanOrEqual(80);
  expect(repeated(ids)).toEqual([]);
  expect(repeated(terms.flatMap(({ term, alsoInText = [] }) => [term, ...alsoInText]))).toEqual([]);
});

test('each names existing terms and an existing article', () => {
  const wrong = terms.filter(
    ({ id, related }) => related.length === 0 || related.some((to) => to === id || !ids.includes(to)),
  );
  expect(wrong.map(({ id }) => id)).toEqual([]);
  expect(
    terms.filter(({ article }) => !articleIds.includes(article)).map(({ id, article }) => `${id}: ${article}`),
  ).toEqual([]);
});

test('other words differ from the term and from each other', () => {
  const same = terms.filter(({ term, otherWords }) =>
    otherWords.some((word) => word.toLowerCase() === term.toLowerCase()),
  );
  expect(same.map(({ id }) => id)).toEqual([]);
});

test('definitions type no figure with a unit', () => {
  expect(terms.flatMap(({ definition }) => typedNumbers(definition))).toEqual([]);
});
