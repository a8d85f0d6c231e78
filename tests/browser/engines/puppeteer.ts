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
import { launchArguments, patience } from '../../tools/browser.ts';
import type { FoundEngine } from '../../tools/engines.ts';
import { BrowserEnded } from '../support/ended.ts';
import type { RawDevice, RawEngine, RawPage } from './raw.ts';

/**
 * Chromium and Firefox. Unlike the driver of the other browser tests, this one leaves the browser's cache for back and
 * forward switched on, as people have it.
 */
export function puppeteerEngine(found: FoundEngine): RawEngine {
  let shared: Launched | undefined;
  /** The one browser of the test file, or another one if that has ended. */
  const running = async () => {
    if (shared && !shared.browser.connected) {
      console.error(`${found.name} has ended. Another one is started.`);
      await shared.kill();
      shared = undefined;
    }
    shared ??= await start(found);
    return shared;
  };
  return {
    startsBrowsers: false,
    device: async () => {
      const launched = await running();
      const context = await launched.browser.createBrowserContext();
      return deviceOf(found, launched, context, () => context.close());
    },
    ownBrowser: async (profile) => {
      const launched = await start(found, profile);
      const { browser, close } = launched;
      const [context = browser.defaultBrowserContext()] = browser.browserContexts();
      return deviceOf(found, launched, context, close);
    },
    close: async () => (shared?.browser.connected ? shared.close() : shared?.kill()),
  };
}

interface Launched {
  browser: Browser;
  close: () => Promise<void>;
  kill: () => Promise<void>;
}

function deviceOf(
  { name }: FoundEngine,
  { browser, kill }: Launched,
  context: BrowserContext,
  close: () => Promise<void>,
): RawDevice {
  let crashed = false;
  const hasEnded = () => crashed || !browser.connected;
  return {
    newPage: async () => {
      const page = await context.newPage();
      page.on('error', () => {
        crashed = true;
      });
      return rawPage(page, (error) => (hasEnded() ? new BrowserEnded(name) : error));
    },
    close: async () => {
      const ended = hasEnded();
      if (browser.connected) await close();
      if (ended) throw new BrowserEnded(name);
    },
    kill,
  };
}

/** `profile`: a folder that stays; without it, one that goes with the browser. */
async function start({ name, path }: FoundEngine, profile?: string): Promise<Launched> {
  // Firefox as root wants a home folder that root owns; for all, nothing of the person at this machine gets in.
  const home = mkdtempSync(join(tmpdir(), 'fieldbook-home-'));
  const options: LaunchOptions = {
    executablePath: path,
    headless: true,
    timeout: patience,
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
  if (process === null || process.exitCode !== null || process.signalCode !== null) return;
  const gone = new Promise((done) => process.once('exit', done));
  process.kill('SIGKILL');
  await gone;
  // The driver then puts the profile's settings back as they were; a start in between would miss them.
  await new Promise((done) => setTimeout(done, 1000));
}

/** `reason` gives what is to be thrown when the page does not answer. */
function rawPage(page: Page, reason: (error: unknown) => unknown): RawPage {
  const keyboard = page.keyboard;
  return {
    goto: async (url) => void (await page.goto(url, { waitUntil: 'load', timeout: patience })),
    evaluate: (run, ...args) =>
      page.evaluate(run as (...args: unknown[]) => never, ...args).catch((error: unknown) => {
        throw reason(error);
      }),
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
