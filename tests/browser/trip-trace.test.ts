import { expect, test } from 'vitest';
import { csvOf, simulatedTrip } from '../support/trip-recordings.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';

test('a file is read in a worker, asked about, judged, drawn, and kept as figures', async () => {
  const page = await open('/calculators/trip-trace/', { width: 360 });
  await page.waitForSelector('[data-live]');
  // The names state no unit of the currents: that is asked, and nothing is judged before.
  const csv = csvOf(simulatedTrip('load', 8)).replaceAll(' [A]', '');
  await page.setInputFiles('#trip-trace-file', { name: 'lift.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await expect.poll(() => page.inputValue('#trip-trace-colU')).toBe('2');
  await expect.poll(() => page.locator('.trace-columns').textContent()).toContain('Say the unit');
  expect(await page.locator('.plot').count()).toBe(0);
  await page.check('[name=currentUnit][value=A]');
  await page.check('[name=polePairs][value="4"]');
  await page.fill('#trip-trace-tripCurrent', '14.8 A');
  await expect.poll(() => page.locator('.verdict-headline').textContent()).toContain('Speaks for the load');
  await expect.poll(() => page.locator('.plot svg').count()).toBe(2);
  expect(page.workers()).toHaveLength(1);
  expect(await overflowing(page)).toEqual([]);
  expect(await axe(page)).toEqual([]);
  // Another file that can't be read loses nothing.
  await page.setInputFiles('#trip-trace-file', { name: 'a.pdf', mimeType: '', buffer: Buffer.from('%PDF-1.7 x') });
  await expect.poll(() => page.locator('#trip-trace-file-error').textContent()).toContain('This is a PDF');
  await expect.poll(() => page.locator('.verdict-headline').textContent()).toContain('Speaks for the load');
  await page.reload();
  await expect.poll(() => page.locator('.verdict-headline').textContent()).toContain('Speaks for the load');
  await expect.poll(() => page.locator('.calculator-fields').textContent()).toContain('open the file again');
});
