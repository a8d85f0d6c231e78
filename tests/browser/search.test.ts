import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';
import { focused, pagesFound, seesWholly, typeWords } from './support/search.ts';

// What a person does at the search box, by keyboard and by touch.

const article = {
  trip: '/articles/trip/causes-of-an-overcurrent-trip/',
  safety: '/articles/safety/safe-measurement/',
  insulation: '/articles/measuring/insulation-testing/',
};

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
    const result = page.locator('.search-heading', { hasText: 'The blind spot of stage two' });
    await result.waitFor();
    for (let step = 0; step < 20 && !(await result.evaluate((link) => link === document.activeElement)); step++) {
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('Enter');
    await opensAtHeading(page, 'the-blind-spot-of-stage-two');
    expect(new URL(page.url()).pathname).toContain(article.insulation);
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
    await page.keyboard.type('hipot');
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('search-page');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/calculators\/insulation\/$/);
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

  test('words that are nowhere: it says so and lists all articles', async () => {
    const page = await open('/', { width });
    await page.locator('#search-words').focus();
    await typeWords(page, 'xyzzyq');
    expect(await page.locator('[data-search-status]').textContent()).toBe('Nothing found for “xyzzyq”.');
    expect(await pagesFound(page)).toEqual(expect.arrayContaining(Object.values(article)));
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/articles\/.+/);
  });
});

test('by touch: a tap on a heading opens its page there, a tap beside closes', async () => {
  const page = await open('/', { width: 360, context: { hasTouch: true, isMobile: true } });
  await page.locator('#search-words').tap();
  await typeWords(page, 'discharge resistor');
  await page.locator('h1').tap({ force: true, position: { x: 1, y: 1 } });
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

// Words as people type them, and the page that they hope for.
test.each([
  ['igbt', '/calculators/bridge/'],
  ['diode check', '/calculators/bridge/'],
  ['VFD', article.trip],
  ['servo amplifier', article.trip],
  ['igbt shorted', '/calculators/bridge/'],
  ['six readings', article.trip],
  ['trips when hot', article.trip],
  ['drag chain', article.trip],
  ['encoder unplugged', article.trip],
  ['loto', article.safety],
  ['emergency stop', article.safety],
  ['ppe', article.safety],
  ['bleed resistor', article.safety],
  ['vertical axis', article.safety],
  ['hipot', article.insulation],
  ['megohm meter', article.insulation],
  ['wet motor', article.insulation],
  ['condensation', '/calculators/insulation/'],
  ['phase to ground', '/calculators/isolation/'],
  ['ground fault', '/calculators/insulation/'],
  ['chassis', '/calculators/isolation/'],
  ['OL', article.insulation],
  ['shorted turns', '/calculators/winding/'],
  ['open phase', '/calculators/winding/'],
  ['thermosetting', '/tables/'],
  ['troubleshooting', '/visit/'],
])('“%s” finds %s among the first three', async (words, path) => {
  const page = await open('/');
  await page.locator('#search-words').focus();
  await typeWords(page, words);
  expect((await pagesFound(page)).slice(0, 3)).toContain(path);
});
