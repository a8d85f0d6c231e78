import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';
import { patience } from '../../tools/browser.ts';
import { BrowserEnded } from './ended.ts';
import { watch } from './watch.ts';

export interface OpenOptions {
  /** Width of the window in CSS pixels: 360 a phone, 820 a shop tablet, 1280 a desk. */
  width?: number;
  scheme?: 'light' | 'dark';
  /** False: the visitor's browser runs no script. */
  script?: boolean;
  /** Anything else that playwright's context takes. */
  context?: WindowOptions;
}

type WindowOptions = Parameters<Browser['newContext']>[0];

let connected: Promise<Browser> | undefined;

/** The one browser of the run. */
function browser(): Promise<Browser> {
  connected ??= connect();
  return connected;
}

/** When it has ended by itself, another one listens at the same address after a moment. */
async function connect(): Promise<Browser> {
  for (const end = Date.now() + patience; ; ) {
    try {
      return await chromium.connect(inject('browser'));
    } catch (error) {
      if (Date.now() > end) throw error;
      await new Promise((done) => setTimeout(done, 200));
    }
  }
}

/** The connection outlives the browser, so it is asked for something that it can't know by itself. */
async function answers(running: Browser): Promise<boolean> {
  const asking = running.newBrowserCDPSession().then((session) => session.detach());
  return asking.then(
    () => true,
    () => false,
  );
}

/** A window of its own, without cookies or storage of earlier tests. It is closed at the end of the test. */
export async function newWindow(
  options: WindowOptions = {},
  atEnd: (close: () => Promise<void>) => unknown = onTestFinished,
): Promise<BrowserContext> {
  if (!(await answers(await browser()))) connected = connect();
  const running = await browser();
  const context = await running.newContext(options);
  context.setDefaultTimeout(patience);
  let crashed = false;
  context.on('page', (page) =>
    page.on('crash', () => {
      crashed = true;
    }),
  );
  atEnd(async () => {
    await context.close();
    if (crashed || !(await answers(running))) throw new BrowserEnded('Chromium');
  });
  return context;
}

/**
 * Opens a page of the site, e.g. `open('/calculators/bridge/', { width: 360 })`, in a window of its own. Call
 * it inside a test: the test fails when the page logged an error, threw, missed a file, broke the security policy or asked another host.
 */
export async function open(path: string, options: OpenOptions = {}): Promise<Page> {
  const { width = 1280, scheme = 'light', script = true } = options;
  const context = await newWindow({
    viewport: { width, height: width < 800 ? 800 : 1000 },
    colorScheme: scheme,
    javaScriptEnabled: script,
    reducedMotion: 'reduce',
    // Each window would fetch the whole site for itself; offline.test.ts is about that.
    serviceWorkers: 'block',
    ...options.context,
  });
  return openIn(context, path);
}

/** Another page in the same window, with its storage: a second tab. */
export async function openIn(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  const site = inject('site');
  const problems = watch(page, new URL(site).host);
  onTestFinished(() => expect(problems, `problems on ${path}`).toEqual([]));
  await page.goto(address(path), { waitUntil: 'load' });
  return page;
}

/** The full address of a path of the site, below whatever base it is served at. */
export function address(path: string): string {
  return inject('site') + path.replace(/^\//, '');
}
