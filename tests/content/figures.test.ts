import { describe, expect, test } from 'vitest';
import { filesOf } from './support/files.ts';
import { typedNumbers } from './support/typed-numbers.ts';

const figures = filesOf('src/library/figures/*.astro');
const parts = filesOf('src/library/figures/parts/*.astro');
const articles = filesOf('content/articles/**/*.mdx');

/** The text of an attribute, plain or computed. */
const attribute = (text: string, name: string) =>
  new RegExp(`\\b${name}=(?:"([^"]*)"|\\{\`([\\s\\S]*?)\`\\}\\n)`).exec(text)?.slice(1).join('') ?? '';

test('there are at least twenty figures, and each has an id of its own', () => {
  const ids = figures.map(({ text }) => attribute(text, 'id'));
  expect(figures.length).toBeGreaterThanOrEqual(20);
  expect(new Set(ids).size).toBe(figures.length);
});

describe.each(figures)('$path', ({ path, text }) => {
  test('is used in an article', () => {
    const name = path.replace(/^.*\/|\.astro$/g, '');
    expect(articles.some((article) => article.text.includes(`<${name} />`))).toBe(true);
  });

  test('types no figure with a unit', () => {
    // In path data, H and V are directions.
    const withoutPaths = text.replace(/\bd=("[^"]*"|\{[^>]*\})/g, '');
    expect(typedNumbers(withoutPaths)).toEqual([]);
  });
});

test('drawings take their colours from the page, so that dark, print and high contrast follow', () => {
  const coloured = [...figures, ...parts].filter(({ text }) =>
    /#[0-9a-f]{3,8}\b|\brgb\(|\b(?:fill|stroke)="(?!none)/i.test(text),
  );
  expect(coloured.map(({ path }) => path)).toEqual([]);
});
