import type { Locator, Page } from 'playwright-core';

/** Presses of "next" that somebody makes rather than tap the field: more are slower than a tap. */
const patienceInPresses = 3;

/**
 * A person with a touch screen, whose taps, keys and screens are counted. A key "next" of the keyboard is a key; a letter or
 * unit of the keypad is one as well.
 */
export class CountedVisitor {
  readonly page: Page;
  taps = 0;
  keys = 0;
  screens = 1;
  /** The highest screen, in heights of the window. */
  longest = 0;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(what: Locator): Promise<void> {
    this.taps++;
    await what.tap();
  }

  /** Taps an answer of a question, or of the step that is open. */
  async answer(text: string, within = '.visit-step'): Promise<void> {
    await this.tap(this.page.locator(`${within} label`, { hasText: text }).last());
  }

  /** Types into fields, in their order: by the key "next" as long as that is quicker, otherwise by a tap. */
  async type(step: string, readings: Readonly<Record<string, string>>): Promise<void> {
    for (const [id, text] of Object.entries(readings)) {
      await this.goTo(`${step}-${id}`);
      this.keys += [...text].length;
      if ((await this.page.locator('.keypad').count()) === 0) await this.page.keyboard.type(text);
      else
        for (const key of text) await this.page.locator('.keypad button').getByText(capOf(key), { exact: true }).tap();
    }
  }

  /** The way on to the next screen; one step may follow another on the same one. */
  async goOn(to: string): Promise<void> {
    await this.look();
    this.screens++;
    await this.tap(
      this.page.getByRole('button', { name: to === 'decision' ? 'Go on to the decision' : `Go on: ${to}` }),
    );
  }

  async look(): Promise<void> {
    const heights = await this.page.evaluate(() =>
      [...document.querySelectorAll('.step-body')].map((body) => body.getBoundingClientRect().height / innerHeight),
    );
    this.longest = Math.max(
      this.longest,
      heights.reduce((sum, height) => sum + height, 0),
    );
  }

  private async goTo(id: string): Promise<void> {
    const isThere = () => this.page.evaluate((wanted) => document.activeElement?.id === wanted, id);
    const ahead = await this.page.evaluate((wanted) => {
      const active = document.activeElement;
      const form = active?.closest('form');
      const fields = [...(form?.querySelectorAll('input[type="text"], textarea') ?? [])];
      const shown = fields.filter(
        (field) => field.getClientRects().length > 0 && !field.closest('details:not([open])'),
      );
      const from = active === null ? -1 : shown.indexOf(active);
      const to = shown.findIndex((field) => field.id === wanted);
      return from < 0 || to < 0 ? Number.POSITIVE_INFINITY : to - from;
    }, id);
    if (ahead >= 0 && ahead <= patienceInPresses) {
      for (let press = 0; press < patienceInPresses && !(await isThere()); press++) await this.next();
    }
    if (!(await isThere())) await this.tap(this.page.locator(`[id="${id}"]`));
  }

  /** The key of the keypad where it is open, which takes the unit of the row that stands on it. */
  async next(): Promise<void> {
    this.keys++;
    const key = this.page.locator('.keypad-next');
    if ((await key.count()) > 0) await key.tap();
    else await this.page.keyboard.press('Enter');
  }
}

/** On the key of the keypad: it has units as a whole. */
function capOf(key: string): string {
  return /[kM]/.test(key) ? `${key}Ω` : key;
}
