import type { TestProject } from 'vitest/node';
import { launchBrowser } from '../../tools/browser.ts';
import { buildSite } from '../../tools/build.ts';
import { isBuildCurrent } from '../../tools/build-age.ts';
import { siteBase, siteFolder } from '../../tools/paths.ts';
import { serveSite } from '../../tools/serve.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the served site, with a slash at the end. */
    site: string;
    /** The same, with a worker that keeps nothing on the device. */
    siteWithIdleWorker: string;
    /** Where the one browser of the run listens. */
    browser: string;
  }
}

/** Before all browser tests: a current build, a server for it, one browser. FIELDBOOK_BUILD=always builds anyway. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const wanted = process.env.FIELDBOOK_BUILD === 'always' || !isBuildCurrent();
  if (wanted && !(await buildSite())) throw new Error('The site does not build, so there is nothing to test.');
  const served = { folder: siteFolder, base: siteBase, port: 0, host: 'localhost' };
  const site = await serveSite(served);
  const idle = await serveSite({ ...served, worker: 'idle' });
  const browser = await lastingBrowser();
  project.provide('site', site.address);
  project.provide('siteWithIdleWorker', idle.address);
  project.provide('browser', browser.address);
  return async () => {
    await browser.close();
    await site.close();
    await idle.close();
  };
}

/** A browser that is replaced by another one at the same address when it ends by itself. */
async function lastingBrowser(): Promise<{ address: string; close: () => Promise<void> }> {
  let running = await launchBrowser();
  let closing = false;
  const address = running.wsEndpoint();
  const { port, pathname } = new URL(address);
  const replaceAtEnd = () =>
    running.once('close', async () => {
      if (closing) return;
      console.error(`The browser has ended by itself. Another one is started.`);
      running = await launchBrowser({ port: Number(port), wsPath: pathname });
      replaceAtEnd();
    });
  replaceAtEnd();
  return {
    address,
    close: () => {
      closing = true;
      return running.close();
    },
  };
}
