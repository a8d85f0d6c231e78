import { expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { open } from './support/open.ts';

async function calculator(width = 820) {
  const page = await open('/calculators/absorption/', { width });
  await page.waitForSelector('[data-live]');
  return page;
}

test('by keyboard: form-wound with a steep curve is a go, a flat one a no-go', async () => {
  const page = await calculator();
  await page.locator('#absorption-windingKind input[value="form-wound"]').check();
  await typeInto(page, { 'absorption-t30': '310M', 'absorption-t60': '400M', 'absorption-t600': '1200M' });
  await page.waitForSelector('.verdict[data-verdict="go"]');
  await page.waitForSelector('.plot');
  expect(await page.locator('.verdict').textContent()).toContain('at least 40 minutes');
  expect(await axe(page)).toEqual([]);
  await page.fill('#absorption-t600', '420M');
  await page.waitForSelector('.verdict[data-verdict="no-go"]');
});

test('a servo motor’s index stays undecided; an entry without a unit is asked about', async () => {
  const page = await calculator(360);
  // The first of its row: those after it take its unit.
  await page.fill('#absorption-t600', '1200');
  await page.locator('#absorption-t540').focus();
  await page.waitForSelector('.field.is-bad .error');
  await page.locator('.suggestions button', { hasText: 'MΩ' }).click();
  await page.fill('#absorption-t60', '400M');
  await page.waitForSelector('.verdict[data-verdict="undecided"]');
  expect(await page.locator('.verdict').textContent()).toContain('random-wound');
});

test('pasted lines fill the fields, and what is left out is shown', async () => {
  const page = await calculator();
  await page.getByText('Paste readings').click();
  await page.fill('#absorption-paste', '30 s\t310M\n1:00\t400M\n45 s\t350M');
  await page.getByRole('button', { name: 'Take over' }).click();
  expect(await page.inputValue('#absorption-t60')).toBe('400M');
  expect(await page.locator('details.more [role=status]').first().textContent()).toContain('45 s');
});

test('the stopwatch says when to read, outlives a sleep and a reload, and touches no entry', async () => {
  const page = await open('/calculators/absorption/', { width: 360 });
  await page.clock.install({ time: new Date('2026-01-01T10:00:00Z') });
  await page.reload();
  await page.waitForSelector('[data-live]');
  await page.fill('#absorption-t30', '310M');
  await page.getByRole('button', { name: 'Start the stopwatch' }).click();
  const call = page.locator('.stopwatch-call');
  expect(await call.textContent()).toContain('Next reading at 15 s');
  await page.clock.runFor(11_000);
  expect(await call.textContent()).toContain('Get ready to read at 15 s');
  await page.clock.runFor(5_000);
  expect(await call.textContent()).toContain('Read now: 15 s');
  await page.getByRole('button', { name: 'To the field 15 s' }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('absorption-t15');
  // A tab that slept gets one late tick, not the many that it missed.
  await page.clock.fastForward(222_000);
  await page.clock.runFor(400);
  expect(await call.textContent()).toContain('4 min');
  expect(await page.inputValue('#absorption-t30')).toBe('310M');
  await page.reload();
  await page.waitForSelector('[data-live]');
  expect(await page.inputValue('#absorption-t30')).toBe('310M');
  await expect.poll(() => call.textContent()).toContain('4 min');
  expect(await axe(page)).toEqual([]);
});
