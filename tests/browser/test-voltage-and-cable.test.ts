import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { open } from './support/open.ts';

async function calculator(path: string, width = 820) {
  const page = await open(path, { width });
  await page.waitForSelector('[data-live]');
  return page;
}

describe('the test voltage', () => {
  test('by keyboard: the row of the table first, then go, then a voltage that is too high', async () => {
    const page = await calculator('/calculators/test-voltage/');
    await typeInto(page, { object: true, 'test-voltage-rated': '400' });
    await page.waitForSelector('.table-row');
    expect(await page.locator('.table-row').textContent()).toContain('500 V DC');
    expect(await page.locator('.verdict').getAttribute('data-verdict')).toBe('undecided');
    await page.locator('#test-voltage-drive input[value="off"]').check();
    await page.locator('#test-voltage-sensitive input[value="off"]').check();
    await page.fill('#test-voltage-set', '500');
    await page.waitForSelector('.verdict[data-verdict="go"]');
    await page.fill('#test-voltage-set', '1 kV');
    await page.waitForSelector('.verdict[data-verdict="no-go"]');
    expect(await page.locator('.verdict').textContent()).toContain('1 kV is too high');
    expect(await axe(page)).toEqual([]);
  });

  test('a drive on the conductors stops, electronics are never tested, an entry that can’t be read is kept', async () => {
    const page = await calculator('/calculators/test-voltage/', 360);
    await page.locator('#test-voltage-object input[value="feedback"]').check();
    await page.waitForSelector('.verdict[data-verdict="no-go"]');
    await page.locator('#test-voltage-object input[value="winding"]').check();
    await page.locator('#test-voltage-drive input[value="connected"]').check();
    await page.waitForSelector('.verdict[data-verdict="stop"]');
    await page.fill('#test-voltage-rated', '400 ohm');
    await page.locator('#test-voltage-set').focus();
    await page.waitForSelector('.field.is-bad .error');
    expect(await page.inputValue('#test-voltage-rated')).toBe('400 ohm');
    expect(await axe(page)).toEqual([]);
  });
});

describe('the cable by its length', () => {
  test('by keyboard: a short run fails, a long one with the same reading is undecided', async () => {
    const page = await calculator('/calculators/cable-length/');
    await typeInto(page, {
      'cable-length-insulationDiameter': '3.40',
      'cable-length-conductorDiameter': '2.00',
      'cable-length-length': '30',
      'cable-length-reading': '60M',
      'cable-length-temperature': '20',
    });
    await page.waitForSelector('.verdict[data-verdict="no-go"]');
    expect(await page.locator('.verdict').textContent()).toContain('The length does not explain it');
    await page.fill('#cable-length-length', '3300 ft');
    await page.waitForSelector('.verdict[data-verdict="undecided"]');
    expect(await page.locator('.next-steps').textContent()).toContain('Test the other cores');
    expect(await axe(page)).toEqual([]);
  });
});
