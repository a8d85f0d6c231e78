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

// Words as people type them, and the pages that answer: one of them is among the first three.
test.each([
  ['igbt', ['/articles/trip/output-stage-failure/', '/articles/measuring/bridge-check/', '/calculators/bridge/']],
  ['diode check', ['/articles/measuring/diode-test/', '/calculators/bridge-diode/']],
  ['VFD', ['/calculators/bridge/', article.trip]],
  ['servo amplifier', ['/articles/trip/find-the-drive-and-axis/', '/calculators/bridge/', article.trip]],
  ['igbt shorted', ['/articles/trip/output-stage-failure/', '/articles/measuring/bridge-check/']],
  ['six readings', ['/articles/measuring/bridge-check/']],
  ['trips when hot', ['/articles/trip/when-it-trips/', article.trip]],
  ['drag chain', ['/articles/trip/cable-and-connector-failure/']],
  ['encoder unplugged', ['/articles/trip/feedback-faults/']],
  ['loto', ['/articles/safety/lockout-and-stored-energy/', article.safety]],
  ['emergency stop', ['/articles/safety/lockout-and-stored-energy/', article.safety]],
  ['ppe', ['/articles/safety/protective-equipment-and-arc-flash/']],
  ['bleed resistor', ['/articles/safety/the-dc-bus/', '/calculators/discharge/']],
  ['vertical axis', ['/articles/safety/gravity-loaded-axes/']],
  ['hipot', ['/articles/measuring/multimeter-or-insulation-tester/', article.insulation]],
  ['megohm meter', ['/articles/measuring/multimeter-or-insulation-tester/', article.insulation]],
  ['wet motor', ['/articles/trip/motor-failure/', '/articles/measuring/temperature-moisture-and-time/']],
  ['condensation', ['/calculators/insulation/', '/articles/measuring/temperature-moisture-and-time/']],
  ['phase to ground', ['/calculators/isolation/', '/calculators/insulation/', '/articles/trip/motor-failure/']],
  ['ground fault', ['/articles/trip/what-the-drive-means/', '/calculators/isolation/']],
  ['chassis', ['/calculators/isolation/', '/calculators/insulation/']],
  ['OL', ['/articles/measuring/multimeter-or-insulation-tester/', article.insulation]],
  ['shorted turns', ['/articles/trip/motor-failure/', '/calculators/winding/']],
  ['open phase', ['/calculators/winding/', '/articles/trip/motor-failure/']],
  ['thermosetting', ['/tables/', '/tables/conversions/']],
  ['polarization index', ['/calculators/absorption/', '/articles/measuring/temperature-moisture-and-time/']],
  ['troubleshooting', ['/visit/']],
])('“%s” finds an answer among the first three pages', async (words, answers) => {
  const page = await open('/');
  await page.locator('#search-words').focus();
  await typeWords(page, words);
  const first = (await pagesFound(page)).slice(0, 3);
  expect(
    first.filter((path) => answers.includes(path)),
    first.join(' '),
  ).not.toEqual([]);
});

// In the glossary only: no article has the word.
test('another word for a term finds its entry in the glossary', async () => {
  const page = await open('/');
  await page.locator('#search-words').focus();
  await typeWords(page, 'flyback');
  expect(await pagesFound(page)).toContain('/glossary/');
  expect(await page.locator('.search-heading[href$="/glossary/#free-wheeling-diode"]').count()).toBe(1);
});
