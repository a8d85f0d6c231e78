import type { Locator, Page } from 'playwright-core';
import { address } from './open.ts';

/** Types into the search box, which has the focus, and waits for the answer to these words. */
export async function typeWords(page: Page, words: string): Promise<void> {
  await page.keyboard.type(words);
  // A person who pauses while typing is answered early; the list says which words it answers.
  await page.locator(`#search-panel[data-answers="${words}"]`).waitFor();
}

/** Paths of the pages in the list, best first, as written from the front page of the site. */
export async function pagesFound(page: Page): Promise<string[]> {
  const pages = page.locator('#search-panel .search-page, #search-panel li > a:not([class])');
  const links = await pages.evaluateAll((found) => found.map((link) => (link as HTMLAnchorElement).href));
  return links.map((link) => link.replace(address('/'), '/'));
}

/** Id, or else class, of what has the focus. */
export function focused(page: Page): Promise<string> {
  return page.evaluate(() => document.activeElement?.id || (document.activeElement?.className ?? ''));
}

/** Whether the whole element stands in the window. */
export async function seesWholly(page: Page, element: Locator): Promise<boolean> {
  const box = await element.boundingBox();
  const height = page.viewportSize()?.height ?? 0;
  return box !== null && box.y >= 0 && box.y + box.height <= height;
}
