import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { markersOf } from '../support/jpegs.ts';
import { motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { address, newWindow, open, openIn } from './support/open.ts';
import { cameraPicture, pictureFile } from './support/pictures.ts';
import { fileOf, importVisit, listed, textOf } from './support/visit-files.ts';

const visit = visitOf(motorAndCable);
const step = (page: Page) => page.locator('.visit-step[data-step="inspect"]');
const pictures = (page: Page) => step(page).locator('.photograph');
const captions = (page: Page) => step(page).getByLabel(/^What photograph/);

async function openStep(page: Page): Promise<void> {
  await step(page).locator('h3 button').click();
  await step(page).locator('.photographs').waitFor();
}

async function choose(page: Page, ...files: { name: string; mimeType: string; buffer: Buffer }[]): Promise<void> {
  await step(page).getByLabel('Choose pictures').setInputFiles(files);
}

/** A visit with one photograph and its caption, open at the step. */
async function withPhotograph(): Promise<Page> {
  const page = await open('/visit/', { width: 360 });
  await importVisit(page, visit);
  await openStep(page);
  await choose(page, pictureFile(await cameraPicture(page)));
  await pictures(page).waitFor();
  await captions(page).fill('Core W, chafed at the gland');
  return page;
}

/** The picture as it is drawn: size, and colour at the top and at the bottom. */
const drawn = (page: Page) =>
  pictures(page)
    .first()
    .evaluate(async (image: HTMLImageElement) => {
      await image.decode();
      const canvas = document.createElement('canvas');
      const [width, height] = [image.naturalWidth, image.naturalHeight];
      Object.assign(canvas, { width, height });
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      const colour = (y: number) => {
        const { data } = context.getImageData(0, y - 40, width, 40);
        const mean = (channel: number) => data.filter((_, at) => at % 4 === channel).reduce((sum, one) => sum + one, 0);
        return mean(0) > mean(2) ? 'red' : 'blue';
      };
      return { width, height, top: colour(60), bottom: colour(height - 20) };
    });

async function exported(page: Page): Promise<{ photographs?: { jpeg: string; caption: string }[] }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export as a file' }).click();
  return JSON.parse(await textOf(download));
}

test('a photograph is scaled down, upright, without what the camera wrote, and stays after a reload', async () => {
  const page = await withPhotograph();
  expect(await drawn(page)).toEqual({ width: 800, height: 1600, top: 'red', bottom: 'blue' });
  const { photographs } = await exported(page);
  const jpeg = Buffer.from(photographs?.[0]?.jpeg ?? '', 'base64');
  expect(jpeg.length).toBeGreaterThan(10_000);
  expect(jpeg.length).toBeLessThanOrEqual(150_000);
  expect(markersOf(jpeg)).not.toContain(0xe1);
  expect(jpeg.toString('latin1')).not.toContain('53.5511');
  await page.reload();
  await openStep(page);
  await pictures(page).waitFor();
  await expect.poll(() => captions(page).inputValue()).toBe('Core W, chafed at the gland');
});

test('a caption typed just before the page is left is not lost', async () => {
  const page = await withPhotograph();
  await captions(page).fill('');
  await captions(page).pressSequentially('At the motor');
  await page.goto(address('/tables/'));
  await page.goBack();
  await step(page).waitFor();
  if ((await captions(page).count()) === 0) await openStep(page);
  await expect.poll(() => captions(page).inputValue()).toBe('At the motor');
});

test('what is attached stays when the tab is closed as soon as it is shown', async () => {
  const page = await open('/visit/');
  await importVisit(page, visit);
  const context = page.context();
  const hash = new URL(page.url()).hash;
  await openStep(page);
  await choose(page, pictureFile(await cameraPicture(page)), pictureFile(await cameraPicture(page, 900, 700), 'b.jpg'));
  await pictures(page).first().waitFor();
  await page.close();
  const again = await openIn(context, `/visit/${hash}`);
  await openStep(again);
  await pictures(again).first().waitFor();
});

test('it goes with the file to another device, and not with the link', async () => {
  const page = await withPhotograph();
  await page.getByRole('button', { name: 'Link and QR code' }).click();
  await page.getByText('Photographs are not in the link').waitFor();
  expect(await page.getByLabel('Link', { exact: true }).inputValue()).toContain('#share=');
  const file = await exported(page);
  const other = await open('/visit/');
  await other.locator('#import-file').setInputFiles(fileOf(file, 'visit.txt'));
  await openStep(other);
  await pictures(other).waitFor();
  await expect.poll(() => captions(other).inputValue()).toBe('Core W, chafed at the gland');
  expect(await exported(other).then(({ photographs }) => photographs)).toEqual(file.photographs);
});

test('it is removed only after a question', async () => {
  const page = await withPhotograph();
  await page.getByRole('button', { name: 'Remove photograph 1' }).click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Remove photograph 1');
  expect(await pictures(page).count()).toBe(1);
  await page.getByRole('button', { name: 'Remove photograph 1' }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await expect.poll(() => pictures(page).count()).toBe(0);
  expect((await exported(page)).photographs).toBeUndefined();
});

test('it is deleted with the visit, and comes back with it', async () => {
  const page = await withPhotograph();
  await page.getByRole('link', { name: 'All visits' }).click();
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.visit-list > li > a').click();
  await openStep(page);
  await pictures(page).waitFor();
  await page.getByRole('link', { name: 'All visits' }).click();
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByText('No visits yet.').waitFor();
  const count = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const opening = indexedDB.open('overcurrent-fieldbook');
        opening.onsuccess = () => {
          const counting = opening.result.transaction('photographs').objectStore('photographs').count();
          counting.onsuccess = () => done(counting.result);
        };
      }),
  );
  expect(count).toBe(0);
});

describe('what is no photograph gives a clear message and changes nothing', () => {
  test.each([
    ['a text', { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('Core W') }],
    ['a damaged picture', pictureFile(Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]), 'IMG_2.jpg')],
    ['an empty file', pictureFile(Buffer.alloc(0), 'empty.jpg')],
  ])('%s', async (_what, file) => {
    const page = await withPhotograph();
    await choose(page, file);
    await step(page).getByText(`${file.name} is no picture that this browser can read`).waitFor();
    expect(await pictures(page).count()).toBe(1);
    // The next one is taken all the same.
    await choose(page, pictureFile(await cameraPicture(page, 300, 200), 'next.jpg'));
    await expect.poll(() => pictures(page).count()).toBe(2);
  });
});

test('a full device: the photograph stays in the window, says so, is in the file, and is stored once there is room', async () => {
  const context = await newWindow({ viewport: { width: 820, height: 1000 } });
  await context.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      if (this.name === 'photographs' && 'full' in globalThis) throw new DOMException('', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
  const page = await openIn(context, '/visit/');
  await importVisit(page, visit);
  await openStep(page);
  await page.evaluate(() => Object.assign(globalThis, { full: true }));
  await choose(page, pictureFile(await cameraPicture(page)));
  await step(page).getByText('The storage of this device is full').waitFor();
  await step(page).getByText('Not stored: only in this window').waitFor();
  expect((await exported(page)).photographs).toHaveLength(1);
  await page.getByRole('link', { name: 'All visits' }).click();
  expect(await listed(page)).toHaveLength(1);
  await page.locator('.visit-list > li > a').click();
  await openStep(page);
  await pictures(page).waitFor();
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'full'));
  await step(page).getByRole('button', { name: 'Try again to store' }).click();
  await step(page).getByText('Not stored').waitFor({ state: 'detached' });
  await page.reload();
  await openStep(page);
  await pictures(page).waitFor();
});

test('both ways to attach one are reached by key and by thumb', async () => {
  const page = await open('/visit/', { width: 360 });
  await importVisit(page, visit);
  await openStep(page);
  const take = step(page).getByLabel('Take a photograph');
  expect(await take.getAttribute('capture')).toBe('environment');
  for (const input of [take, step(page).getByLabel('Choose pictures')]) {
    const box = await input.locator('xpath=..').boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(48);
    await input.focus();
    expect(await input.locator('xpath=..').evaluate((label) => getComputedStyle(label).outlineStyle)).toBe('solid');
  }
});
