import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { calculatorNames } from '../../src/calculators/registry.ts';
import { open } from './support/open.ts';

// The bar of the project's own brief: the first field within the first screen of a phone of 360 by 740.

async function calculator(name: string, width: number, height: number): Promise<Page> {
  const page = await open(`/calculators/${name}/`, { width });
  await page.setViewportSize({ width, height });
  await page.locator(`[data-island="${name}"][data-live]`).waitFor();
  return page;
}

interface Place {
  top: number;
  bottom: number;
}

const fields = '.calculator-fields :is(input[type="text"], #trip-trace-file, textarea)';

/** Where a field stands in the window; folded ones are none. */
function placeOf(page: Page, which: 'first' | 'last'): Promise<Place> {
  return page.evaluate(
    ([selector, end]) => {
      const shown = [...document.querySelectorAll<HTMLElement>(selector ?? '')].filter(
        (field) => field.closest('details:not([open])') === null && field.getClientRects().length > 0,
      );
      const field = end === 'first' ? shown[0] : shown[shown.length - 1];
      if (field === undefined) throw new Error('no field');
      if (end === 'last') field.scrollIntoView({ block: 'center' });
      const { top, bottom } = field.getBoundingClientRect();
      return { top, bottom };
    },
    [fields, which] as const,
  );
}

/** The verdict's line as it is seen: on its bar, or on its panel. */
function verdictSeen(page: Page): Promise<{ text: string; top: number; bottom: number }> {
  return page.evaluate(() => {
    const bar = document.querySelector('.verdict-bar');
    const head = document.querySelector('.verdict-head');
    const inSight = [head, bar].find((one) => {
      const { top, bottom, height } = one?.getBoundingClientRect() ?? { top: 0, bottom: 0, height: 0 };
      return height > 0 && top >= 0 && bottom <= innerHeight;
    });
    const { top, bottom } = inSight?.getBoundingClientRect() ?? { top: -1, bottom: -1 };
    return { text: inSight?.textContent ?? '', top, bottom };
  });
}

describe.each(calculatorNames)('%s', (name) => {
  test('on a phone: the first field in the first screen, the verdict in sight with the last', async () => {
    const page = await calculator(name, 360, 740);
    const bar = await page.locator('.verdict-bar').boundingBox();
    const first = await placeOf(page, 'first');
    expect(first.top).toBeGreaterThan(0);
    // A field of several lines may go on below.
    const isTable = name === 'trend';
    expect(isTable ? first.top + 96 : first.bottom).toBeLessThanOrEqual(bar?.y ?? 0);
    const signs = page.locator('.hazard-signs > span');
    expect(await signs.count()).toBeGreaterThan(1);
    expect(await signs.first().textContent()).toMatch(/\w{4}/);
    expect(await page.locator('.conditions').isVisible()).toBe(true);

    const last = await placeOf(page, 'last');
    const verdict = await verdictSeen(page);
    expect(verdict.text).toContain('No verdict');
    expect(last.bottom).toBeLessThanOrEqual(740);
  });

  test('on a wide screen: verdict beside the form, in sight with the first field and with the last', async () => {
    const page = await calculator(name, 1280, 800);
    const side = await page.locator('.calculator-outcome').boundingBox();
    const form = await page.locator('.calculator-fields').boundingBox();
    expect(side?.x ?? 0).toBeGreaterThanOrEqual((form?.x ?? 0) + (form?.width ?? Number.POSITIVE_INFINITY));
    expect((await verdictSeen(page)).text).toContain('No verdict');
    await placeOf(page, 'last');
    expect((await verdictSeen(page)).text).toContain('No verdict');
  });
});

test('what to do about the hazards unfolds, and all conditions with it', async () => {
  const page = await calculator('bridge', 360, 740);
  expect(await page.locator('.before-measuring .hazards').isVisible()).toBe(false);
  await page.locator('.before-measuring > summary').click();
  expect(await page.locator('.before-measuring .hazards li').count()).toBe(3);
  expect(await page.locator('.before-measuring .preconditions').isVisible()).toBe(true);
});

test('a printed form has every condition, folded or not', async () => {
  const page = await calculator('insulation', 820, 1180);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.before-measuring').isVisible()).toBe(false);
  expect(await page.locator('.before-measuring-print li').count()).toBe(6);
  expect(await page.locator('.before-measuring-print').isVisible()).toBe(true);
});
