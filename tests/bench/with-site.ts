import { type Browser, chromium } from 'playwright-core';
import { launchBrowser } from '../tools/browser.ts';
import { buildSite } from '../tools/build.ts';
import { isBuildCurrent } from '../tools/build-age.ts';
import { siteBase, siteFolder } from '../tools/paths.ts';
import { serveSite } from '../tools/serve.ts';

/** Gives the work a browser and a served site: the built one, or another folder. */
export async function withSite<Result>(
  work: (browser: Browser, site: string) => Promise<Result>,
  folder?: string,
): Promise<Result> {
  if (folder === undefined && !isBuildCurrent() && !(await buildSite())) throw new Error('The site does not build.');
  const base = folder === undefined ? siteBase : '/';
  const site = await serveSite({ folder: folder ?? siteFolder, base, port: 0, host: 'localhost' });
  const server = await launchBrowser();
  const browser = await chromium.connect(server.wsEndpoint());
  try {
    return await work(browser, site.address);
  } finally {
    await browser.close();
    await server.close();
    await site.close();
  }
}
