import type { Page } from 'playwright-core';
import { expect } from 'vitest';

interface Focused {
  /** What is heard and read for it: label, legend, text. */
  name: string;
  ringed: boolean;
  /** Nothing lies over its middle: no bar that sticks to the window. */
  uncovered: boolean;
  /** It comes after the one before, in the page and for the eye. */
  inOrder: boolean;
}

/** A person who has a keyboard only, and looks where the focus is. */
export class KeyboardWalker {
  readonly page: Page;
  presses = 0;

  constructor(page: Page) {
    this.page = page;
  }

  /** Presses Tab once; the focus must be seen, be uncovered, and stand below what had it before. */
  async tab(): Promise<string> {
    await this.page.evaluate(() => {
      const before = document.activeElement;
      Object.assign(globalThis, { before, beforeTop: (before?.getBoundingClientRect().top ?? 0) + scrollY });
    });
    await this.page.keyboard.press('Tab');
    this.presses++;
    const focused = await this.page.evaluate(look);
    if (focused === undefined) return '';
    expect(focused, `after ${this.presses} presses: ${focused.name}`).toMatchObject({
      ringed: true,
      uncovered: true,
      inOrder: true,
    });
    return focused.name;
  }

  /** Goes on by Tab until the focus is on what is so named. */
  async to(name: string | RegExp): Promise<void> {
    for (let step = 0; step < 60; step++) {
      const here = await this.tab();
      if (typeof name === 'string' ? here.startsWith(name) : name.test(here)) return;
    }
    throw new Error(`60 presses of Tab do not get to ${name}`);
  }

  /** Goes to a question, then to its answer by the arrow keys. */
  async choose(question: string | RegExp, answer: string): Promise<void> {
    await this.to(question);
    await this.page.keyboard.press('Space');
    for (let step = 0; step < 15; step++) {
      if ((await this.page.evaluate(look))?.name.includes(`: ${answer}`)) return;
      await this.page.keyboard.press('ArrowDown');
    }
    throw new Error(`the arrow keys do not get to ${answer}`);
  }

  async tick(name: string | RegExp): Promise<void> {
    await this.to(name);
    await this.page.keyboard.press('Space');
  }

  async type(name: string | RegExp, text: string): Promise<void> {
    await this.to(name);
    await this.page.keyboard.type(text);
  }

  /** Goes to a button and presses it. Waits for it first: a verdict takes a moment, and the way on comes with it. */
  async press(name: string | RegExp): Promise<void> {
    await this.page.getByRole('button', { name }).first().waitFor();
    await this.to(name);
    await this.page.keyboard.press('Enter');
  }
}

/** Runs in the page. Undefined where the focus has left it for the window's own bars. */
function look(): Focused | undefined {
  const active = document.activeElement;
  if (active === null || active === document.body) return undefined;
  const { before, beforeTop } = globalThis as unknown as { before: Element | null; beforeTop: number };
  const style = getComputedStyle(active);
  const box = active.getBoundingClientRect();
  const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
  const label = (active as HTMLInputElement).labels?.[0];
  const group = active.matches('[type="radio"]') ? active.closest('fieldset')?.querySelector('legend') : undefined;
  const words = [group, label ?? active].filter((part) => part).map((part) => part?.textContent?.trim());
  const follows =
    !before?.isConnected ||
    before === document.body ||
    (before.compareDocumentPosition(active) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  return {
    name: words.join(': '),
    ringed: (style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2) || style.boxShadow !== 'none',
    uncovered: hit !== null && (active.contains(hit) || hit.contains(active) || label?.contains(hit) === true),
    inOrder: follows && (!before?.isConnected || before === document.body || box.bottom + scrollY > beforeTop),
  };
}
