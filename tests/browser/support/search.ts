import type { Locator, Page } from 'playwright-core';
import { address } from './open.ts';

/** Types into the search box, which has the focus, and waits for the whole answer to these words. */
export async function typeWords(page: Page, words: string): Promise<void> {
  await page.keyboard.type(words);
  await answered(page, words);
}

/** Puts words into the box at once, in place of those that are there. */
export async function replaceWords(page: Page, words: string): Promise<void> {
  await page.locator('#search-words').fill(words);
  await answered(page, words);
}

/** A person who pauses while typing is answered early; the list says which words it answers. */
async function answered(page: Page, words: string): Promise<void> {
  await page.locator(`#search-panel[data-answers="${words}"]`).waitFor();
}

/** Addresses of the answers, best first, as written from the front page of the site. */
export async function pagesFound(page: Page): Promise<string[]> {
  return (await answersFound(page)).map(([first = '']) => first);
}

/** The answers, best first: the address of each, then those of the headings that are shown below it. */
export async function answersFound(page: Page): Promise<string[][]> {
  const links = await page
    .locator('#search-panel a')
    .evaluateAll((found) => found.map((link) => ({ url: (link as HTMLAnchorElement).href, kind: link.className })));
  const answers: string[][] = [];
  for (const { url, kind } of links) {
    const path = url.replace(address('/'), '/');
    if (kind === 'search-page') answers.push([path]);
    else answers.at(-1)?.push(path);
  }
  return answers;
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
