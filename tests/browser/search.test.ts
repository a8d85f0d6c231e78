import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';
import { focused, pagesFound, replaceWords, seesWholly, typeWords } from './support/search.ts';

// What a person does at the search box, by keyboard and by touch.

/** The heading that the address names stands in the window. */
async function opensAtHeading(page: Page, id: string): Promise<void> {
  await page.waitForURL(new RegExp(`#${id}$`));
  const heading = page.locator(`#${id}`);
  await expect.poll(() => seesWholly(page, heading)).toBe(true);
}

describe.each([360, 1280])('by keyboard, %i px wide', (width) => {
  test('from / over the words to the heading that answers', async () => {
    const page = await open('/', { width });
    await page.keyboard.press('/');
    expect(await focused(page)).toBe('search-words');
    expect(await page.inputValue('#search-words')).toBe('');
    await typeWords(page, 'bonded row');
    const result = page.locator('.search-heading').first();
    await result.waitFor();
    const { pathname, hash } = new URL((await result.getAttribute('href')) ?? '', page.url());
    for (let step = 0; step < 20 && !(await result.evaluate((link) => link === document.activeElement)); step++) {
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('Enter');
    await opensAtHeading(page, hash.slice(1));
    expect(new URL(page.url()).pathname).toBe(pathname);
  });

  test('arrow up leads back to the box, Escape closes and leaves the words', async () => {
    const page = await open('/tables/', { width });
    await page.keyboard.press('/');
    await typeWords(page, 'dew point');
    await page.keyboard.press('ArrowDown');
    expect(await focused(page)).toBe('search-page');
    await page.keyboard.press('ArrowUp');
    expect(await focused(page)).toBe('search-words');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Escape');
    expect(await page.locator('#search-panel').isVisible()).toBe(false);
    expect(await focused(page)).toBe('search-words');
    expect(await page.inputValue('#search-words')).toBe('dew point');
  });

  test('Enter in the box goes to the first result', async () => {
    const page = await open('/', { width });
    await page.locator('#search-words').focus();
    await page.keyboard.type('troubleshooting');
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('search-page');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/visit\/$/);
  });

  test('the first results stand in the window when they open, and the page keeps its width', async () => {
    const page = await open('/', { width });
    await page.locator('#search-words').focus();
    await typeWords(page, 'brake');
    for (const part of ['#search-words', '.search-page >> nth=0', '.search-heading >> nth=0']) {
      await expect.poll(() => seesWholly(page, page.locator(part)), { message: part }).toBe(true);
    }
    expect(await overflowing(page)).toEqual([]);
  });

  test('words that are nowhere: it says so and leads to all articles', async () => {
    const page = await open('/', { width });
    await page.locator('#search-words').focus();
    await typeWords(page, 'xyzzyq');
    const status = () => page.locator('[data-search-status]').textContent();
    await expect.poll(status).toBe('Nothing found for “xyzzyq”.');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/articles\/$/);
  });

  test('a word that is spelt like one of the fieldbook: it offers that one and searches for it', async () => {
    const page = await open('/', { width });
    await page.locator('#search-words').focus();
    await typeWords(page, 'megaohmtester');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.inputValue('#search-words')).toBe('megohm tester');
    await expect.poll(() => pagesFound(page)).toContain('/glossary/#insulation-tester');
    expect(await focused(page)).toBe('search-words');
  });
});

test('by touch: a tap on a heading opens its page there, a tap beside closes', async () => {
  const page = await open('/', { width: 360, context: { hasTouch: true, isMobile: true } });
  await page.locator('#search-words').tap();
  await typeWords(page, 'discharge resistor');
  const panel = await page.locator('#search-panel').boundingBox();
  const below = (panel?.y ?? 0) + (panel?.height ?? 0) + 4;
  // A place that holds nothing to follow.
  await page.touchscreen.tap(1, below < 735 ? below : (panel?.y ?? 60) - 2);
  expect(await page.locator('#search-panel').isVisible()).toBe(false);
  await page.locator('#search-words').tap();
  await page.locator('#search-panel').waitFor();
  const result = page.locator('.search-heading').first();
  const target = (await result.boundingBox())?.height ?? 0;
  expect(target).toBeGreaterThanOrEqual(48);
  const id = new URL(String(await result.getAttribute('href')), page.url()).hash.slice(1);
  await result.tap();
  await opensAtHeading(page, id);
});

test('a / that is typed into a field stays a /', async () => {
  const page = await open('/calculators/bridge/');
  await page.waitForSelector('[data-live]');
  await page.locator('#bridge-plusU').focus();
  await page.keyboard.type('/');
  expect(await page.inputValue('#bridge-plusU')).toBe('/');
});

test('a slip of the keys is read, and said', async () => {
  const page = await open('/');
  await page.locator('#search-words').focus();
  await typeWords(page, 'insualtion test');
  await expect
    .poll(() => page.locator('[data-search-status]').textContent())
    .toMatch(/^\d answers, the best first, for “insulation test”\.$/);
});

test('a screen reader is told the answer when the person pauses, not at each letter', async () => {
  const page = await open('/');
  await page.clock.install();
  // Installed, it still runs by itself: it must stand still until it is moved.
  await page.clock.pauseAt(Date.now() + 60_000);
  const status = () => page.locator('[data-search-status]').textContent();
  await page.locator('#search-words').focus();
  for (const words of ['bra', 'ke']) {
    await page.keyboard.type(words);
    await page.locator('#search-panel .search-page').first().waitFor();
    await page.clock.runFor(400);
    expect(await status()).toBe('');
  }
  const answered = async () => {
    await page.clock.runFor(50);
    return page.locator('#search-panel[data-answers="brake"]').count();
  };
  await expect.poll(answered).toBe(1);
  await page.clock.runFor(2000);
  expect(await status()).toMatch(/answers, the best first\.$/);
});

test('a page carries little of the search: the rest comes with the first turn to the box', async () => {
  const page = await open('/tables/');
  const fetched = () =>
    page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map(({ name }) => name)
        .filter((name) => /search-|pagefind/.test(name)),
    );
  expect(await fetched()).toEqual([]);
  await page.locator('#search-words').focus();
  await expect.poll(fetched).toContainEqual(expect.stringMatching(/\/pagefind\/pagefind\.js$/));
});

test('calculators, terms of the glossary and rows of the tables are answers of their own', async () => {
  const page = await open('/');
  await page.locator('#search-words').focus();
  for (const [words, answer] of [
    ['bridge balance calculator', '/calculators/bridge/'],
    ['mush-wound', '/glossary/#random-wound'],
    ['bend radius', '/tables/#moving-bend-radius'],
  ] as const) {
    await replaceWords(page, words);
    expect((await pagesFound(page))[0], words).toBe(answer);
  }
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await opensAtHeading(page, 'moving-bend-radius');
});

test.each(['light', 'dark'] as const)(
  'open, with answers and with none, it breaks no rule of access: %s',
  async (colorScheme) => {
    const page = await open('/', { width: 320 });
    await page.emulateMedia({ colorScheme });
    await page.locator('#search-words').focus();
    for (const words of ['insulation', 'brake', 'zzzzqqq']) {
      await replaceWords(page, words);
      expect(await axe(page), words).toEqual([]);
      expect(await overflowing(page), words).toEqual([]);
    }
    await page.emulateMedia({ colorScheme, forcedColors: 'active' });
    expect(await axe(page)).toEqual([]);
  },
);
