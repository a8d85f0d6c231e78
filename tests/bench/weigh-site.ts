import type { Browser } from 'playwright-core';
import { kindOf, type PageKind } from './page-kinds.ts';
import { type PageWeight, weighPage } from './page-weight.ts';

export interface WeighedPage extends PageWeight {
  path: string;
  kind: PageKind;
}

/** Pages open at once: most of the time is spent waiting for the network to be idle. */
const atOnce = 4;

/** Opens each page as on a phone's first visit, without the worker, which would fetch the whole site. */
export async function weighSite(browser: Browser, site: string, paths: readonly string[]): Promise<WeighedPage[]> {
  const left = [...paths.entries()];
  const weighed: WeighedPage[] = [];
  const work = async () => {
    for (let next = left.shift(); next !== undefined; next = left.shift()) {
      const [index, path] = next;
      const phone = { viewport: { width: 412, height: 823 }, deviceScaleFactor: 1.75, isMobile: true, hasTouch: true };
      const context = await browser.newContext({ ...phone, serviceWorkers: 'block' });
      const weight = await weighPage(await context.newPage(), site + path.slice(1));
      weighed[index] = { path, kind: kindOf(path), ...weight };
      await context.close();
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return weighed;
}
