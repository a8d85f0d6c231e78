import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { type OpenOptions, open } from './support/open.ts';

const phone: OpenOptions['context'] = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

async function calculator(name: string, options: OpenOptions = {}): Promise<Page> {
  const page = await open(`/calculators/${name}/`, { ...options, context: { ...phone, ...options.context } });
  await page.locator(`[data-island="${name}"][data-live]`).waitFor();
  return page;
}

const keypad = (page: Page) => page.locator('.keypad');
const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.id || document.activeElement?.getAttribute('name') || '');
const modeOf = (page: Page, id: string) => page.locator(`#${id}`).getAttribute('inputmode');
const echoOf = (page: Page, id: string) => page.locator(`#${id}-echo`).textContent();
const entryIn = (page: Page, id: string) => page.locator(`#${id}`).inputValue();

async function press(page: Page, ...caps: string[]): Promise<void> {
  for (const cap of caps) await keypad(page).getByText(cap, { exact: true }).tap();
}

describe('readings by thumb', () => {
  test('from the bus to the last reading: next never passes a question, a unit holds for its row, the last field closes', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-busVoltage').tap();
    expect(await modeOf(page, 'bridge-busVoltage')).toBe('none');
    await press(page, '0', '.', '0', '2', 'Next');
    expect(await focused(page)).toBe('motorLeads');
    expect(await keypad(page).count()).toBe(0);
    await page.getByText('Taken off U, V and W').tap();
    await expect.poll(() => focused(page)).toBe('bridge-plusU');
    await press(page, '4', '5', '0', 'kΩ', 'Next');
    expect(await echoOf(page, 'bridge-plusW')).toBe('kΩ as in “to U”, or type a unit');
    await press(page, '4', '6', '0');
    expect(await entryIn(page, 'bridge-plusV')).toBe('460');
    const question = '460 kΩ? Next takes it; or type the unit that the meter shows';
    expect(await echoOf(page, 'bridge-plusV')).toBe(question);
    expect(await keypad(page).locator('.keypad-next b').textContent()).toBe('460 kΩ');
    await press(page, 'Next', '4', '5', '5', 'Next', 'Next');
    expect([await entryIn(page, 'bridge-plusV'), await entryIn(page, 'bridge-plusW')]).toEqual(['460 kΩ', '455 kΩ']);
    expect(await echoOf(page, 'bridge-plusV')).toBe('= 460 kΩ, unit of “to U”');
    // Another row, another unit: nothing comes over from the first.
    expect(await focused(page)).toBe('bridge-minusU');
    expect(await echoOf(page, 'bridge-minusU')).toBe('');
    await press(page, '0', '.', '4', '4', 'MΩ', 'Next', '0', '.', '4', '5', 'Next', '4', '4', '5', 'kΩ', 'Next');
    expect(await entryIn(page, 'bridge-minusV')).toBe('0.45 MΩ');
    expect(await focused(page)).toBe('bridge-minusAgain');
    await press(page, 'Done');
    expect(await keypad(page).count()).toBe(0);
    expect(await modeOf(page, 'bridge-minusAgain')).toBe('text');
    await page.locator('.verdict[data-verdict="go"]').waitFor();
  });

  test('a figure that may come from another range is asked about before it goes on', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', '5', '0', 'kΩ', 'Next', '0', '.', '3');
    expect(await echoOf(page, 'bridge-plusV')).toBe('Which unit?');
    await press(page, 'Next');
    expect(await focused(page)).toBe('bridge-plusV');
    const field = page.locator('.field:has(#bridge-plusV)');
    await field.locator('.error').waitFor();
    expect(await field.locator('.suggestions button').allTextContents()).toEqual(['0.3 kΩ', '0.3 Ω', '0.3 MΩ']);
    await press(page, 'Ω', 'Next');
    expect([await entryIn(page, 'bridge-plusV'), await focused(page)]).toEqual(['0.3Ω', 'bridge-plusW']);
  });

  test.each([
    ['a zero', ['0'], '0', '= 0 Ω'],
    ['a lone one', ['1'], '1', 'Not complete'],
    ['over-range', ['OL'], 'OL', 'over-range, range not noted'],
  ])('%s takes no unit of the row', async (_, caps, value, echo) => {
    const page = await calculator('insulation');
    await page.locator('[name="rowKind"][value="single"]').tap();
    await page.locator('#insulation-U').tap();
    await press(page, '2', '0', '0', 'MΩ', 'Next', ...caps);
    expect([await entryIn(page, 'insulation-V'), await echoOf(page, 'insulation-V')]).toEqual([value, echo]);
    await press(page, 'Close');
    expect(await entryIn(page, 'insulation-V')).toBe(value);
  });

  test('left by another way than its next key, a figure has no unit: 450 Ω is not 450 kΩ', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', '5', '0', 'kΩ', 'Next', '4', '5', '0', 'Close');
    const field = page.locator('.field:has(#bridge-plusV)');
    await field.locator('.error').waitFor();
    expect(await field.locator('.suggestions button').allTextContents()).toEqual(['450 kΩ', '450 Ω', '450 MΩ']);
    expect(await entryIn(page, 'bridge-plusV')).toBe('450');
  });

  test('what is kept reads by itself', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', '5', '0', 'kΩ', 'Next', '4', '6', '0', 'Next');
    const kept = () => page.evaluate(() => JSON.parse(sessionStorage.getItem('fieldbook-typed-bridge') ?? '{}').plusV);
    await expect.poll(kept).toBe('460 kΩ');
    await page.reload();
    await page.locator('[data-island="bridge"][data-live]').waitFor();
    await expect.poll(() => entryIn(page, 'bridge-plusV')).toBe('460 kΩ');
  });

  test('a figure that was there before takes no unit from a neighbour', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusV').fill('460');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', '5', '0', 'kΩ', 'Close');
    await page.locator('#bridge-plusV-error').waitFor();
    expect(await entryIn(page, 'bridge-plusV')).toBe('460');
  });
});

describe('the keypad is one way to type among others', () => {
  test('a keyboard, a selection and pasted text work in the same field', async () => {
    const page = await calculator('bridge');
    const field = page.locator('#bridge-plusU');
    await field.tap();
    await page.keyboard.type('45');
    await press(page, '0');
    await page.keyboard.press('ArrowLeft');
    await press(page, '7');
    expect(await entryIn(page, 'bridge-plusU')).toBe('4570');
    await page.keyboard.press('Control+a');
    await page.keyboard.insertText('2,2 MΩ');
    expect(await echoOf(page, 'bridge-plusU')).toBe('= 2.2 MΩ');
    await page.keyboard.press('Control+a');
    await press(page, '8');
    expect(await entryIn(page, 'bridge-plusU')).toBe('8');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    expect(await focused(page)).toBe('bridge-plusU');
  });

  test('a mouse and the Tab key open none', async () => {
    const page = await calculator('bridge', { context: { viewport: { width: 360, height: 740 } } });
    await page.locator('#bridge-plusU').click();
    await page.keyboard.press('Tab');
    expect([await focused(page), await keypad(page).count()]).toEqual(['bridge-plusV', 0]);
    expect(await modeOf(page, 'bridge-plusV')).toBe('text');
  });

  test('its keys can be reached from the field by Tab, and the field is not left meanwhile', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', '5');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('kΩ');
    await page.keyboard.press('Enter');
    expect([await entryIn(page, 'bridge-plusU'), await keypad(page).count()]).toEqual(['45k', 1]);
    await keypad(page).locator('.keypad-next').focus();
    await page.keyboard.press('Enter');
    // Whoever works with the keys of a keyboard goes on with them.
    expect([await focused(page), await keypad(page).count()]).toEqual(['bridge-plusV', 0]);
  });

  test('the keyboard of the device can be chosen, is remembered, and can be left again', async () => {
    const page = await calculator('bridge');
    await page.locator('#bridge-plusU').tap();
    await press(page, '4', 'Keyboard of this device');
    expect(await keypad(page).count()).toBe(0);
    expect([await focused(page), await modeOf(page, 'bridge-plusU')]).toEqual(['bridge-plusU', 'text']);
    await page.reload();
    await page.locator('[data-island="bridge"][data-live]').waitFor();
    await page.locator('#bridge-plusU').tap();
    expect([await keypad(page).count(), await modeOf(page, 'bridge-plusU')]).toEqual([0, 'text']);
    await page.getByRole('button', { name: 'Use the keypad of this page' }).tap();
    await keypad(page).waitFor();
    expect([await focused(page), await modeOf(page, 'bridge-plusU')]).toEqual(['bridge-plusU', 'none']);
    await page.reload();
    await page.locator('[data-island="bridge"][data-live]').waitFor();
    await page.locator('#bridge-plusV').tap();
    await keypad(page).waitFor();
  });

  test('without a script the field asks for the keyboard of the device', async () => {
    const page = await open('/calculators/bridge/', { script: false, context: phone });
    expect([await modeOf(page, 'bridge-plusU'), await keypad(page).count()]).toEqual(['text', 0]);
  });

  test('only what makes sense has a key: milliohms for a winding, no megohms', async () => {
    const page = await calculator('winding');
    await page.locator('#winding-UV').tap();
    expect(await page.locator('.keypad-units button').allTextContents()).toEqual(['mΩ', 'Ω', 'kΩ']);
    await press(page, '8', '4', '2', 'mΩ');
    expect(await echoOf(page, 'winding-UV')).toBe('= 0.842 Ω');
  });
});

test('a row of the trend is typed with it: reading, then temperature', async () => {
  const page = await calculator('trend');
  await page.locator('#trend-addReading').tap();
  await press(page, '4', '5', '0', 'MΩ', 'Next', '2', '5', '°C');
  expect([await entryIn(page, 'trend-addReading'), await entryIn(page, 'trend-addTemperature')]).toEqual([
    '450M',
    '25 °C',
  ]);
});

describe('a keypad in a small window', () => {
  test.each([
    [360, 740, 'light'],
    [360, 740, 'dark'],
    [740, 360, 'light'],
    [820, 1180, 'dark'],
  ] as const)(
    '%i by %i, %s: large keys, the field and its neighbours in sight, nothing that axe-core finds',
    async (width, height, scheme) => {
      const page = await calculator('bridge', { scheme, context: { viewport: { width, height } } });
      await page.locator('#bridge-plusV').tap();
      await keypad(page).waitFor();
      const top = (await keypad(page).boundingBox())?.y ?? 0;
      const inSight = async (id: string) => {
        const box = await page.locator(`#${id}`).boundingBox();
        return box !== null && box.y >= 0 && box.y + box.height <= top;
      };
      expect(await inSight('bridge-plusV')).toBe(true);
      if (height > 500) expect([await inSight('bridge-plusU'), await inSight('bridge-plusW')]).toEqual([true, true]);
      const sizes = await page
        .locator('.keypad button')
        .evaluateAll((keys) =>
          keys.map((key) => key.getBoundingClientRect()).map((box) => Math.min(box.width, box.height)),
        );
      expect(sizes.length).toBeGreaterThan(18);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(56);
      expect(await overflowing(page)).toEqual([]);
      expect(await axe(page)).toEqual([]);
    },
  );

  test('the last field of a form can be scrolled above it', async () => {
    const page = await calculator('absorption', { context: { viewport: { width: 320, height: 640 } } });
    const last = page.locator('[data-island="absorption"] input[data-keypad]:visible').last();
    await last.tap();
    await keypad(page).waitFor();
    const top = (await keypad(page).boundingBox())?.y ?? 0;
    const box = await last.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(top);
  });
});
