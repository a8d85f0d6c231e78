import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  type Browser,
  type BrowserContext,
  type KeyInput,
  type LaunchOptions,
  launch,
  type Page,
} from 'puppeteer-core';
import { launchArguments } from '../../tools/browser.ts';
import type { FoundEngine } from '../../tools/engines.ts';
import type { RawDevice, RawEngine, RawPage } from './raw.ts';

/**
 * Chromium and Firefox. Unlike the driver of the other browser tests, this one leaves the browser's cache for back and
 * forward switched on, as people have it.
 */
export function puppeteerEngine(found: FoundEngine): RawEngine {
  let shared: Promise<Launched> | undefined;
  return {
    device: async () => {
      shared ??= start(found);
      const { browser } = await shared;
      const context = await browser.createBrowserContext();
      return { newPage: () => newPage(context), close: () => context.close(), kill: notItsOwn };
    },
    ownBrowser: async (profile) => {
      const launched = await start(found, profile);
      const { browser } = launched;
      const [context = browser.defaultBrowserContext()] = browser.browserContexts();
      return { newPage: () => newPage(context), close: launched.close, kill: launched.kill };
    },
    close: async () => (await shared)?.close(),
  };
}

interface Launched {
  browser: Browser;
  close: () => Promise<void>;
  kill: () => Promise<void>;
}

/** `profile`: a folder that stays; without it, one that goes with the browser. */
async function start({ name, path }: FoundEngine, profile?: string): Promise<Launched> {
  // Firefox as root wants a home folder that root owns; for all, nothing of the person at this machine gets in.
  const home = mkdtempSync(join(tmpdir(), 'fieldbook-home-'));
  const options: LaunchOptions = {
    executablePath: path,
    headless: true,
    defaultViewport: null,
    env: { ...process.env, HOME: home, MOZ_DISABLE_CONTENT_SANDBOX: '1' },
    ...(profile && { userDataDir: profile }),
    ...(name === 'Firefox' ? { browser: 'firefox' } : { args: launchArguments }),
  };
  const browser = await launch(options);
  const tidy = () => rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  return {
    browser,
    close: () => browser.close().then(tidy),
    kill: () => killed(browser).then(tidy),
  };
}

/** Resolves when its process has gone; its helpers follow by themselves. */
async function killed(browser: Browser): Promise<void> {
  const process = browser.process();
  if (process === null) return;
  const gone = new Promise((done) => process.once('exit', done));
  process.kill('SIGKILL');
  await gone;
  // The driver then puts the profile's settings back as they were; a start in between would miss them.
  await new Promise((done) => setTimeout(done, 1000));
}

const notItsOwn: RawDevice['kill'] = () => {
  throw new Error('This device shares its browser: ask for one with a browser of its own.');
};

async function newPage(context: BrowserContext): Promise<RawPage> {
  const page = await context.newPage();
  const keyboard = page.keyboard;
  return {
    goto: async (url) => void (await page.goto(url, { waitUntil: 'load' })),
    evaluate: (run, ...args) => page.evaluate(run as (...args: unknown[]) => never, ...args),
    clickAt: (x, y) => page.mouse.click(x, y),
    type: (text) => keyboard.type(text),
    press: async (keys) => {
      const codes = keys.map((key) => (key === 'Space' ? ' ' : key) as KeyInput);
      for (const code of codes) await keyboard.down(code);
      for (const code of codes.toReversed()) await keyboard.up(code);
    },
    resize: (width, height) => page.setViewport({ width, height }),
    problems: watch(page),
    close: () => page.close(),
  };
}

/** The list fills as the page lives. */
function watch(page: Page): string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()} (${message.location().url ?? ''})`);
  });
  page.on('pageerror', (error) => problems.push(`thrown: ${error instanceof Error ? error.message : error}`));
  page.on('response', (response) => {
    // Asked for by the browser itself at some returns to a page, though the page names its icon.
    if (response.url().endsWith('/favicon.ico')) return;
    if (response.status() >= 400) problems.push(`status ${response.status()}: ${response.url()}`);
  });
  return problems;
}
