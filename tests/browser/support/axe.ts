import axeCore from 'axe-core';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * Runs axe-core on the page as it is now; one readable line for each element that breaks a rule.
 * The script goes in through the debugger, so the page's security policy stays as it is.
 */
export async function axe(page: Page): Promise<string[]> {
  await page.evaluate(axeCore.source);
  const { violations } = await page.evaluate((values) => {
    const runner = (globalThis as unknown as { axe: typeof axeCore }).axe;
    return runner.run({ runOnly: { type: 'tag', values }, resultTypes: ['violations'] });
  }, tags);
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${rule.help}: ${node.target.join(' ')} — ${node.failureSummary ?? ''}`),
  );
}
