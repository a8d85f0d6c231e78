import { spawnSync } from 'node:child_process';
import { existsSync, globSync } from 'node:fs';
import { findBrowser } from './browser.ts';
import { startDisplay } from './display.ts';

export const engineNames = ['Chromium', 'Firefox', 'WebKitGTK'] as const;
export type EngineName = (typeof engineNames)[number];

export interface FoundEngine {
  name: EngineName;
  /** The browser's program. */
  path: string;
  /** Whether it caches pages for back and forward, as everyday browsers do; the Chromium from npm does not. */
  keepsPages: boolean;
}

interface MissingEngine {
  name: EngineName;
  /** What is missing, and the Debian packages that provide it. */
  missing: string;
}

/** Controls WebKitGTK by the WebDriver protocol. */
export const webkitDriver = process.env.WEBKIT_DRIVER_PATH ?? '/usr/bin/WebKitWebDriver';

const firefoxPaths = ['/usr/bin/firefox-esr', '/usr/bin/firefox', '/Applications/Firefox.app/Contents/MacOS/firefox'];

/** The small browser in the library's package; its folder has the name of the library and the processor. */
const webkitBrowsers = ['/usr/lib/*/webkit*gtk-*/MiniBrowser', '/usr/libexec/webkit*gtk-*/MiniBrowser'];

/** The browser engines of this machine that the tests can use, and the others with what is missing. */
export async function findEngines(): Promise<(FoundEngine | MissingEngine)[]> {
  return [await findChromium(), findFirefox(), findWebKit()];
}

export const isFound = (engine: FoundEngine | MissingEngine): engine is FoundEngine => 'path' in engine;

async function findChromium(): Promise<FoundEngine | MissingEngine> {
  try {
    const { path, from } = await findBrowser();
    return { name: 'Chromium', path, keepsPages: from !== 'npm' };
  } catch (error) {
    return { name: 'Chromium', missing: String(error) };
  }
}

function findFirefox(): FoundEngine | MissingEngine {
  const path = [process.env.FIREFOX_PATH ?? '', ...firefoxPaths].find((candidate) => existsSync(candidate));
  return path
    ? { name: 'Firefox', path, keepsPages: true }
    : { name: 'Firefox', missing: 'no firefox (Debian: firefox-esr)' };
}

function findWebKit(): FoundEngine | MissingEngine {
  const [path] = webkitBrowsers.flatMap((pattern) => globSync(pattern));
  const lacking = [
    path === undefined && 'MiniBrowser (Debian: libwebkit2gtk-4.1-0)',
    !existsSync(webkitDriver) && 'WebKitWebDriver (Debian: webkit2gtk-driver)',
    !existsSync('/usr/bin/Xvfb') && 'Xvfb (Debian: xvfb)',
  ].filter((part) => part !== false);
  if (path === undefined || lacking.length > 0) return { name: 'WebKitGTK', missing: `no ${lacking.join(', no ')}` };
  return { name: 'WebKitGTK', path, keepsPages: true };
}

/** As the browser reports it, e.g. `140.3.1esr`; WebKitGTK's needs a screen for that. */
export async function versionOf({ name, path }: FoundEngine): Promise<string> {
  const display = name === 'WebKitGTK' ? await startDisplay() : undefined;
  const env = { ...process.env, ...(display && { DISPLAY: display.name }) };
  const { stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', env, timeout: 20_000 });
  display?.close();
  return /\d+(\.\w+)+/.exec(stdout ?? '')?.[0] ?? 'of unknown version';
}
