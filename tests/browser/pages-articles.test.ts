import { expect, test } from 'vitest';
import { builtPages } from './support/built-pages.ts';
import { expectGoodLooks } from './support/looks.ts';

const articles = builtPages().filter((path) => path.startsWith('/articles/'));

test('the site has articles', () => {
  expect(articles.length).toBeGreaterThan(25);
});

test.each(articles)('%s', expectGoodLooks);
