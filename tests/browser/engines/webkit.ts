import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Builder, Capabilities, Key, type WebDriver } from 'selenium-webdriver';
import { patience } from '../../tools/browser.ts';
import { type Display, startDisplay } from '../../tools/display.ts';
import { type FoundEngine, webkitDriver } from '../../tools/engines.ts';
import { killGroup, startGroup } from '../../tools/processes.ts';
import { BrowserEnded } from '../support/ended.ts';
import type { RawDevice, RawEngine, RawPage } from './raw.ts';

/**
 * WebKitGTK. Under automation its browser keeps nothing on the disk and takes one session, so each device is a browser
 * of its own, which starts within a second, and no profile outlives it.
 */
export function webkitEngine(found: FoundEngine): RawEngine {
  let display: Promise<Display> | undefined;
  return {
    startsBrowsers: true,
    device: async () => {
      display ??= startDisplay();
      return startDevice(found, await display);
    },
    close: async () => (await display)?.close(),
  };
}

async function startDevice({ path }: FoundEngine, display: Display): Promise<RawDevice> {
  const home = mkdtempSync(join(tmpdir(), 'fieldbook-home-'));
  const port = await freePort();
  // Without the media plugins, all of which a browser with a new home would look through: no page plays anything.
  const alone = { HOME: home, XDG_CACHE_HOME: home, XDG_DATA_HOME: home, GST_PLUGIN_SYSTEM_PATH_1_0: '' };
  const env = { ...process.env, ...alone, DISPLAY: display.name, NO_AT_BRIDGE: '1', GTK_A11Y: 'none' };
  const server = startGroup(webkitDriver, [`--port=${port}`], env);
  const session = await startSession(port, path).catch((error) => {
    killGroup(server);
    throw error;
  });
  const end = async () => {
    killGroup(server);
    rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  let first: string | undefined = await session.getWindowHandle();
  return {
    newPage: async () => {
      if (first === undefined) await session.switchTo().newWindow('tab');
      first = undefined;
      return pageOf(session, await session.getWindowHandle());
    },
    close: async () => {
      // One tab at least is always left.
      const windows = await session.getAllWindowHandles().catch(() => []);
      await session.quit().catch(() => undefined);
      await end();
      if (windows.length === 0) throw new BrowserEnded('WebKitGTK');
    },
    kill: end,
  };
}

/** The driver's program takes a moment to listen. */
async function startSession(port: number, binary: string): Promise<WebDriver> {
  const server = `http://127.0.0.1:${port}`;
  for (const end = Date.now() + patience; Date.now() < end; ) {
    const answered = await fetch(`${server}/status`).then(
      () => true,
      () => new Promise<false>((done) => setTimeout(() => done(false), 50)),
    );
    if (answered) break;
  }
  const capabilities = new Capabilities()
    .setBrowserName('MiniBrowser')
    .set('webkitgtk:browserOptions', { binary, args: ['--automation'] });
  return new Builder().usingServer(server).withCapabilities(capabilities).build();
}

function pageOf(session: WebDriver, handle: string): RawPage {
  const problems: string[] = [];
  /** One window is driven at a time. */
  const here = async () => {
    if ((await session.getWindowHandle().catch(() => '')) !== handle) await session.switchTo().window(handle);
    return session;
  };
  const keys = async (act: (actions: ReturnType<WebDriver['actions']>) => ReturnType<WebDriver['actions']>) =>
    act((await here()).actions()).perform();
  return {
    goto: async (url) => {
      await (await here()).get(url);
      await ready(session);
    },
    evaluate: async (run, ...args) => {
      const answer = (await (await here()).executeAsyncScript(runner(String(run)), ...args)) as Answer;
      problems.push(...answer.problems);
      if (answer.thrown !== undefined) throw new Error(answer.thrown);
      return answer.value as never;
    },
    clickAt: async (x, y) =>
      keys((actions) => actions.move({ x: Math.round(x), y: Math.round(y), duration: 0 }).click()),
    type: async (text) => keys((actions) => actions.sendKeys(text)),
    press: async (names) =>
      keys((actions) => {
        const codes = names.map((name) => keyCodes[name] ?? name);
        for (const code of codes) actions.keyDown(code);
        for (const code of codes.toReversed()) actions.keyUp(code);
        return actions;
      }),
    resize: async (width, height) => resize(await here(), width, height),
    problems,
    close: async () => close(await here(), handle),
  };
}

interface Answer {
  value?: unknown;
  thrown?: string;
  problems: string[];
}

/** Awaits the function in the protocol's own way, and brings along what has gone wrong in the page since the last one. */
function runner(run: string): string {
  return `const args = [...arguments];
    const done = args.pop();
    const problems = (${collect})();
    Promise.resolve().then(() => (${run})(...args)).then(
      (value) => done({ value, problems }),
      (error) => done({ thrown: String(error), problems }),
    );`;
}

/**
 * Runs in the page. The protocol tells nothing of the console: from the first script of a test on, a page notes its
 * errors itself. Those before, and files that are missing, are left to the other engines.
 */
function collect(): string[] {
  const page = globalThis as { problemsOfTest?: string[] };
  if (page.problemsOfTest === undefined) {
    const noted: string[] = [];
    page.problemsOfTest = noted;
    const log = console.error;
    console.error = (...words: unknown[]) => {
      noted.push(`console: ${words.join(' ')}`);
      log(...words);
    };
    addEventListener('error', ({ message }) => noted.push(`thrown: ${message}`));
    addEventListener('unhandledrejection', ({ reason }) => noted.push(`thrown: ${reason}`));
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      noted.push(`against the security policy: ${violatedDirective} ${blockedURI}`),
    );
  }
  return page.problemsOfTest.splice(0);
}

/** The browser ends with its last tab, so an empty one is left in its place. */
async function close(session: WebDriver, handle: string): Promise<void> {
  if ((await session.getAllWindowHandles()).length === 1) {
    await session.switchTo().newWindow('tab');
    await session.switchTo().window(handle);
  }
  await session.close();
  const [other = ''] = await session.getAllWindowHandles();
  await session.switchTo().window(other);
}

/** Keys that come before the page has the focus and is drawn are lost; a person waits until it is seen. */
async function ready(session: WebDriver): Promise<void> {
  await session.executeAsyncScript(`const done = arguments[0];
    const look = () => (document.hasFocus() ? done() : requestAnimationFrame(look));
    requestAnimationFrame(look);
    setTimeout(done, 2000);`);
}

/** Names of the DOM that the protocol writes as characters of their own. */
const keyCodes: Record<string, string | undefined> = {
  ...{ Tab: Key.TAB, Enter: Key.ENTER, Escape: Key.ESCAPE, Space: Key.SPACE },
  ...{ Backspace: Key.BACK_SPACE, Delete: Key.DELETE, Home: Key.HOME, End: Key.END },
  ...{ ArrowDown: Key.ARROW_DOWN, ArrowUp: Key.ARROW_UP, ArrowLeft: Key.ARROW_LEFT, ArrowRight: Key.ARROW_RIGHT },
  ...{ Control: Key.CONTROL, Shift: Key.SHIFT, Alt: Key.ALT },
};

/** The window has a bar, whose height is known only when it stands; it can't be narrower than its buttons. */
async function resize(session: WebDriver, width: number, height: number): Promise<void> {
  const set = (wide: number, high: number) =>
    session
      .manage()
      .window()
      .setRect({ x: 0, y: 0, width: Math.round(wide), height: Math.round(high) });
  await set(width, height);
  const bar = Number(await session.executeAsyncScript('arguments[0](outerHeight - innerHeight)'));
  await set(width, height + bar);
}

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const server = createServer().once('error', fail);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => (typeof address === 'object' && address ? done(address.port) : fail(new Error('no port'))));
    });
  });
}
