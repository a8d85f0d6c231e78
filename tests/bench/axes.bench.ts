import type { Page } from 'playwright-core';
import budgets from './budgets.json' with { type: 'json' };
import { inventedVisit, readingsEach } from './invented-visits.ts';
import type { Bench } from './measured.ts';
import { withSite } from './with-site.ts';

/** A shop tablet some years old compared with this machine. */
const slowdown = 4;
const axes = 100;
const visitsEach = 20;
const runs = 5;

interface Marks {
  live: number;
  list: number;
  click: number;
  history: number;
}

/** In the page: when the register was mounted, when its list stood there, when an axis was chosen and its history stood. */
function stopwatch(): void {
  const marks: Marks = { live: 0, list: 0, click: 0, history: 0 };
  (globalThis as unknown as { marks: Marks }).marks = marks;
  addEventListener('click', () => {
    marks.click = performance.now();
  });
  new MutationObserver(() => {
    const now = performance.now();
    if (marks.live === 0 && document.querySelector('[data-axes][data-live]')) marks.live = now;
    if (marks.list === 0 && document.querySelector('.axis-list > li')) marks.list = now;
    if (marks.click > 0 && marks.history === 0 && document.querySelector('.axis-series')) marks.history = now;
  }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['data-live'] });
}

const marksOf = (page: Page) => page.evaluate(() => (globalThis as unknown as { marks: Marks }).marks);

/** Puts the visits where the site keeps them, as many tablets' files would come in. */
async function fill(page: Page): Promise<void> {
  for (let axis = 0; axis < axes; axis++) {
    const records = Array.from({ length: visitsEach }, (_, visit) => inventedVisit(axis, visit));
    await page.evaluate(
      ({ rows }) =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('overcurrent-fieldbook');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const tx = opening.result.transaction('visits', 'readwrite');
            for (const row of rows) tx.objectStore('visits').put(row);
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
      { rows: records.map((record, visit) => ({ id: record.id, order: axis * visitsEach + visit + 1, record })) },
    );
  }
}

const median = (times: number[]) => times.sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN;

export const bench: Bench = {
  name: `The register of axes with ${axes * visitsEach} visits, CPU slowed ${slowdown} times`,
  run: () =>
    withSite(async (browser, site) => {
      const page = await browser.newPage({ serviceWorkers: 'block' });
      await page.goto(`${site}visit/`);
      await page.waitForSelector('.visit-list[data-ready]', { state: 'attached' });
      await page.goto(`${site}tables/`);
      await fill(page);
      await page.addInitScript(stopwatch);
      await page.goto(`${site}axes/`);
      await page.waitForSelector('.axis-list > li', { timeout: 120_000 });
      const first = await marksOf(page);
      const debug = await page.context().newCDPSession(page);
      await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
      const lists: number[] = [];
      const histories: number[] = [];
      for (let run = 0; run < runs; run++) {
        await page.goto(`${site}tables/`);
        await page.goto(`${site}axes/`);
        await page.waitForSelector('.axis-list > li');
        await page.click(`.axis-list > li:nth-child(${run + 1}) > a`);
        await page.waitForSelector('.axis-series');
        const { live, list, click, history } = await marksOf(page);
        lists.push(list - live);
        histories.push(history - click);
      }
      const budget = budgets.axes.milliseconds;
      return [
        { what: 'readings in the register', value: axes * visitsEach * readingsEach, unit: '', least: 50_000 },
        { what: 'first reading of all visits, not slowed', value: first.list - first.live, unit: 'ms' },
        { what: `list, median of ${runs}`, value: median(lists), unit: 'ms', budget },
        {
          what: `history of an axis with ${visitsEach} visits, from the tap`,
          value: median(histories),
          unit: 'ms',
          budget,
        },
      ];
    }),
};
