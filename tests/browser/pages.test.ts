import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { builtPages } from './support/built-pages.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';

const pages = builtPages();

test('the site has pages', () => {
  expect(pages).toContain('/');
});

describe.each([
  { width: 360, scheme: 'light' as const },
  { width: 1280, scheme: 'dark' as const },
])('at $width px, $scheme', (look) => {
  // `open` itself fails on console errors, failed requests and requests to other hosts.
  test.each(pages)('%s loads clean, fits the width, and axe finds nothing', async (path) => {
    const page = await open(path, look);
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });
});
