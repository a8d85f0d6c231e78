import { expect, test } from 'vitest';
import { hazards } from '../../src/site/parts/hazards.ts';
import { matterProse, typedProse } from './support/article-text.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { misspelt, ownWords, wordListPath } from './support/spelling.ts';

/** Texts in the values of a JSON file, without ids, names and units. */
function textsOf(data: unknown): string[] {
  if (typeof data === 'string') return /\s/.test(data) ? [data] : [];
  if (data === null || typeof data !== 'object') return [];
  return Object.values(data).flatMap(textsOf);
}

const articles = filesOf('content/articles/**/*.mdx').map(({ path, text }) => ({
  path,
  text: `${matterProse(text)}\n${typedProse(text)}`,
}));
const data = jsonOf('content/{glossary,exercises,lessons,limits,cases}/**/*.json').map(({ path, data }) => ({
  path,
  text: textsOf(data)
    .join('\n')
    .replace(/\{\w+\}/g, ''),
}));

const hazardTexts = Object.entries(hazards).map(([id, { word, sentence }]) => ({
  path: `hazard ${id}`,
  text: `${word}\n${sentence}`,
}));
// As they are drawn: what the code of a figure computes is in them too.
const figures = filesOf('tests/browser/drawings/figures/*.svg').map(({ path, text }) => ({
  path,
  text: text.replace(/<[^>]*>/g, '\n'),
}));

test.each([...articles, ...data, ...hazardTexts, ...figures])('$path is spelt correctly', ({ text }) => {
  expect(misspelt(text), `a word of the trade goes into ${wordListPath}`).toEqual([]);
});

test('the word list names each word once, in order', () => {
  const inOrder = [...new Set(ownWords)].sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1));
  expect(ownWords).toEqual(inOrder);
});

test('a misspelling is found', () => {
  expect(misspelt('The insulaton of the motor, and its 3kV rating')).toEqual(['insulaton']);
});
