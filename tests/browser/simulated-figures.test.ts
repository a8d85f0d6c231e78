import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { filesOf } from '../content/support/files.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { address, open } from './support/open.ts';
import { smallTargets } from './support/targets.ts';

// Each figure comes to life when its fold is opened, and its sliders and radio buttons work by key.

const pages = filesOf('content/articles/**/*.mdx').flatMap(({ path, text }) => {
  const names = [...text.matchAll(/<SimulatedFigure name="([\w-]+)"/g)].map((match) => match[1] ?? '');
  return names.length > 0 ? [{ path: path.replace(/^content(.*)\.mdx$/, '$1/'), names }] : [];
});

/** Opens the fold around the figure and waits for its script. */
async function wake(page: Page, name: string): Promise<void> {
  const place = page.locator(`[data-figure=${name}]`);
  await place.evaluate((figure) => {
    const fold = figure.closest('details');
    if (fold !== null) fold.open = true;
    figure.scrollIntoView();
  });
  await page.locator(`[data-figure=${name}][data-live]`).waitFor();
}

test('there are ten, on pages of their own sections', () => {
  expect(pages.flatMap(({ names }) => names)).toHaveLength(10);
});

test('a key on each control changes the values that are read out, and axe finds nothing', async () => {
  const page = await open('/articles/', { width: 360 });
  for (const { path, names } of pages) {
    await page.goto(address(path));
    for (const name of names) {
      await wake(page, name);
      const figure = page.locator(`[data-figure=${name}]`);
      const said = () => figure.locator('output').textContent();
      for (const control of await figure.locator('input:is([type=range], :checked)').all()) {
        const before = await said();
        await control.focus();
        const isSlider = (await control.getAttribute('type')) === 'range';
        const after: (string | null)[] = [];
        for (const key of isSlider ? ['Home', 'End'] : ['ArrowDown']) {
          await page.keyboard.press(key);
          after.push(await said());
        }
        expect(
          after.some((now) => now !== before),
          `${name}: ${before}`,
        ).toBe(true);
      }
    }
    expect.soft(await axe(page), path).toEqual([]);
    expect.soft(await smallTargets(page), path).toEqual([]);
    expect.soft(await overflowing(page), path).toEqual([]);
  }
});

test('without script the drawing, its values and its table are there, and no control', async () => {
  const page = await open('/articles/trip/when-it-trips/', { script: false, width: 360 });
  const figure = page.locator('[data-figure=trip-current]');
  expect(
    await figure
      .locator('svg, output, table, .figure-settings')
      .evaluateAll((parts) => parts.every((part) => part.getBoundingClientRect().height > 20)),
  ).toBe(true);
  expect(
    await figure
      .locator('input, button')
      .evaluateAll((parts) => parts.some((part) => part.getBoundingClientRect().height > 0)),
  ).toBe(false);
});
