import type { Page } from 'playwright-core';
import budgets from './budgets.json' with { type: 'json' };
import type { Bench, Measured } from './measured.ts';
import { withSite } from './with-site.ts';

/** A shop tablet some years old compared with this machine. */
const slowdown = 4;
/** Each key changes the verdict. */
const keys = ['4', 'M', 'Backspace', 'k', 'Backspace', 'M', 'Backspace', 'k', 'Backspace', 'M'];

interface Stopwatch {
  marks: { key: number; echo: number; judging: number; verdict: number };
}

/** In the page: when a key was pressed, when the pause after it was over, and when the form and the verdict changed. */
function stopwatch(): void {
  const marks = { key: 0, echo: 0, judging: 0, verdict: 0 };
  (globalThis as unknown as Stopwatch).marks = marks;
  const later = globalThis.setTimeout;
  const timed = (work: () => void, pause = 0) =>
    later(() => {
      if (pause > 100) marks.judging = performance.now();
      work();
    }, pause);
  globalThis.setTimeout = timed as typeof setTimeout;
  addEventListener('keydown', () => {
    marks.key = performance.now();
    marks.echo = 0;
  });
  const seen = (changes: MutationRecord[], selector: string) =>
    changes.some(({ target }) => (target instanceof Element ? target : target.parentElement)?.closest(selector));
  new MutationObserver((changes) => {
    if (seen(changes, '.verdict')) marks.verdict = performance.now();
    if (marks.echo === 0 && seen(changes, '.field')) marks.echo = performance.now();
  }).observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
}

const median = (times: number[]) => times.sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN;

/** The median of several keys: to the echo beside the field, and from the end of the pause to the verdict. */
async function typical(page: Page): Promise<{ echo: number; verdict: number }> {
  const times: Stopwatch['marks'][] = [];
  for (const key of keys) {
    await page.keyboard.press(key);
    await page.waitForTimeout(1200);
    const { marks } = await page.evaluate(() => ({ marks: (globalThis as unknown as Stopwatch).marks }));
    times.push(marks);
  }
  if (times.some(({ key, judging, verdict }) => judging < key || verdict < judging))
    throw new Error('A key changed nothing in the verdict.');
  return {
    echo: median(times.map(({ key, echo }) => echo - key)),
    verdict: median(times.map(({ judging, verdict }) => verdict - judging)),
  };
}

/** Each with its example filled in, so that all of it is judged, and the field that is typed into. */
const forms = { bridge: 'bridge-plusU', insulation: 'insulation-U', isolation: 'isolation-joinedU' };

export const bench: Bench = {
  name: `A key in a calculator, CPU slowed ${slowdown} times; the verdict waits for a pause in typing, which is not counted`,
  run: () =>
    withSite(async (browser, site) => {
      const lines: Measured[] = [];
      for (const [name, field] of Object.entries(forms)) {
        const page = await browser.newPage({ serviceWorkers: 'block' });
        await page.addInitScript(stopwatch);
        await page.goto(`${site}calculators/${name}/#case=marrow-bay-lift`);
        await page.waitForSelector('[data-live]');
        const debug = await page.context().newCDPSession(page);
        await debug.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
        await page.locator(`#${field}`).fill('');
        const { echo, verdict } = await typical(page);
        const budget = budgets.keypress.milliseconds;
        lines.push({ what: `${name}: key to echo, median of ${keys.length}`, value: echo, unit: 'ms', budget });
        lines.push({ what: `${name}: end of the pause to verdict`, value: verdict, unit: 'ms', budget });
        await page.close();
      }
      return lines;
    }),
};
