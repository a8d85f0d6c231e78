import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { open } from './support/open.ts';

async function calculator(name: string, width = 360): Promise<Page> {
  const page = await open(`/calculators/${name}/`, { width });
  await page.locator(`[data-island="${name}"][data-live]`).waitFor();
  return page;
}

const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.id || document.activeElement?.getAttribute('name') || '');

test('the next key goes to the next question, and never past one that has no answer', async () => {
  const page = await calculator('bridge');
  await page.locator('#bridge-busVoltage').fill('0.2 V');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('motorLeads');
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('bridge-plusU');
  // An answered question is passed.
  await page.locator('#bridge-busVoltage').focus();
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('bridge-plusU');
});

test('after a unit is chosen the next field has the focus; a figure of another size is asked about, that unit first', async () => {
  const page = await calculator('bridge');
  await page.locator('#bridge-plusU').fill('450');
  const suggestions = (id: string) => page.locator(`.field:has(#bridge-${id}) .suggestions button`);
  await suggestions('plusU').first().waitFor();
  const usual = await suggestions('plusU').allTextContents();
  await page.locator('.field:has(#bridge-plusU) .suggestions').getByText('MΩ').click();
  expect(await focused(page)).toBe('bridge-plusV');
  await page.keyboard.type('46');
  await suggestions('plusV').first().waitFor();
  const offered = await suggestions('plusV').allTextContents();
  expect(usual[0]).not.toContain('MΩ');
  expect(offered[0]).toBe('46 MΩ');
  expect(offered).toHaveLength(usual.length);
});

test('a figure near its neighbour takes the unit of the row if that hides nothing worse, and says so', async () => {
  const page = await calculator('bridge');
  await page.locator('#bridge-plusU').fill('450 Ω');
  await page.locator('#bridge-plusV').focus();
  await page.keyboard.type('460');
  const echo = page.locator('#bridge-plusV-echo');
  expect(await echo.textContent()).toBe('= 460 Ω, unit of “to U”');
  // Nothing is written into the field while somebody types in it.
  expect(await page.locator('#bridge-plusV').inputValue()).toBe('460');
  await page.keyboard.press('Tab');
  expect(await page.locator('#bridge-plusV').inputValue()).toBe('460 Ω');
  expect(await echo.textContent()).toBe('= 460 Ω, unit of “to U”');
  const said = page.locator('.reading-row:has(#bridge-plusV) > [role="status"]');
  expect(await said.textContent()).toBe('to V: 460 Ω, unit of “to U”');
});

test('one that may be a short in another unit is asked about, and nothing is judged until that is answered', async () => {
  const page = await calculator('bridge');
  await page.locator('#bridge-plusU').fill('450 kΩ');
  await page.locator('#bridge-plusV').focus();
  await page.keyboard.type('450');
  await page.keyboard.press('Tab');
  const field = page.locator('.field:has(#bridge-plusV)');
  await field.locator('.error').waitFor();
  expect(await field.locator('.suggestions button').allTextContents()).toEqual(['450 kΩ', '450 Ω', '450 MΩ']);
  await page.locator('.verdict[data-verdict="empty"]').waitFor();
  await field.getByRole('button', { name: '450 Ω', exact: true }).click();
  expect(await page.locator('#bridge-plusV').inputValue()).toBe('450 Ω');
});

test('an error beside the field that somebody is at is never behind the bar', async () => {
  const page = await calculator('insulation');
  const field = page.locator('#insulation-testVoltage');
  await field.focus();
  // The field stands right above the bar at the foot of the window, as after a scroll by thumb.
  await page.evaluate(() => {
    const box = document.querySelector('#insulation-testVoltage')?.getBoundingClientRect();
    const bar = document.querySelector('.verdict-bar')?.getBoundingClientRect();
    scrollBy(0, (box?.bottom ?? 0) - (bar?.top ?? 0) + 8);
  });
  await page.keyboard.type('5oo');
  const error = page.locator('#insulation-testVoltage-error');
  await error.waitFor();
  const below = async () => (await error.boundingBox().then((box) => (box?.y ?? 0) + (box?.height ?? 0))) ?? 0;
  const bar = async () => (await page.locator('.verdict-bar').boundingBox())?.y ?? 0;
  await expect.poll(async () => (await below()) <= (await bar())).toBe(true);
});

test('while something typed has not settled, no verdict on the older entries is shown', async () => {
  const page = await calculator('bridge', 820);
  await page.getByRole('button', { name: /^Fill in the worked visit/ }).click();
  await page.locator('.verdict[data-verdict="no-go"]').waitFor();
  const seen = await page.evaluate(async () => {
    const field = document.querySelector<HTMLInputElement>('#bridge-minusV');
    if (field === null) throw new Error('no field');
    field.value = '45.9k';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await new Promise((done) => setTimeout(done));
    const bar = document.querySelector('.verdict-bar');
    return [document.querySelector('.verdict')?.getAttribute('data-verdict'), bar?.textContent];
  });
  expect(seen[0]).toBe('empty');
  expect(seen[1]).not.toMatch(/go|undecided/i);
  // The second reading of the worked visit still says short.
  await page.locator('.verdict[data-verdict="undecided"]').waitFor();
});

test('on paper a verdict stands on the entries that are there, folded ones too', async () => {
  const page = await calculator('bridge', 1280);
  await page.getByRole('button', { name: /^Fill in the worked visit/ }).click();
  await page.locator('.verdict[data-verdict="no-go"]').waitFor();
  // The second readings are filled in, so they stand open; the tips and the accuracy of the meter are not.
  const folded = page.locator('.calculator details.more').last();
  expect(await folded.evaluate((part: HTMLDetailsElement) => part.open)).toBe(false);
  await page.locator('#bridge-minusV').fill('45.9k');
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.locator('.verdict[data-verdict="undecided"]').waitFor();
  expect(await folded.evaluate((part: HTMLDetailsElement) => part.open)).toBe(true);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  expect(await folded.evaluate((part: HTMLDetailsElement) => part.open)).toBe(false);
});
