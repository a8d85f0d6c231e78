import { expect, test } from 'vitest';
import { open } from './support/open.ts';

// From a verdict to what comes next, with what is known.

const readings = {
  together: '320k',
  PE: '0.2 Ω',
  testVoltage: '500 V',
  ratedVoltage: '400 V',
  windingTemperature: '22 °C',
};

async function failedInsulation() {
  const page = await open('/calculators/insulation/', { width: 360 });
  await page.waitForSelector('[data-live]');
  for (const [field, value] of Object.entries(readings)) await page.fill(`#insulation-${field}`, value);
  await page.check('input[name="occasion"][value="after-trip"]');
  await page.check('input[name="idleCores"][value="to-pe"]');
  await page.waitForSelector('.verdict[data-verdict="no-go"]');
  return page;
}

test('the headline names what fails, and what passes does not stand before the next step', async () => {
  const page = await failedInsulation();
  expect(await page.locator('.verdict-headline').textContent()).toBe(
    'U, V and W joined (320 kΩ) to PE fails the point of 100 MΩ',
  );
  const pass = page.locator('.findings li[data-severity="pass"]');
  expect(await pass.count()).toBeGreaterThan(0);
  expect(await pass.first().isVisible()).toBe(false);
  await page.locator('.verdict-details > summary').click();
  expect(await pass.first().isVisible()).toBe(true);
  // What protects the person is never folded.
  expect(await page.getByText(/^Discharge the winding to the frame after the test/).isVisible()).toBe(true);
});

test('the next calculator opens with the readings, and asks before it takes them', async () => {
  const page = await failedInsulation();
  await page.getByRole('link', { name: 'Cable or motor, with these readings' }).click();
  await page.getByText('This link holds a filled form.').waitFor();
  expect(new URL(page.url()).pathname).toMatch(/\/calculators\/isolation\/$/);
  expect(await page.inputValue('#isolation-joinedTogether')).toBe('');
  await page.getByRole('button', { name: 'Fill it in here' }).click();
  await page.waitForSelector('.verdict[data-verdict="no-go"]');
  expect(await page.inputValue('#isolation-joinedTogether')).toBe('320k');
  expect(await page.inputValue('#isolation-windingTemperature')).toBe('22 °C');
  expect(await page.locator('.verdict-headline').textContent()).toBe('Joined, U, V and W fail: cable or motor');
});

test('a visit begins with the readings of a calculator, and with its own first step', async () => {
  const page = await failedInsulation();
  await page.getByRole('link', { name: 'Start a visit with these readings' }).click();
  await page.getByRole('heading', { name: 'Readings from a calculator' }).waitFor();
  await page.getByText('Nothing is stored yet.').waitFor();
  await page.getByRole('button', { name: /^Start a visit: Insulation/ }).click();
  await page.locator('.visit-step[data-mark="due"]').first().waitFor();
  expect(await page.locator('.visit-step').first().getAttribute('data-step')).toBe('find-drive');
});
