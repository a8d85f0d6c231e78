import type { Locator, Page } from 'playwright-core';

/** A swipe of a thumb moves the page by this share of the window. */
const swipe = 0.6;

/** Taps and swipes like a thumb on a phone, and counts both. A target out of sight takes swipes first. */
export class TouchWalk {
  taps = 0;
  swipes = 0;
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  async tap(target: Locator): Promise<void> {
    await target.waitFor();
    for (let tries = 0; tries < 60; tries++) {
      const place = await this.#placeAtRest(target);
      if (typeof place !== 'string') {
        await this.#page.touchscreen.tap(place.x, place.y);
        this.taps += 1;
        return;
      }
      await this.#page.evaluate(
        ([way, share]) => scrollBy(0, Number(way) * innerHeight * Number(share)),
        [place === 'below' ? 1 : -1, swipe],
      );
      this.swipes += 1;
      await this.#page.waitForTimeout(50);
    }
    throw new Error(`${target} is never in sight`);
  }

  /** The page may still be scrolling. */
  async #placeAtRest(target: Locator): Promise<ReturnType<typeof placeInWindow>> {
    for (let last = ''; ; ) {
      const place = await target.evaluate(placeInWindow);
      if (JSON.stringify(place) === last) return place;
      last = JSON.stringify(place);
      await this.#page.waitForTimeout(50);
    }
  }

  /** The key of the open keypad with this on it. */
  async key(cap: string): Promise<void> {
    await this.tap(this.#page.locator('.keypad button').getByText(cap, { exact: true }));
  }

  /** Keys of the open keypad, one after the other. */
  async keys(...caps: string[]): Promise<void> {
    for (const cap of caps) await this.key(cap);
  }
}

/** The middle of what can be tapped, or where it lies if it is not in the window or something covers it. In the page. */
function placeInWindow(element: Element): { x: number; y: number } | 'above' | 'below' {
  const { left, top, width, height } = element.getBoundingClientRect();
  const [x, y] = [left + width / 2, top + height / 2];
  const hit = y > 0 && y < innerHeight ? document.elementFromPoint(x, y) : null;
  const label = element.closest('label');
  if (hit !== null && (element.contains(hit) || label?.contains(hit))) return { x, y };
  return y < innerHeight / 2 ? 'above' : 'below';
}
