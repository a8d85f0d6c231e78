import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, inject, onTestFailed, onTestFinished } from 'vitest';
import { type EngineName, type FoundEngine, findEngines, isFound } from '../../tools/engines.ts';
import { puppeteerEngine } from './puppeteer.ts';
import type { RawDevice, RawEngine, RawPage } from './raw.ts';
import { Tab } from './tab.ts';
import { webkitEngine } from './webkit.ts';

/*
 * The same test in Chromium, Firefox and WebKitGTK:
 *
 *   eachEngine((engine) => {
 *     test('a reload keeps the answer', async () => {
 *       const tab = await engine.open('/calculators/bridge/');
 *       await tab.see('[data-live]');                               // the form's script has come
 *       await tab.fill('#bridge-plusU', '482k');                    // or { label: 'DC+ to U' }
 *       await tab.click({ group: 'Motor leads', label: 'Taken off' });
 *       await tab.reload();                                         // back(), forward(), go('/visit/')
 *       expect(await tab.isChecked('[name="motorLeads"][value="off"]')).toBe(true);
 *       expect(await tab.evaluate((id) => document.getElementById(id)?.tagName, 'bridge-plusU')).toBe('INPUT');
 *       await tab.waitFor(() => document.querySelector('.verdict[data-verdict="go"]') !== null);
 *     });
 *   });
 *
 * `engine.open` gives a tab with storage of its own, which no other test sees. Two tabs that share it, or a browser
 * that is killed and started again:
 *
 *   const device = await engine.device();                      const device = await engine.ownDevice();
 *   const first = await device.open('/visit/');                await device.open('/visit/');
 *   const second = await device.open('/visit/');               await device.kill();
 *   await first.close();                                       await device.start();  // on the same profile
 *
 * `engine.openAgain` may take the tab that the last test with `openAgain` left, with all that is stored there: a WebKitGTK
 * for each test takes longer to start than many a test runs. The others open a new one: Firefox's driver waits in vain for
 * a page that is opened in a tab which went back and forward.
 *
 * `ownDevice` is undefined for WebKitGTK, which keeps no profile under automation: name that in a skipped test with
 * `test.skipIf(!engine.ownDevice)`. All closes itself at the end of the test, which fails when a page logged an error
 * or threw. Tests of one file share a browser (WebKitGTK: a display). An engine that isn't there skips by name.
 */

export interface OpenOptions {
  /** Of the page, in CSS pixels. Default 1280 × 1000, 800 high where it is narrower than 800. */
  width?: number;
  height?: number;
  /** True: the worker keeps the whole site on the device, as for readers. Default: it does nothing, for speed. */
  offlineUse?: boolean;
  /** Another server than that of the run; ends with a slash. */
  site?: string;
}

export interface Device {
  /** Another tab, with the storage of this device. */
  open(path: string): Promise<Tab>;
}

export interface OwnDevice extends Device {
  /** Ends the browser at once, as SIGKILL does. */
  kill(): Promise<void>;
  /** Starts it again on the same profile. */
  start(): Promise<void>;
}

export interface Engine {
  name: EngineName;
  /** False where back and forward load the page again each time, as in the Chromium that npm brings. */
  keepsPages: boolean;
  open(path: string, options?: OpenOptions): Promise<Tab>;
  openAgain(path: string, options?: OpenOptions): Promise<Tab>;
  device(options?: OpenOptions): Promise<Device>;
  ownDevice: ((options?: OpenOptions) => Promise<OwnDevice>) | undefined;
}

/**
 * Logged by the search's library when a page is left while its files are on their way. The search loads them again when
 * it is used: see left-while-loading.test.ts. That they come at all, search.test.ts sees.
 */
const searchLeft = 'Failed to load Pagefind metadata';

const engines = await findEngines();

/** A group of tests for each engine; see above. */
export function eachEngine(tests: (engine: Engine) => void): void {
  for (const engine of engines) {
    if (isFound(engine)) describe(engine.name, () => tests(engineFor(engine)));
    else describe.skip(`${engine.name}, not found: ${engine.missing}`, () => tests(absent(engine.name)));
  }
}

export const rawEngine = (found: FoundEngine): RawEngine =>
  found.name === 'WebKitGTK' ? webkitEngine(found) : puppeteerEngine(found);

function engineFor(found: FoundEngine): Engine {
  const raw = rawEngine(found);
  const { ownBrowser } = raw;
  let left: { device: RawDevice; page: RawPage } | undefined;
  const endLeft = async () => {
    const device = left?.device;
    left = undefined;
    await device?.close();
  };
  afterAll(async () => {
    await endLeft();
    await raw.close();
  });
  const device = async (options: OpenOptions = {}): Promise<Device> => {
    const opened = await raw.device();
    onTestFinished(() => opened.close());
    return { open: (path) => openTab(opened, path, options) };
  };
  return {
    name: found.name,
    keepsPages: found.keepsPages,
    device,
    open: async (path, options) => (await device(options)).open(path),
    openAgain: async (path, options = {}) => {
      if (!raw.startsBrowsers) return (await device(options)).open(path);
      // After a failure, the next test begins as the first did.
      onTestFailed(endLeft);
      if (left === undefined) {
        const device = await raw.device();
        left = { device, page: await device.newPage() };
      }
      return openIn(left.page, path, options);
    },
    ownDevice: ownBrowser && ((options = {}) => ownDevice(ownBrowser, options)),
  };
}

async function ownDevice(startBrowser: NonNullable<RawEngine['ownBrowser']>, options: OpenOptions): Promise<OwnDevice> {
  const profile = mkdtempSync(join(tmpdir(), 'fieldbook-profile-'));
  let running: RawDevice | undefined = await startBrowser(profile);
  onTestFinished(async () => {
    await running?.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  });
  return {
    open: (path) => {
      if (running === undefined) throw new Error('The browser has been killed: start it first.');
      return openTab(running, path, options);
    },
    kill: async () => {
      await running?.kill();
      running = undefined;
    },
    start: async () => {
      running ??= await startBrowser(profile);
    },
  };
}

async function openTab(device: RawDevice, path: string, options: OpenOptions): Promise<Tab> {
  return openIn(await device.newPage(), path, options);
}

async function openIn(page: RawPage, path: string, options: OpenOptions): Promise<Tab> {
  const { width = 1280, offlineUse = false, site = inject(offlineUse ? 'site' : 'siteWithIdleWorker') } = options;
  const tab = new Tab(page, site);
  onTestFinished(async () => {
    const problems = (await tab.problemsSoFar()).filter((problem) => !problem.includes(searchLeft));
    expect(problems.join('\n'), `problems on ${path}`).toBe('');
  });
  await tab.resize(width, options.height ?? (width < 800 ? 800 : 1000));
  await tab.go(path);
  return tab;
}

function absent(name: EngineName): Engine {
  const none = () => Promise.reject(new Error(`${name} is not there`));
  return { name, keepsPages: false, open: none, openAgain: none, device: none, ownDevice: none };
}
