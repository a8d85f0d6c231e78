import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { addOfflineUse, bundledWorker } from '../../src/offline/build-worker.ts';
import { ShippedPackages } from '../../src/shipped/licences.ts';
import { kindOf } from '../bench/page-kinds.ts';
import { siteBase, siteFolder } from '../tools/paths.ts';
import { type ServedSite, serveSite } from '../tools/serve.ts';
import { redirects } from '../tools/site-addresses.ts';
import { builtPages } from './support/built-pages.ts';
import { typeInto } from './support/keyboard.ts';
import { newWindow } from './support/open.ts';
import { typeWords } from './support/search.ts';
import { Visitor } from './support/visitor.ts';

// In the electrical room there is no network. These tests stop the server, change the site, and throw the store away.

interface Device {
  go: (path: string, page?: Page) => Promise<Page>;
  /** The network is gone. */
  stop: () => Promise<void>;
  /** The same address serves another build from now on. */
  serve: (folder: string) => Promise<void>;
}

type AtEnd = (end: () => Promise<void>) => unknown;

/** A browser that has opened the front page once and waited until the site was on the device. */
async function device(folder = siteFolder, atEnd: AtEnd = onTestFinished): Promise<Device> {
  let site: ServedSite = await serveSite({ folder, base: siteBase, port: 0, host: 'localhost' });
  const { address, port } = site;
  atEnd(() => site.close());
  const context = await newWindow({ viewport: { width: 820, height: 1000 }, reducedMotion: 'reduce' }, atEnd);
  const go = async (path: string, page?: Page) => {
    const tab = page ?? (await context.newPage());
    await tab.goto(address + path.replace(/^\//, ''));
    return tab;
  };
  const first = await go('/');
  await first.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await first.close();
  const serve = async (other: string) => {
    await site.close();
    site = await serveSite({ folder: other, base: siteBase, port, host: 'localhost' });
  };
  return { go, stop: () => site.close(), serve };
}

const stored = (page: Page) =>
  page.evaluate(async () => {
    const names = await caches.keys();
    const counts = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length));
    return counts.reduce((sum, count) => sum + count, 0);
  });

describe('with the server gone', () => {
  const ends: (() => Promise<void>)[] = [];
  let go: Device['go'];
  beforeAll(async () => {
    const { go: open, stop } = await device(siteFolder, (end) => ends.push(end));
    await stop();
    go = open;
  });
  afterAll(async () => {
    for (const end of ends.reverse()) await end();
  });

  test('every page opens, also those that were never visited', async () => {
    const page = await go('/');
    const paths = builtPages();
    expect(paths.length).toBeGreaterThan(15);
    // The worker answers a script as it answers a visitor, and sooner: one page of each kind is opened for the rest.
    const headings = await page.evaluate(
      async (addresses) => {
        const found: Record<string, number> = {};
        for (const address of addresses) {
          const text = await fetch(address).then((response) => response.text());
          found[address] = text.split('<h1').length - 1;
        }
        return found;
      },
      paths.map((path) => siteBase + path.slice(1)),
    );
    expect(headings).toEqual(Object.fromEntries(paths.map((path) => [siteBase + path.slice(1), 1])));
    const kinds = new Map(paths.map((path) => [kindOf(path), path]));
    expect(kinds.size).toBe(5);
    for (const path of kinds.values()) {
      await go(path, page);
      expect(await page.locator('h1').count(), path).toBe(1);
    }
    await go('/no-such-page/', page);
    expect(await page.locator('h1').textContent()).toContain('no page at this address');
  });

  test('a calculator judges, the search finds, and a visit is kept over a closed tab', async () => {
    const page = await go('/calculators/winding/');
    await page.waitForSelector('[data-live]');
    await page.fill('#winding-UV', '1.200 Ω');
    await page.fill('#winding-VW', '1.210 Ω');
    await page.fill('#winding-WU', 'OL');
    await page.waitForSelector('.verdict[data-verdict="no-go"]');
    await page.keyboard.press('Tab');
    await go('/articles/', page);
    await page.keyboard.press('/');
    await typeWords(page, 'dew point');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/articles|calculators|tables|glossary/);
    const visit = await go('/visit/');
    await new Visitor(visit).start('Line 2 gantry', 'Lift');
    await visit.close();
    const again = await go('/visit/');
    await again.waitForSelector('text=Line 2 gantry');
  });

  test('by keyboard, from the front page to a verdict', async () => {
    const page = await go('/');
    await page.getByRole('link', { name: /I have readings/ }).press('Enter');
    await page.waitForURL(/\/calculators\/$/);
    await page.locator('main a[href$="/calculators/insulation/"]').first().press('Enter');
    await page.waitForSelector('[data-live]');
    await typeInto(page, { occasion: true, 'insulation-together': '3M' });
    await page.waitForSelector('.verdict[data-verdict="undecided"]');
  });
});

describe('when the site changes', () => {
  /** The same site as it would be after a new build: every page says so. */
  async function nextVersion(): Promise<string> {
    const folder = mkdtempSync(join(tmpdir(), 'fieldbook-next-'));
    cpSync(siteFolder, folder, { recursive: true });
    for (const file of globSync('**/*.html', { cwd: folder })) {
      const html = readFileSync(join(folder, file), 'utf8');
      writeFileSync(join(folder, file), html.replace('<body>', '<body data-version="next">'));
    }
    await addOfflineUse(folder, bundledWorker(new ShippedPackages()));
    return folder;
  }

  /** A device with the old version, and the moment at which the server begins to serve the next one. */
  async function changing() {
    const next = await nextVersion();
    onTestFinished(() => rmSync(next, { recursive: true, force: true }));
    const { go, serve } = await device();
    return { go, change: () => serve(next) };
  }

  const version = (page: Page) => page.locator('body').getAttribute('data-version');
  const lookForUpdate = (page: Page) =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
    });

  test('the old version stays whole until the person changes over, then all of it is new', async () => {
    const { go, change } = await changing();
    const page = await go('/articles/');
    const other = await go('/tables/');
    await change();
    await lookForUpdate(page);
    await page.waitForSelector('[data-update-notice]:not([hidden])');
    // Pages never opened before still come from the old version.
    expect(await version(await go('/calculators/', page))).toBeNull();
    await page.waitForSelector('[data-update-notice]:not([hidden])');
    await page.getByRole('button', { name: 'Change over now' }).click();
    await page.waitForSelector('body[data-version="next"]');
    await other.waitForSelector('body[data-version="next"]');
    expect(await version(await go('/sources/', page))).toBe('next');
  });

  test('an open visit is not interrupted: asked or not, it keeps its version', async () => {
    const { go, change } = await changing();
    const visit = await go('/visit/');
    const page = await go('/articles/');
    await change();
    await lookForUpdate(page);
    await visit.waitForSelector('[data-update-notice]:not([hidden])');
    expect(await visit.locator('[data-update-notice]').getByRole('button').isVisible()).toBe(false);
    await page.waitForSelector('[data-update-notice]:not([hidden])');
    await page.getByRole('button', { name: 'Change over now' }).click();
    await page.waitForSelector('text=open in another tab');
    expect(await version(visit)).toBeNull();
    expect(await version(await go('/tables/', page))).toBeNull();
  });

  test('a server that changes while the site is being fetched leaves no mixture', async () => {
    const { go, change } = await changing();
    const page = await go('/articles/');
    // The store is empty, and the old list meets the files of the next version: none of them may be taken for it.
    await change();
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    await page.reload();
    // The page asked the old worker to mend its store, and the worker of the next version has fetched all of its files.
    await page.waitForSelector('[data-update-notice]:not([hidden])');
    const pages = await page.evaluate(async () => {
      const found: { path: string; isNext: boolean }[] = [];
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
          const text = await (await cache.match(request))?.text();
          if (text?.includes('<body')) {
            found.push({ path: new URL(request.url).pathname, isNext: text.includes('data-version="next"') });
          }
        }
      }
      return found;
    });
    // Each page once: under the key of the old version there is none with the content of the next.
    expect(pages.map(({ path }) => path).sort()).toEqual(
      [...builtPages(), ...redirects()].map((path) => siteBase + path.slice(1)).sort(),
    );
    expect(pages.filter(({ isNext }) => !isNext)).toEqual([]);
  });
});

describe('when the browser has thrown the store away', () => {
  test('the site works from the network, and is back on the device for the next time without one', async () => {
    const { go, stop } = await device();
    const page = await go('/articles/');
    const before = await stored(page);
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    await go('/tables/', page);
    expect(await page.locator('h1').count()).toBe(1);
    await expect.poll(() => stored(page)).toBe(before);
    await stop();
    await go('/sources/', page);
    expect(await page.locator('h1').count()).toBe(1);
  });
});
