import { expect, test } from 'vitest';
import { calculatorNames } from '../../src/calculators/registry.ts';
import { oldWindow } from './support/old-browser.ts';
import { address, openIn } from './support/open.ts';
import { pagesFound, typeWords } from './support/search.ts';
import { Visitor } from './support/visitor.ts';

// No browser of five years ago is to be had here. This is today's, without all that the oldest of package.json lack.

test('what is too young is gone', async () => {
  const page = await openIn(await oldWindow(), '/');
  const left = await page.evaluate(() => [
    'hasOwn' in Object,
    'at' in Array.prototype,
    'toSorted' in Array.prototype,
    'checkVisibility' in Element.prototype,
    'structuredClone' in globalThis,
    'BroadcastChannel' in globalThis,
    'requestIdleCallback' in globalThis,
    'DecompressionStream' in globalThis,
  ]);
  expect(left).toEqual(left.map(() => false));
});

test.each(calculatorNames)('%s comes to a verdict, with its drawing', async (name) => {
  const page = await openIn(await oldWindow(), `/calculators/${name}/`);
  await page.waitForSelector('[data-live]');
  await page
    .getByRole('button', { name: /Fill in the worked visit/ })
    .first()
    .click();
  await page.waitForSelector('.verdict:not([data-verdict="empty"]) .verdict-word');
  expect(await page.getByText('could not be loaded').count()).toBe(0);
});

test('a visit goes on after a reload', async () => {
  const page = await openIn(await oldWindow(), '/visit/');
  const visitor = new Visitor(page);
  await visitor.start('Marrow Bay line 2 (invented)', 'Lift');
  await visitor.choose('How did you find the drive?', 'I looked at its indication');
  await page.getByLabel('How many motor outputs does this drive have?').fill('3');
  await page.getByLabel('Which of these outputs does its indication name?').fill('3');
  await page.keyboard.press('Tab');
  await visitor.goOn('What was live or moving?');
  await visitor.choose(
    'What was live or moving when it tripped?',
    'The pulses had just come on, and the load stood still',
  );
  await visitor.saved();
  const lines = await visitor.lines();
  await page.reload();
  await page.locator('.visit-step').first().waitFor();
  expect(await visitor.lines()).toEqual(lines);
});

test('a practice case opens', async () => {
  const page = await openIn(await oldWindow(), '/practice/');
  await page.getByRole('button', { name: 'Draw a case', exact: true }).click();
  await page.locator('.practice-work').waitFor();
});

test('where the browser may not run the search’s program it says so, and leads to all articles', async () => {
  const context = await oldWindow();
  const policy = "default-src 'self'; script-src 'self'";
  await context.route('**/pagefind/pagefind-worker.js', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': policy } });
  });
  // Not by `open`: the broken policy is the point.
  const page = await context.newPage();
  await page.goto(address('/'));
  await page.locator('#search-words').fill('lockout');
  await page.getByText('The search could not start').first().waitFor();
  expect(await page.locator('#search-panel a').first().getAttribute('href')).toContain('/articles/');
});

test('the search answers', async () => {
  const page = await openIn(await oldWindow(), '/');
  await page.keyboard.press('/');
  await typeWords(page, 'lockout');
  expect(await pagesFound(page)).toContain('/articles/safety/lockout-and-stored-energy/');
});
