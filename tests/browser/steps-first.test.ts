import { globSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../tools/paths.ts';
import { open } from './support/open.ts';

const pages = globSync('**/*.mdx', { cwd: join(root, 'content/articles') }).map((file) => file.replace(/\.mdx$/, ''));
/** A tablet held upright, and how far a person scrolls for the first step. */
const tablet = { width: 820, height: 1180 };
const screens = 1.5;

test('the first step of each page is within a screen and a half of a tablet', async () => {
  const page = await open('/');
  await page.setViewportSize(tablet);
  const far: string[] = [];
  for (const id of pages) {
    await page.goto(new URL(`/articles/${id}/`, page.url()).href);
    const top = await page
      .locator('.prose ol > li')
      .first()
      .evaluate((step) => step.getBoundingClientRect().top + scrollY);
    if (top > screens * tablet.height) far.push(`${id}: ${(top / tablet.height).toFixed(2)}`);
  }
  expect(far).toEqual([]);
});

test('what follows the steps is folded, and an address into a fold opens it', async () => {
  const page = await open('/articles/measuring/bridge-check/');
  expect(await page.locator('details.fold').count()).toBeGreaterThan(2);
  expect(await page.locator('details.fold[open]').count()).toBe(0);
  await page.goto(`${page.url()}#before-the-first-reading`);
  await page.locator('details.fold[open] #before-the-first-reading').waitFor({ state: 'attached' });
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(await page.locator('details.fold:not([open])').count()).toBe(0);
});
