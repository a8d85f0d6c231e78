import { expect, test } from 'vitest';
import { motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { newWindow, open, openIn } from './support/open.ts';
import { fileOf, importVisit, textOf } from './support/visit-files.ts';

const visit = visitOf(motorAndCable);

/** Visits on a device whose share sheet ends like this; what it was given is in the window's `handedOver`. */
async function withShareSheet(ends: 'taken' | 'AbortError' | 'NotAllowedError') {
  const context = await newWindow({ viewport: { width: 360, height: 800 } });
  await context.addInitScript((how) => {
    Object.assign(navigator, {
      canShare: ({ files }: { files: File[] }) => files.every(({ type }) => type === 'text/plain'),
      async share({ files: [file] }: { files: File[] }) {
        Object.assign(globalThis, { handedOver: { name: file?.name, text: await file?.text() } });
        if (how !== 'taken') throw new DOMException('', how);
      },
    });
  }, ends);
  const page = await openIn(context, '/visit/');
  await importVisit(page, visit);
  return page;
}

declare const handedOver: { name: string; text: string };

test('the share sheet gets the file, and the file opens the visit on another device', async () => {
  const page = await withShareSheet('taken');
  await page.getByRole('button', { name: 'Share …' }).click();
  await page.getByText('Handed over.').waitFor();
  const { name, text } = await page.evaluate(() => handedOver);
  expect(name).toMatch(/^visit-Marrow-Bay-line-2-invented-Lift-.+\.txt$/);
  const other = await open('/visit/');
  expect(await other.locator('#import-file').getAttribute('accept')).toContain('.txt');
  await other.locator('#import-file').setInputFiles({ ...fileOf(text, name), mimeType: 'text/plain' });
  await other.getByRole('heading', { name: 'Replace: motor and motor cable.' }).waitFor();
});

test('a share sheet that refuses the file: it is saved by download, and the page says so', async () => {
  const page = await withShareSheet('NotAllowedError');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share …' }).click();
  expect(JSON.parse(await textOf(download)).id).toBe(visit.id);
  await page.getByText('The share sheet did not take the file. Saved as visit-Marrow-Bay').waitFor();
});

test('a share sheet that the person closes leaves everything as it was', async () => {
  const page = await withShareSheet('AbortError');
  const downloads: unknown[] = [];
  page.on('download', (one) => downloads.push(one));
  await page.getByRole('button', { name: 'Share …' }).click();
  await expect.poll(() => page.evaluate(() => 'handedOver' in globalThis)).toBe(true);
  expect(await page.getByText('Saved as').count()).toBe(0);
  expect(downloads).toEqual([]);
});

test('without a share sheet there is no button for it, and the export says where the file is', async () => {
  const context = await newWindow();
  await context.addInitScript(() => Object.assign(navigator, { canShare: undefined }));
  const page = await openIn(context, '/visit/');
  await importVisit(page, visit);
  expect(await page.getByRole('button', { name: 'Share …' }).count()).toBe(0);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export as a file' }).click();
  await download;
  await page.getByText('where this browser keeps downloads').waitFor();
});

test('the last word typed before a press on export is in the file', async () => {
  const page = await open('/visit/');
  await importVisit(page, visit);
  await page.getByText('Drive, motor, conditions, notes').click();
  await page.getByLabel('Notes').fill('Water in the gland of W');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export as a file' }).click();
  expect(JSON.parse(await textOf(download)).notes).toBe('Water in the gland of W');
});
