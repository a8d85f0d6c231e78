import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../tools/paths.ts';
import { redirects, siteAddresses } from '../tools/site-addresses.ts';

// No browser is needed, but the built site is. `npm run publish:addresses` adds new addresses to the list.

const published = readFileSync(join(root, 'tests/content/addresses.txt'), 'utf8')
  .split('\n')
  .filter((line) => line !== '');

test('no published address is lost: each is there, or its page leads on to another', () => {
  const there = new Set(siteAddresses());
  const leadingOn = redirects();
  const lost = published.filter((address) => !there.has(address) && !leadingOn.includes(address.split('#')[0] ?? ''));
  expect(lost, 'keep the id, or add a redirect to astro.config.mjs').toEqual([]);
});

test('the list holds the site’s pages, headings, limits, terms and questions', () => {
  expect(published.length).toBeGreaterThan(300);
  expect(published).toEqual(
    expect.arrayContaining([
      '/articles/safety/safe-measurement/',
      '/articles/measuring/insulation-testing/#the-blind-spot-of-stage-two',
      '/tables/#bridge-tolerance',
      '/glossary/#dc-bus',
      '/articles/measuring/insulation-testing/#question-hot-motor',
    ]),
  );
});
