import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';

async function calculator(path: string, width = 820) {
  const page = await open(path, { width });
  await page.waitForSelector('[data-live]');
  return page;
}

type Page = Awaited<ReturnType<typeof calculator>>;

const verdict = (page: Page, word: string) => page.waitForSelector(`.verdict[data-verdict="${word}"]`);
const findings = (page: Page) => page.locator('.verdict').textContent();
const steps = (page: Page) => page.locator('.next-steps').textContent();

describe('the winding', () => {
  test('by keyboard: milliohms with two leads are undecided, with four leads go', async () => {
    const page = await calculator('/calculators/winding/');
    await typeInto(page, { 'winding-UV': '84.2 mΩ', 'winding-VW': '84.4 mΩ', 'winding-WU': '84.3 mΩ' });
    await verdict(page, 'undecided');
    expect(await steps(page)).toContain('four-wire measurement');
    await page.locator('#winding-leads input[value="four"]').check();
    await verdict(page, 'go');
    expect(await findings(page)).toContain('Joined in star, the windings have U 42.05 mΩ');
    expect(await page.locator('svg [data-pair]').count()).toBe(3);
    expect(await axe(page)).toEqual([]);
  });

  test('leads are taken off, the suspect is named, an earlier value is compared', async () => {
    const page = await calculator('/calculators/winding/', 360);
    for (const [id, text] of Object.entries({ UV: '2.00 Ω', VW: '2.60 Ω', WU: '2.00 Ω' }))
      await page.fill(`#winding-${id}`, text);
    await page.locator('#winding-leads input[value="subtract"]').check();
    await page.fill('#winding-leadOhms', '0.2');
    await page.locator('#winding-leadOhms').blur();
    await verdict(page, 'empty');
    expect(await page.locator('#winding-leadOhms-error').textContent()).toContain('has no unit');
    await page.getByRole('button', { name: '0.2 Ω', exact: true }).click();
    await verdict(page, 'no-go');
    expect(await findings(page)).toContain('0.2 Ω of the leads is taken off');
    expect(await findings(page)).toContain('winding U is lower than the other two: shorted turns');
    await page.locator('summary', { hasText: 'Winding temperature' }).click();
    await page.fill('#winding-windingTemperature', '45');
    await page.locator('#winding-windingTemperature').blur();
    await page.getByText('Carried from 45 °C to 20 °C').waitFor({ state: 'attached' });
    await page.locator('.verdict-details > summary').click();
    expect(await page.getByText('Carried from 45 °C to 20 °C').isVisible()).toBe(true);
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });
});

const rows = (way: string, text: string) =>
  Object.fromEntries(['U', 'V', 'W'].map((phase) => [`bridge-diode-${way}${phase}`, text]));

describe('the bridge by diode test', () => {
  test('by keyboard: go, then the reading that spoils it, then a contradiction with the resistances', async () => {
    const page = await calculator('/calculators/bridge-diode/');
    await typeInto(page, {
      'bridge-diode-busVoltage': '0.02',
      motorLeads: true,
      ...rows('plusForward', '0.412'),
      ...rows('plusReverse', 'OL'),
      ...rows('minusForward', '415 mV'),
      ...rows('minusReverse', 'OL'),
      steadiness: true,
    });
    await verdict(page, 'go');
    expect(await steps(page)).toContain('six resistance readings');
    await page.fill('#bridge-diode-minusForwardV', '0.003');
    await page.fill('#bridge-diode-minusReverseV', '0.003');
    await verdict(page, 'no-go');
    expect(await findings(page)).toContain('short in the lower transistor of V');
    expect(await page.locator('[data-state="suspect"]').getAttribute('data-position')).toBe('minusV');
    await page.locator('summary', { hasText: 'Resistance readings' }).click();
    for (const [id, text] of Object.entries({ plusU: '480k', plusV: '490k', plusW: '485k' }))
      await page.fill(`#bridge-diode-${id}`, text);
    for (const id of ['minusU', 'minusV', 'minusW']) await page.fill(`#bridge-diode-${id}`, '46k');
    await verdict(page, 'undecided');
    expect(await findings(page)).toContain('contradict each other');
    expect(await steps(page)).toContain('diode test in both polarities');
    expect(await axe(page)).toEqual([]);
  });

  test('a negative reading stops everything, and one that can’t be read gets its message beside it', async () => {
    const page = await calculator('/calculators/bridge-diode/', 360);
    await page.fill('#bridge-diode-busVoltage', '0.02');
    await page.fill('#bridge-diode-plusForwardU', '-0.3');
    await verdict(page, 'stop');
    await page.fill('#bridge-diode-plusForwardV', '0.4 kΩ');
    await page.locator('#bridge-diode-plusForwardV').blur();
    await page.waitForSelector('#bridge-diode-plusForwardV-error');
    await verdict(page, 'stop');
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });
});
