import { expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { open } from './support/open.ts';

const onlyMeter = 'never replaces the measurement';

async function calculator(width = 820) {
  const page = await open('/calculators/discharge/', { width });
  await page.waitForSelector('[data-live]');
  return page;
}

test('by keyboard: the wait with its limits and curve, never a go, and the meter named at every number', async () => {
  const page = await calculator();
  await typeInto(page, {
    'discharge-startVoltage': '565',
    'discharge-capacitance': '1500 µF',
    'discharge-bleeder': '33k',
  });
  await page.waitForSelector('.verdict[data-verdict="undecided"]');
  expect(await page.locator('.verdict').textContent()).toContain('below 50 V');
  expect(await page.locator('.findings li').first().textContent()).toContain(onlyMeter);
  await page.waitForSelector('.plot');
  for (const place of ['.wait-caution', '.plot figcaption', '.plot desc']) {
    expect(await page.locator(place).first().textContent(), place).toContain(onlyMeter);
  }
  expect(await page.locator('.next-steps li').last().textContent()).toContain('Prove the meter');
  expect(await axe(page)).toEqual([]);
});

test('a rising bus stops, a slow one fails, an entry that can’t be read is kept', async () => {
  const page = await calculator(360);
  await page.fill('#discharge-first', '300');
  await page.fill('#discharge-second', '565');
  await page.fill('#discharge-elapsed', '30');
  await page.waitForSelector('.verdict[data-verdict="stop"]');
  expect(await page.locator('.verdict').textContent()).toContain('Something feeds the bus');
  await page.fill('#discharge-first', '565');
  await page.fill('#discharge-second', '500');
  await page.fill('#discharge-elapsed', '60');
  await page.fill('#discharge-label', '5 min');
  await page.waitForSelector('.verdict[data-verdict="no-go"]');
  await page.fill('#discharge-capacitance', '1500');
  await page.locator('#discharge-bleeder').focus();
  await page.waitForSelector('.field.is-bad .error');
  expect(await page.locator('.suggestions').textContent()).toContain('1500 µF');
  expect(await page.inputValue('#discharge-capacitance')).toBe('1500');
  expect(await axe(page)).toEqual([]);
});
