import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { driveOnly, motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';
import { importVisit } from './support/visit-files.ts';
import { Visitor } from './support/visitor.ts';

const views: Record<string, (page: Page) => Promise<void>> = {
  'the list': async (page) => {
    await importVisit(page, visitOf(motorAndCable));
    await page.getByRole('link', { name: 'All visits' }).click();
    await page.locator('.visit-list > li').waitFor();
  },
  'a new visit': async (page) => {
    await page.getByRole('button', { name: 'Start a visit' }).click();
    await page.getByText('Drive, motor, conditions').click();
    await page.getByText('What may follow').click();
  },
  'a visit in the middle': async (page) => {
    await importVisit(page, visitOf(driveOnly.slice(0, 8)));
    const visitor = new Visitor(page);
    await visitor.done();
    await visitor.goOn('Prove it dead again');
    await visitor.lockOut();
    await visitor.goOn('Six readings at the output stage');
    await page.locator('#bridge-plusU').fill('450');
    await page.locator('#bridge-plusV').fill('x');
    await page.getByText('2 fields can’t be read').waitFor();
  },
  'a decision with its link and code': async (page) => {
    await importVisit(page, visitOf(motorAndCable));
    await page.getByRole('button', { name: 'Link and QR code' }).click();
    await page.locator('.qr-code').waitFor();
  },
  'the report': async (page) => {
    await importVisit(page, visitOf(motorAndCable));
    await page.getByRole('link', { name: /^Report/ }).click();
    await page.locator('.report').waitFor();
  },
};

describe.each([
  { width: 360, scheme: 'light' as const },
  { width: 1280, scheme: 'dark' as const },
])('at $width px, $scheme', (look) => {
  test.each(Object.keys(views))('%s fits the width, and axe finds nothing', async (name) => {
    const page = await open('/visit/', look);
    await views[name]?.(page);
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });
});

test('everything to press is 48 px high or more', async () => {
  const page = await open('/visit/', { width: 360 });
  await importVisit(page, visitOf(driveOnly.slice(0, 5)));
  const small = await page
    .locator('main :is(button, summary, input:not([type="radio"], [type="checkbox"]), a.button, .choices > label)')
    .evaluateAll((targets) =>
      targets
        .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height < 48)
        .map((target) => target.outerHTML.slice(0, 120)),
    );
  expect(small).toEqual([]);
});

test('without script the page says so and leads to worksheets and articles', async () => {
  const page = await open('/visit/', { script: false, width: 360 });
  expect(await page.locator('main').textContent()).toContain('The guided visit needs script');
  expect(await page.getByRole('link', { name: 'Bridge balance' }).count()).toBe(1);
  expect(await page.locator('main').getByRole('link', { name: 'All articles' }).count()).toBe(1);
  expect(await page.getByText('The guided visit needs script').isVisible()).toBe(true);
  expect(await page.locator('.script-notice').isVisible()).toBe(false);
});
