import { patience } from '../../tools/browser.ts';
import { BrowserEnded } from '../support/ended.ts';
import { type Act, type Arrival, act, type Done, leave, selectAll, type Target, whereAmI } from './in-page.ts';
import type { RawPage } from './raw.ts';

/**
 * A tab of any engine. Clicks and keys are real events of the browser; a target that isn't there yet, or is covered,
 * is waited for. Only what a person at the glass can do, and `evaluate` for what can't be seen.
 */
export class Tab {
  readonly #page: RawPage;
  readonly #site: string;

  constructor(page: RawPage, site: string) {
    this.#page = page;
    this.#site = site;
  }

  /** Errors that the page logged, threw or met. A test empties the list of those that it provokes. */
  get problems(): string[] {
    return this.#page.problems;
  }

  /** The same, after asking the page for those of the last moment. */
  async problemsSoFar(): Promise<string[]> {
    // A page that is closed has nothing more to tell.
    await this.evaluate(() => undefined).catch(() => undefined);
    return this.problems;
  }

  /** Opens a path of the site, e.g. `/visit/`, by the address bar. */
  async go(path: string): Promise<void> {
    await this.#page.goto(this.#site + path.replace(/^\//, ''));
  }

  /** These three wait until the page stands, be it loaded or taken from the browser's cache for back and forward. */
  reload = () => this.#leave('reload');
  back = () => this.#leave('back');
  forward = () => this.#leave('forward');

  /** Replaces what stands in a field, key by key; empty text deletes it. The focus stays in the field. */
  async fill(target: Target, text: string): Promise<void> {
    await this.#clickWhere('field', target);
    await this.waitFor(selectAll);
    await (text === '' ? this.press('Delete') : this.type(text));
  }

  /** Types where the focus is. */
  type(text: string): Promise<void> {
    return this.#page.type(text);
  }

  /** A key, or keys held together: `Tab`, `ArrowDown`, `Control+z`. */
  press(keys: string): Promise<void> {
    return this.#page.press(keys.split('+'));
  }

  /** Presses the middle of the target with the mouse. */
  click(target: Target): Promise<void> {
    return this.#clickWhere('aim', target);
  }

  /** Takes the choice with this value in a list to choose from. */
  async choose(target: Target, value: string): Promise<void> {
    await this.#act('choose', target, value);
  }

  /** Text of the first that fits, white space as it is read. */
  async text(target: Target): Promise<string> {
    return String(await this.#act('text', target));
  }

  async valueOf(target: Target): Promise<string> {
    return String(await this.#act('value', target));
  }

  async isChecked(target: Target): Promise<boolean> {
    return (await this.#act('checked', target)) === true;
  }

  async count(target: Target): Promise<number> {
    return Number(await this.#act('count', target));
  }

  /** Waits until the target is in the page. */
  async see(target: Target): Promise<void> {
    await this.#until(
      async () => (await this.count(target)) > 0 || undefined,
      `${JSON.stringify(target)} is not there`,
    );
  }

  /** Runs a function in the page. It is sent as text and knows only its arguments, which are JSON, as is its answer. */
  evaluate<A extends unknown[], R>(run: (...args: A) => R, ...args: A): Promise<Awaited<R>> {
    return this.#page.evaluate(run, ...args);
  }

  /** Waits until the function answers with something true, and gives that; see `evaluate`. */
  waitFor<A extends unknown[], R>(run: (...args: A) => R, ...args: A): Promise<NonNullable<Awaited<R>>> {
    return this.#until(async () => (await this.evaluate(run, ...args)) || undefined, `never true: ${run} ${args}`);
  }

  /** Size of the page in CSS pixels. WebKitGTK's window can't be narrower than its own bar, about 450. */
  resize(width: number, height: number): Promise<void> {
    return this.#page.resize(width, height);
  }

  close(): Promise<void> {
    return this.#page.close();
  }

  async #leave(way: 'reload' | 'back' | 'forward'): Promise<void> {
    const before = await this.evaluate(whereAmI);
    await this.evaluate(leave, way);
    const left = ({ born, url }: Arrival) => born !== before.born || (way !== 'reload' && url !== before.url);
    await this.#until(async () => {
      const now = await this.evaluate(whereAmI);
      return (left(now) && now.ready) || undefined;
    }, `${way} from ${before.url} leads nowhere`);
  }

  /** Waits until the place holds still over two looks, then presses. */
  async #clickWhere(what: 'aim' | 'field', target: Target): Promise<void> {
    let last = '';
    const place = await this.#until(
      async () => {
        const now = (await this.#act(what, target)) as { x: number; y: number };
        const same = JSON.stringify(now) === last;
        last = JSON.stringify(now);
        return same ? now : undefined;
      },
      `${JSON.stringify(target)} does not hold still`,
    );
    await this.#page.clickAt(place.x, place.y);
  }

  #act(what: Act, target: Target, option = ''): Promise<unknown> {
    let why = '';
    return this.#until(
      async () => {
        const done: Done = await this.evaluate(act, what, target, option);
        if ('late' in done) why = done.late;
        // Wrapped, so that an empty text is an answer too.
        return 'late' in done ? undefined : done;
      },
      () => `${what} ${JSON.stringify(target)}: ${why}`,
    ).then(({ value }) => value);
  }

  /** Asks again until there is an answer. An error counts as none: a page that is being left ends what runs in it. */
  async #until<T>(ask: () => Promise<T | undefined>, failure: string | (() => string)): Promise<T> {
    const end = Date.now() + patience;
    for (let error: unknown; ; ) {
      const answer = await ask().catch((thrown: unknown) => {
        if (thrown instanceof BrowserEnded) throw thrown;
        error = thrown;
        return undefined;
      });
      if (answer !== undefined) return answer;
      if (Date.now() > end) {
        const problems = this.problems.length > 0 ? `; the page: ${this.problems.join('; ')}` : '';
        throw new Error((typeof failure === 'string' ? failure : failure()) + problems, { cause: error });
      }
      await new Promise((done) => setTimeout(done, 30));
    }
  }
}
