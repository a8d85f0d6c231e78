import { buffer } from 'node:stream/consumers';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { open } from './support/open.ts';

test('thirty sheets with other figures come by their address, with answers, and leave as a package', async () => {
  const page = await open('/trainers/exercises/measuring/drawn/#draw=4821&sheets=30&article=bridge-check');
  await page.waitForSelector('.drawn-sheet:nth-of-type(30)');
  const first = await page.textContent('.drawn-sheet');
  expect(await page.locator('.drawn-sheet').count()).toBe(30);
  expect(
    new Set(await page.locator('.drawn-sheet .sheet-question:first-child p').allTextContents()).size,
  ).toBeGreaterThan(29);
  await page.getByRole('button', { name: 'Show answers' }).click();
  expect(await page.locator('.sheet-answer').count()).toBe(3 * 30);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as IMS QTI 3.0 package' }).click(),
  ]);
  const files = unzipSync(await buffer(await saved.createReadStream()));
  expect(strFromU8(files['imsmanifest.xml'] as Uint8Array)).toContain('sheet_30.xml');
  await page.getByRole('button', { name: 'Draw other figures' }).click();
  await expect.poll(() => page.textContent('.drawn-sheet')).not.toBe(first);
});
