import { expect, test } from 'vitest';
import { limitValue } from '../../src/kernel/limits.ts';
import { trendFile } from '../bench/trend-file.ts';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { open } from './support/open.ts';

async function calculator(width = 820) {
  const page = await open('/calculators/trend/', { width });
  await page.waitForSelector('[data-live]');
  return page;
}

/** The fifth of last month, or the sixth of a May: a go from a reading of that day holds, and `5/10` can be read two ways. */
const recent = new Date();
recent.setUTCMonth(recent.getUTCMonth() - 1, 5);
if (recent.getUTCMonth() === 4) recent.setUTCDate(6);
const iso = (day: Date) => day.toISOString().slice(0, 10);
const years = 365.25 * 24 * 3600 * 1000;

/** Five yearly readings, the last on that day. */
const yearlyUntil = (last: Date) =>
  [4, 3, 2, 1, 0]
    .map((ago, index) => `${iso(new Date(last.getTime() - ago * years))}\t${900 - 20 * index}M\t40`)
    .join('\n');

test('pasted from a spreadsheet: a go with its plot, its table and the day until which it holds', async () => {
  const page = await calculator(360);
  await page.fill('#trend-rows', yearlyUntil(recent));
  await page.waitForSelector('.verdict[data-verdict="go"]');
  await expect.poll(() => page.locator('.plot svg[role="img"] desc').textContent()).toContain('5 readings');
  await expect
    .poll(() => page.locator('.verdict').textContent())
    .toContain(`holds until ${iso(new Date(Date.parse(iso(recent)) + years))}`);
  await expect.poll(() => page.locator('.plot tbody tr').count()).toBe(5);
  expect(await axe(page)).toEqual([]);
});

test('a record that ends years ago gives no go, and says what to do', async () => {
  const page = await calculator(360);
  await page.fill('#trend-rows', yearlyUntil(new Date('2023-05-03')));
  await page.waitForSelector('.verdict[data-verdict="undecided"]');
  await expect.poll(() => page.locator('.verdict').textContent()).toContain('That day has passed');
  await expect.poll(() => page.locator('.verdict').textContent()).toContain('Measure now');
});

test('rows added by keyboard; one that can’t be used is told beside the fields, and is not added', async () => {
  const page = await calculator();
  await page.fill('#trend-addDate', '2021-05-03');
  await typeInto(page, { 'trend-addReading': '4', 'trend-addTemperature': '40' });
  await page.getByRole('button', { name: 'Add this row' }).click();
  await expect.poll(() => page.locator('#trend-add-error').textContent()).toContain('no unit');
  await expect.poll(() => page.inputValue('#trend-rows')).toBe('');
  await typeInto(page, { 'trend-addReading': '4 MΩ' });
  await page.getByRole('button', { name: 'Add this row' }).click();
  await page.waitForSelector('.verdict[data-verdict="no-go"]');
  await expect.poll(() => page.inputValue('#trend-rows')).toBe('2021-05-03\t4 MΩ\t40\n');
});

test('an ambiguous date is asked about, and a row that can’t be read is listed with its reason', async () => {
  const page = await calculator();
  const dayFirst = [recent.getUTCDate(), recent.getUTCMonth() + 1, recent.getUTCFullYear()].join('/');
  const before = yearlyUntil(new Date(recent.getTime() - years));
  await page.fill('#trend-rows', `${before}\n${dayFirst}\t810M\t40\n2010-05-03\t910\t40`);
  await page.waitForSelector('.verdict[data-verdict="undecided"]');
  await expect.poll(() => page.locator('.kept-out tbody tr').count()).toBe(2);
  await expect.poll(() => page.locator('.kept-out').textContent()).toContain('no unit');
  await page.locator('#trend-dateOrder input[value="day-first"]').check();
  await page.waitForSelector('.verdict[data-verdict="go"]');
  await expect.poll(() => page.locator('.plot tbody').textContent()).toContain(iso(recent));
  expect(await axe(page)).toEqual([]);
});

test('the longest file, with decimal commas, is read, fitted, and every row of it drawn; a longer one is refused', async () => {
  const page = await calculator();
  // The heads are a row of the list too.
  const rows = limitValue('trend-rows') - 1;
  await page.setInputFiles('#trend-file', {
    name: 'lift.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(trendFile(rows)),
  });
  await page.waitForSelector('.plot');
  await expect.poll(() => page.locator('#trend-rows-echo').textContent()).toBe(`= ${rows} rows read, 0 kept out`);
  await expect.poll(() => page.locator('.plot .speck').count()).toBeGreaterThan(rows * 0.9);
  await expect
    .poll(() => page.locator('.verdict').textContent())
    .toContain(`The line through ${rows} readings: a loss of`);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.inputValue('#trend-rows')).toBe('');
  await page.fill('#trend-rows', trendFile(rows + 1));
  await expect.poll(() => page.locator('.verdict').textContent()).toContain(`longer than ${rows + 1} rows`);
});
