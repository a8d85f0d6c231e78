import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';
import { watch } from './watch.ts';

export interface OpenOptions {
  /** Width of the window in CSS pixels: 360 a phone, 820 a shop tablet, 1280 a desk. */
  width?: number;
  scheme?: 'light' | 'dark';
  /** False: the visitor's browser runs no script. */
  script?: boolean;
  /** Anything else that playwright's context takes. */
  context?: Parameters<Browser['newContext']>[0];
}

let connected: Promise<Browser> | undefined;

/** The one browser of the run. */
export function browser(): Promise<Browser> {
  connected ??= chromium.connect(inject('browser'));
  return connected;
}

/**
 * Opens a page of the site, e.g. `open('/calculators/bridge/', { width: 360 })`, in a window of its own without
 * cookies or storage of earlier tests. Call it inside a test: the window is closed at its end, and the test fails
 * when the page logged an error, threw, missed a file, broke the security policy or asked another host.
 */
export async function open(path: string, options: OpenOptions = {}): Promise<Page> {
  const { width = 1280, scheme = 'light', script = true } = options;
  const context = await (await browser()).newContext({
    viewport: { width, height: width < 800 ? 800 : 1000 },
    colorScheme: scheme,
    javaScriptEnabled: script,
    reducedMotion: 'reduce',
    // Each window would fetch the whole site for itself; offline.test.ts is about that.
    serviceWorkers: 'block',
    ...options.context,
  });
  const page = await openIn(context, path);
  onTestFinished(() => context.close());
  return page;
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
