import { expect, test } from 'vitest';
import { eachEngine } from './each-engine.ts';

/** What the calculator judges, as this tab keeps it. Runs in the page. */
function judged(id: string): string | undefined {
  return JSON.parse(sessionStorage.getItem('fieldbook-typed-bridge') ?? '{}')[id];
}

/** As if a finger had touched the field: the drivers of these engines have a mouse only. Runs in the page. */
function touch(id: string): void {
  const field = document.querySelector<HTMLInputElement>(id);
  field?.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, pointerType: 'touch' }));
  field?.focus();
}

eachEngine((engine) => {
  test('a figure without a unit takes that of its row if that hides nothing worse, in what is shown and in what is judged', async () => {
    const tab = await engine.open('/calculators/bridge/');
    await tab.see('[data-island="bridge"][data-live]');
    await tab.fill('#bridge-plusU', '450 Ω');
    await tab.fill('#bridge-plusV', '460');
    await tab.waitFor(
      (read) => document.querySelector('#bridge-plusV-echo')?.textContent === read,
      '= 460 Ω, unit of “to U”',
    );
    expect(await tab.valueOf('#bridge-plusV')).toBe('460');
    await tab.press('Tab');
    await tab.waitFor(() => document.querySelector<HTMLInputElement>('#bridge-plusV')?.value === '460 Ω');
    await expect.poll(() => tab.evaluate(judged, 'plusV')).toBe('460 Ω');
    await tab.reload();
    await tab.see('[data-island="bridge"][data-live]');
    await expect.poll(() => tab.valueOf('#bridge-plusV')).toBe('460 Ω');
  });

  test('the keypad opens with a touch, types at the caret of the field and goes on to the next', async () => {
    const tab = await engine.open('/calculators/bridge/');
    await tab.see('[data-island="bridge"][data-live]');
    await tab.evaluate(touch, '#bridge-plusU');
    const key = (text: string) => tab.click({ within: '.keypad', button: text });
    for (const cap of ['4', '5', '0', 'kΩ', 'Next']) await key(cap);
    await tab.waitFor(() => document.activeElement?.id === 'bridge-plusV');
    for (const cap of ['0', '.', '3', 'Ω', '⌫', 'MΩ']) await key(cap);
    expect([await tab.valueOf('#bridge-plusU'), await tab.valueOf('#bridge-plusV')]).toEqual(['450k', '0.3M']);
    await key('Close');
    await tab.waitFor(() => document.querySelector('.keypad') === null);
    expect(await tab.evaluate(() => document.querySelector('#bridge-plusV')?.getAttribute('inputmode'))).toBe('text');
  });
});
