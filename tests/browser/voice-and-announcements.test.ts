import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { builtPages } from './support/built-pages.ts';
import { open } from './support/open.ts';

const forms = [...builtPages().filter((path) => /^\/calculators\/./.test(path)), '/visit/', '/practice/'];

// WCAG 2.2, 2.5.3 (label in name): people who speak to the device say the label of the field.
describe('each control has the words that are seen as the beginning of its name', () => {
  test.each(forms)('%s', async (path) => {
    const page = await open(path, { width: 820 });
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    expect(await axe(page, ['label-content-name-mismatch'])).toEqual([]);
    expect(await renamed(page)).toEqual([]);
  });
});

/** Fields whose name is not their visible label, but one that only a machine reads. */
function renamed(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLInputElement>('main :is(input, select, textarea)')]
      .filter((field) => field.checkVisibility())
      .filter((field) => {
        const label = field.labels?.[0];
        const seen = label?.checkVisibility() && !label.closest('.visually-hidden') && label.textContent?.trim();
        return !seen || field.hasAttribute('aria-label') || field.hasAttribute('aria-labelledby');
      })
      .map((field) => `${field.id || field.name}: ${field.getAttribute('aria-label') ?? 'no visible label'}`),
  );
}

test('a change of the verdict is told politely, once, when typing has come to rest', async () => {
  const page = await open('/calculators/bridge/');
  // What is typed before the script has come is judged when it comes, without a pause.
  await page.waitForSelector('[data-live]');
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(globalThis, { heard });
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const status = (target.parentElement ?? (target as Element)).closest('[role="status"]');
        if (status?.textContent?.startsWith('Verdict')) heard.push(status.textContent);
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const heard = () => page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);

  // The page's time stands still but for what is run here: a loaded machine types no slower.
  await page.clock.install();
  await page.locator('#bridge-busVoltage').focus();
  for (const key of '320 V') {
    await page.keyboard.type(key);
    await page.clock.runFor(300);
  }
  expect(await heard()).toEqual([]);
  // The page draws by the same clock, so it goes on until the verdict has been drawn, and well beyond.
  const heardLater = async () => {
    await page.clock.runFor(500);
    return heard();
  };
  await expect.poll(heardLater).not.toEqual([]);
  await page.clock.runFor(2000);
  expect(await heard()).toHaveLength(1);
  expect((await heard())[0]).toMatch(/^Verdict: Stop\. /);

  // The same verdict for the same reason is not told again while more is typed.
  await page.locator('#bridge-plusU').focus();
  await page.keyboard.type('482k');
  await page.clock.runFor(3000);
  await page.locator('.echo', { hasText: '482' }).first().waitFor();
  expect(await heard()).toHaveLength(1);
  expect(await page.locator('[aria-live="assertive"]').count()).toBe(0);
});

test('keyboards: letters and Ω for readings, digits where nothing else is ever typed', async () => {
  const page = await open('/calculators/insulation/');
  const keys = (id: string) => page.locator(`#insulation-${id}`).getAttribute('inputmode');
  expect(await keys('together')).toBe('text');
  expect(await keys('humidity')).toBe('decimal');
  const fields = page.locator('.calculator .field > input[type="text"]');
  const capitals = await fields.evaluateAll((all) => all.map((one) => one.getAttribute('autocapitalize')));
  expect(new Set(capitals)).toEqual(new Set(['off']));
  // What the text keyboard is for.
  for (const text of ['OL', '>700M', '1.2 GΩ']) {
    await page.locator('#insulation-together').fill(text);
    await page.keyboard.press('Tab');
    expect(await page.locator('#insulation-together').getAttribute('aria-invalid')).toBeNull();
  }
});

test.each(['/', '/calculators/absorption/', '/visit/', '/practice/'])(
  'who asks for less motion gets none on %s',
  async (path) => {
    const page = await open(path, { context: { reducedMotion: 'reduce' } });
    expect(await page.evaluate(moving)).toEqual([]);
  },
);

/** Runs in the page: rules that move something without asking whether the person wants motion. */
function moving(): string[] {
  const still = (rule: CSSRule) =>
    rule instanceof CSSMediaRule && /prefers-reduced-motion: no-preference/.test(rule.conditionText);
  const walk = (rules: CSSRuleList): CSSStyleRule[] =>
    [...rules].flatMap((rule) => {
      if (still(rule)) return [];
      if (rule instanceof CSSStyleRule) return [rule];
      return 'cssRules' in rule ? walk((rule as CSSMediaRule).cssRules) : [];
    });
  return (
    [...document.styleSheets]
      .flatMap((sheet) => walk(sheet.cssRules))
      // What appears from one moment to the next does not move.
      .filter(({ style }) => style.animationName !== 'none' && style.animationDuration !== '1ms')
      .filter(({ style }) => style.animationName || style.transitionProperty || style.scrollBehavior === 'smooth')
      .map(({ cssText }) => cssText)
  );
}
