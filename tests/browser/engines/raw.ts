/** The few things that each engine's driver does in its own way; `Tab` builds all others upon them. */
export interface RawPage {
  /** Loads an address and waits for its `load` event. */
  goto(url: string): Promise<void>;
  /** Runs a function in the page. What goes in and comes out is JSON; a promise is awaited. */
  evaluate<A extends unknown[], R>(run: (...args: A) => R, ...args: A): Promise<Awaited<R>>;
  /** Presses and releases the main mouse button at this place of the window, in CSS pixels. */
  clickAt(x: number, y: number): Promise<void>;
  /** One key event after the other. */
  type(text: string): Promise<void>;
  /** Keys held together, by the names of the DOM: `['Control', 'a']`, `['Tab']`, `['ArrowDown']`. */
  press(keys: string[]): Promise<void>;
  resize(width: number, height: number): Promise<void>;
  /** What the page logged as error, threw, or missed, until now. */
  readonly problems: string[];
  close(): Promise<void>;
}

/** A browser with a profile, or a part of it that shares nothing with the others. */
export interface RawDevice {
  newPage(): Promise<RawPage>;
  /** Fails with `BrowserEnded` when the browser has ended by itself before. */
  close(): Promise<void>;
  /** Ends its browser by SIGKILL, as when the battery is pulled; other devices may live in the same one. */
  kill(): Promise<void>;
}

/** What an engine can do for the tests. */
export interface RawEngine {
  /** Fresh storage, in the one browser of the test file; see `startsBrowsers`. */
  device(): Promise<RawDevice>;
  /** Each device is a browser of its own, which takes seconds to start. */
  startsBrowsers: boolean;
  /** A browser of its own on this profile folder; undefined where the engine keeps no profile under automation. */
  ownBrowser?: (profile: string) => Promise<RawDevice>;
  close(): Promise<void>;
}
