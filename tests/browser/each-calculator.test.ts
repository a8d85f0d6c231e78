import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { calculatorNames } from '../../src/calculators/registry.ts';
import { jsonOf } from '../content/support/files.ts';
import { axe } from './support/axe.ts';
import { keptDrawing, uncomputed } from './support/kept-drawing.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';

/** Each calculator with the first worked case that fills it, and the verdict that was stated for that by hand. */
const cases = jsonOf('content/cases/*.json').map(({ path, data }) => ({
  id: path.replace(/^.*\/|\.json$/g, ''),
  ...(data as { expected: Record<string, string> }),
}));
const calculators = calculatorNames.map((name) => {
  const found = cases.find(({ expected }) => name in expected);
  return { name, id: found?.id, verdict: found?.expected[name] };
});

/** Calculators whose verdict has no drawing beside it. */
const undrawn = ['test-voltage'];

describe.each(calculators)('$name', ({ name, id, verdict }) => {
  test('filled in from a worked case it gives the stated verdict, fits a phone, and is drawn as kept', async () => {
    const page = await open(`/calculators/${name}/#case=${id}`, { width: 360 });
    await page.waitForSelector(`.verdict[data-verdict="${verdict}"]`);
    const drawings = page.locator('.calculator svg[role="img"]');
    if (!undrawn.includes(name)) await drawings.first().waitFor();
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
    const drawn = await drawings.evaluateAll((all) => all.map((one) => one.outerHTML));
    expect(drawn.length > 0).toBe(!undrawn.includes(name));
    if (drawn.length === 0) return;
    expect(drawn.join('')).not.toMatch(uncomputed);
    await expect(drawn.map(keptDrawing).join('')).toMatchFileSnapshot(
      join(import.meta.dirname, `drawings/calculators/${name}.svg`),
    );
  });

  test('without script it is a worksheet with its limits', async () => {
    const page = await open(`/calculators/${name}/`, { script: false, width: 360 });
    expect(await page.locator('.worksheet').isVisible()).toBe(true);
    expect(await page.locator('.worksheet a.limit').count()).toBeGreaterThan(0);
    expect(await page.locator('form.calculator').isVisible()).toBe(false);
  });
});
