import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { axe } from './support/axe.ts';
import { newWindow, open, openIn } from './support/open.ts';
import { fileOf, importVisit, listed, textOf } from './support/visit-files.ts';

const visit = visitOf(motorAndCable.slice(0, 3), {}, 'marrow-bay-shop-1');

/** A tablet of the shop, with its own storage. */
async function tablet(): Promise<BrowserContext> {
  return newWindow({ viewport: { width: 820, height: 1000 }, serviceWorkers: 'block' });
}

async function exported(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export everything' }).click();
  return textOf(download);
}

/** Reads files and returns what is said about them. */
async function read(page: Page, ...texts: string[]): Promise<string> {
  await page.locator('#shop-file').setInputFiles(texts.map((text, index) => fileOf(text, `file-${index + 1}.json`)));
  const files = page.locator('section[aria-labelledby="files"]');
  await expect.poll(() => files.getByRole('status').textContent()).not.toMatch(/^$|Exchanging/);
  return (await files.textContent()) ?? '';
}

async function note(page: Page, words: string): Promise<void> {
  await page.goto(page.url().replace(/#.*|$/, `#visit=${visit.id}`));
  await page.locator('#visit-notes').evaluate((element) => element.closest('details')?.setAttribute('open', ''));
  await page.locator('#visit-notes').fill(words);
  await page.locator('#visit-notes').blur();
  await expect.poll(() => page.locator('.save-status').textContent()).toMatch(/^Saved/);
}

test('two tablets over files: a visit goes over, both change it, both versions are kept', async () => {
  const [first, second] = [await tablet(), await tablet()];
  const [visitsA, shopA] = [await openIn(first, '/visit/'), await openIn(first, '/shop/')];
  const [visitsB, shopB] = [await openIn(second, '/visit/'), await openIn(second, '/shop/')];
  await importVisit(visitsA, visit);
  expect(await read(shopB, await exported(shopA))).toContain('1 visit taken over.');
  await note(visitsA, 'seen by A');
  await note(visitsB, 'seen by B');
  const fromA = await exported(shopA);
  expect(await read(shopB, fromA)).toContain('changed on two devices without sight of each other');
  expect(await read(shopB, fromA)).toContain('2 visits of this device not in those files');
  expect(await read(shopB, await exported(shopB))).toContain('Nothing was new on either side.');
  await read(shopA, await exported(shopB));
  for (const page of [visitsA, visitsB]) {
    await page.goto(page.url().replace(/#.*/, '#visits'));
    expect(await listed(page)).toHaveLength(2);
    expect(await page.getByText('Second version, changed on another device.').count()).toBe(1);
  }
});

test('a deleted visit is deleted on the other tablet', async () => {
  const [first, second] = [await tablet(), await tablet()];
  const [visitsA, shopA] = [await openIn(first, '/visit/'), await openIn(first, '/shop/')];
  const shopB = await openIn(second, '/shop/');
  await importVisit(visitsA, visit);
  await read(shopB, await exported(shopA));
  await visitsA.goto(visitsA.url().replace(/#.*/, '#visits'));
  await visitsA.getByRole('button', { name: /^Delete/ }).click();
  await visitsA.getByText('No visits yet.').waitFor();
  expect(await read(shopB, await exported(shopA))).toContain('1 visit deleted that another device had deleted.');
});

describe('a file that is', () => {
  test.each([
    ['half-written', '{"format":"overcurrent-fieldbook-shop","version":1,"rec', 'This is damaged or was cut off'],
    ['foreign', '{"shopping":["lamp"]}', 'This is not a visit of this handbook'],
    ['of a newer edition', '{"format":"overcurrent-fieldbook-shop","version":9}', 'newer edition'],
  ])('%s: said, and nothing is lost', async (_kind, text, message) => {
    const window = await tablet();
    const [visits, shop] = [await openIn(window, '/visit/'), await openIn(window, '/shop/')];
    await importVisit(visits, visit);
    expect(await read(shop, text)).toContain(message);
    await visits.goto(visits.url().replace(/#.*/, '#visits'));
    expect(await listed(visits)).toHaveLength(1);
  });
});

test('the readings as a table, with what was typed', async () => {
  const window = await tablet();
  const [visits, shop] = [await openIn(window, '/visit/'), await openIn(window, '/shop/')];
  await importVisit(visits, visitOf(motorAndCable, { machine: '=1+1' }, 'marrow-bay-shop-2'));
  const download = shop.waitForEvent('download');
  await shop.getByRole('button', { name: 'Export the readings (CSV)' }).click();
  const text = await textOf(download);
  expect(text).toContain("marrow-bay-shop-2,'=1+1,Lift");
  expect(text.split('\r\n').length).toBeGreaterThan(20);
});

/** A folder of the browser's own: the same interface as a chosen one. */
const pickOwnFolder = () => {
  Object.assign(globalThis, { showDirectoryPicker: () => navigator.storage.getDirectory() });
  const folder = FileSystemDirectoryHandle.prototype as unknown as Record<string, () => Promise<string>>;
  folder.queryPermission = folder.requestPermission = () => Promise.resolve('granted');
};

test('the shared folder is chosen once, written one file a visit, and read by itself while the visits are open', async () => {
  const window = await tablet();
  await window.addInitScript(pickOwnFolder);
  const [visits, shop] = [await openIn(window, '/visit/'), await openIn(window, '/shop/')];
  await importVisit(visits, visit);
  await shop.getByRole('button', { name: 'Choose the folder' }).click();
  await shop.getByText('1 visit written.').waitFor();
  const files = await shop.evaluate(async () => {
    const names: string[] = [];
    const folder = (await navigator.storage.getDirectory()) as unknown as { keys(): AsyncIterable<string> };
    for await (const name of folder.keys()) names.push(name);
    return names;
  });
  expect(files).toEqual([`visit-${visit.id}.json`]);
  // Another tablet writes its change of the visit.
  await shop.evaluate(async (name) => {
    const folder = await navigator.storage.getDirectory();
    const file = await folder.getFileHandle(name);
    const state = JSON.parse(await (await file.getFile()).text());
    state.versions['another-tablet'] = 1;
    state.visit.notes = 'from the other tablet';
    const stream = await file.createWritable();
    await stream.write(JSON.stringify(state));
    await stream.close();
  }, `visit-${visit.id}.json`);
  await visits.reload();
  const again = await openIn(window, '/visit/');
  await again.goto(again.url().replace(/#.*|$/, `#visit=${visit.id}`));
  await expect
    .poll(async () => {
      await again.reload();
      return again.locator('#visit-notes').inputValue();
    })
    .toBe('from the other tablet');
  await shop.reload();
  await shop.getByText(/last exchange \d{4}/).waitFor();
  await shop.getByRole('button', { name: 'Exchange now' }).click();
  await shop.getByText('Nothing was new on either side.').waitFor();
  expect(await axe(shop)).toEqual([]);
});

test('a browser that can’t open a folder says so', async () => {
  const context = await tablet();
  await context.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'showDirectoryPicker');
  });
  const page = await openIn(context, '/shop/');
  await page.getByText('This browser can’t keep a folder open.').waitFor();
});

test('without script it says what to do instead', async () => {
  const page = await open('/shop/', { script: false });
  expect(await page.locator('.until-live').allTextContents()).toEqual(
    expect.arrayContaining([expect.stringContaining('The exchange needs script')]),
  );
});
