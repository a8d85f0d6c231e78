import { text } from 'node:stream/consumers';
import type { Download, Page } from 'playwright-core';
import type { VisitRecord } from '../../../src/visit/record/visit-schema.ts';

/** A file as the browser's chooser takes it. */
export function fileOf(content: unknown, name = 'visit.json') {
  const written = typeof content === 'string' ? content : JSON.stringify(content);
  return { name, mimeType: 'application/json', buffer: Buffer.from(written) };
}

/** Brings a visit onto the device as a person does, by its file, and opens it. */
export async function importVisit(page: Page, visit: VisitRecord): Promise<void> {
  await page.locator('#import-file').setInputFiles(fileOf(visit));
  await page.waitForURL(/#visit=/);
  await page.locator('.visit-steps').waitFor();
}

/** The names of the visits in the list, once it has been read. */
export async function listed(page: Page): Promise<string[]> {
  await page.locator('.visit-list[data-ready]').waitFor({ state: 'attached' });
  return page.locator('.visit-list > li > a').allTextContents();
}

/** What the browser was given to keep. */
export async function textOf(download: Promise<Download>): Promise<string> {
  return text(await (await download).createReadStream());
}
