import axeCore from 'axe-core';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * Runs axe-core on the page as it is now; one readable line for each element that breaks a rule.
 * `only` names the rules to run, where the rest cannot have changed. The script goes in through the debugger, so the page's security policy stays as it is.
 */
export async function axe(page: Page, only?: string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeCore.source);
  const runOnly = only === undefined ? { type: 'tag' as const, values: tags } : { type: 'rule' as const, values: only };
  const { violations } = await page.evaluate((rules) => {
    const runner = (globalThis as unknown as { axe: typeof axeCore }).axe;
    return runner.run({ runOnly: rules, resultTypes: ['violations'] });
  }, runOnly);
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${rule.help}: ${node.target.join(' ')} — ${node.failureSummary ?? ''}`),
  );
}
