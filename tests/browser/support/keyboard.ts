import type { Page } from 'playwright-core';

/** Goes by Tab, from where the focus is, to the element with this id or name. Fails where Tab never gets there. */
export async function tabTo(page: Page, target: string): Promise<void> {
  for (let step = 0; step < 80; step++) {
    const here = await page.evaluate(() => {
      const active = document.activeElement;
      return [active?.id, active?.getAttribute('name')];
    });
    if (here.includes(target)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the keyboard does not get to ${target}`);
}

/** Fills the fields in their order by keyboard alone; `true` stands for pressing the radio button that has the focus. */
export async function typeInto(page: Page, entries: Record<string, string | true>): Promise<void> {
  for (const [target, entry] of Object.entries(entries)) {
    await tabTo(page, target);
    if (entry === true) await page.keyboard.press('Space');
    else await page.keyboard.type(entry);
  }
  await page.keyboard.press('Tab');
}
