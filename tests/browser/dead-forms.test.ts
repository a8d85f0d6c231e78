import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { address, newWindow } from './support/open.ts';

// Half a copy of the site, a connection that is cut, a script that stops: the form that stays dead says so.

const notice = (page: Page) => page.locator('.script-notice');
const searchNotice = (page: Page) => page.locator('.search-notice');

/** A page some of whose scripts never come. */
async function cut(path: string, files: string | RegExp): Promise<Page> {
  const context = await newWindow({ serviceWorkers: 'block' });
  await context.route(files, (route) => route.abort());
  const page = await context.newPage();
  await page.goto(address(path));
  return page;
}

/** Lets the seconds that the notice waits pass quickly, once the page has been seen without it. */
async function hurry(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Animation.enable');
  await session.send('Animation.setPlaybackRate', { playbackRate: 40 });
}

describe('the notice comes up by style alone', () => {
  test.each([
    ['a calculator whose scripts are all missing', '/calculators/bridge/', /\.js$/],
    ['a calculator whose own part is missing', '/calculators/insulation/', /\/Calculator\.(?!astro)[^/]*\.js$/],
    ['an article with a calculator in it', '/articles/measuring/bridge-check/', /Calculator[^/]*\.js$/],
    ['the visit', '/visit/', /\.js$/],
    ['the practice', '/practice/', /\.js$/],
  ])('for %s', async (_, path, files) => {
    const page = await cut(path, files);
    expect(await notice(page).first().isVisible()).toBe(false);
    await hurry(page);
    await notice(page).first().waitFor({ state: 'visible' });
    expect(await notice(page).first().textContent()).toContain('its script has not arrived');
    expect(
      await notice(page)
        .first()
        .evaluate((element) => getComputedStyle(element).animationDelay),
    ).toBe('8s');
    await page.locator('.until-live:not(.script-notice, .search-notice)').first().waitFor({ state: 'visible' });
    await page.emulateMedia({ media: 'print' });
    expect(await notice(page).first().isVisible()).toBe(false);
  });

  test('for a script that stops with an error', async () => {
    const context = await newWindow({ serviceWorkers: 'block' });
    await context.route(/\/Calculator\.(?!astro)[^/]*\.js$/, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("half a file")' }),
    );
    const page = await context.newPage();
    await page.goto(address('/calculators/bridge/'));
    await hurry(page);
    await notice(page).waitFor({ state: 'visible' });
  });

  test('and goes when the script comes after all', async () => {
    const context = await newWindow({ serviceWorkers: 'block' });
    let release = () => {};
    const held = new Promise<void>((done) => {
      release = done;
    });
    await context.route(/\/Calculator\.(?!astro)[^/]*\.js$/, async (route) => {
      await held;
      await route.continue();
    });
    const page = await context.newPage();
    await page.goto(address('/calculators/bridge/'));
    await hurry(page);
    await notice(page).waitFor({ state: 'visible' });
    release();
    await notice(page).waitFor({ state: 'hidden' });
  });

  test('for the search', async () => {
    const page = await cut('/tables/', /\.js$/);
    await hurry(page);
    await searchNotice(page).waitFor({ state: 'visible' });
    expect(await searchNotice(page).getByRole('link').getAttribute('href')).toBe('/articles/');
  });

  test('at once where a later part of the search does not come', async () => {
    const page = await cut('/tables/', /search-panel[^/]*\.js$/);
    await page.locator('#search-words').focus();
    await searchNotice(page).waitFor({ state: 'visible' });
  });
});
