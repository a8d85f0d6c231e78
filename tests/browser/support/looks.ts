import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { kindOf } from '../../bench/page-kinds.ts';
import { axe } from './axe.ts';
import { builtPages, pagesWithEveryLook } from './built-pages.ts';
import { overflowing } from './layout.ts';
import { open } from './open.ts';
import { smallTargets } from './targets.ts';

/** Rules whose outcome depends on colours and sizes. */
const changing = ['color-contrast', 'link-in-text-block', 'target-size', 'scrollable-region-focusable'];

/** All looks in one window, one after the other: loading a page costs more than looking at it. */
const looks: { name: string; set: (page: Page) => Promise<void> }[] = [
  {
    name: '320 px, light',
    set: async (page) => {
      await page.setViewportSize({ width: 320, height: 800 });
      await page.emulateMedia({ colorScheme: 'light' });
    },
  },
  {
    name: '1280 px, dark',
    set: async (page) => {
      await page.setViewportSize({ width: 1280, height: 1000 });
      await page.emulateMedia({ colorScheme: 'dark' });
    },
  },
  {
    name: '820 px, high contrast, light',
    set: async (page) => {
      await page.setViewportSize({ width: 820, height: 1000 });
      await page.emulateMedia({ colorScheme: 'light', contrast: 'more' });
    },
  },
  { name: '820 px, high contrast, dark', set: (page) => page.emulateMedia({ colorScheme: 'dark', contrast: 'more' }) },
  {
    // As wide as 320 px at the usual size of text.
    name: '640 px, forced colours, text at 200 %',
    set: async (page) => {
      await page.setViewportSize({ width: 640, height: 800 });
      await page.emulateMedia({ colorScheme: 'light', contrast: null, forcedColors: 'active' });
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
    },
  },
];

/** The notices that a script has not come, once all have: each must be gone for good, not only not shown yet. */
async function noticesLeft(page: Page): Promise<string[]> {
  await page.waitForFunction(() => document.querySelector('[data-island]:not([data-live])') === null);
  return page
    .locator('.until-live')
    .evaluateAll((all) => all.filter((one) => getComputedStyle(one).display !== 'none').map((one) => one.className));
}

/** Forms are drawn by their scripts, so what they hold is not in the files: each is looked at. */
const isDrawnByScript = (path: string) => ['calculator', 'visit', 'practice'].includes(kindOf(path));

const inEveryLook = pagesWithEveryLook(builtPages());

/**
 * One visit of a page for all that is asked of every page: it loads clean, sets no cookie, comes to life, fits the
 * width, can be pressed with a glove, and axe finds nothing. Colours and sizes in the other looks are those of the
 * style sheet, so pages that together hold every element are enough. All findings of a page come at once. `open` itself
 * fails on console errors and requests to other hosts.
 */
export async function expectGoodLooks(path: string): Promise<void> {
  const page = await open(path, { width: 320 });
  expect(await page.context().cookies()).toEqual([]);
  await expect.poll(() => noticesLeft(page)).toEqual([]);
  const every = inEveryLook.has(path) || isDrawnByScript(path);
  for (const [index, { name, set }] of looks.entries()) {
    await set(page);
    expect.soft(await overflowing(page), name).toEqual([]);
    // Names, roles and order are the same in every look.
    if (index === 0) expect.soft(await axe(page), name).toEqual([]);
    else if (every) expect.soft(await axe(page, changing), name).toEqual([]);
  }
  expect(await smallTargets(page)).toEqual([]);
}
