import { expect, test } from 'vitest';
import { builtPages } from './support/built-pages.ts';
import { expectGoodLooks } from './support/looks.ts';

// The articles are in a file of their own, so that two workers share the pages.
const pages = builtPages();

test('the site has pages', () => {
  expect(pages).toContain('/');
  expect(pages).toContain('/visit/');
});

test.each(pages.filter((path) => !path.startsWith('/articles/')))('%s', expectGoodLooks);
