import { expect, onTestFinished, test } from 'vitest';
import { encodeCase, windingTemperatures } from '../../../src/practice/case/case-code.ts';
import { siteBase, siteFolder } from '../../tools/paths.ts';
import { serveSite } from '../../tools/serve.ts';
import { sound } from '../support/visitor.ts';
import { eachEngine } from './each-engine.ts';
import type { Tab } from './tab.ts';

// What everybody needs, in each engine of a shop: calculators by keys, a visit, the search, no network, practice. That
// every calculator comes to the verdict of its worked visit is in forms.test.ts.

const verdict = (tab: Tab, word: string) => tab.see(`.verdict[data-verdict="${word}"]`);
const worked = { button: 'Fill in the worked visit' };

/** Fills fields by keyboard alone, in the order of the page; `true` presses the radio button that has the focus. */
async function byKeys(tab: Tab, entries: Record<string, string | true>): Promise<void> {
  for (const [target, entry] of Object.entries(entries)) {
    await tabTo(tab, target);
    await (entry === true ? tab.press('Space') : tab.type(entry));
  }
  await tab.press('Tab');
}

async function tabTo(tab: Tab, target: string): Promise<void> {
  for (let step = 0; step < 80; step++) {
    const active = () => [document.activeElement?.id, document.activeElement?.getAttribute('name')];
    if ((await tab.evaluate(active)).includes(target)) return;
    await tab.press('Tab');
  }
  throw new Error(`the keyboard does not get to ${target}`);
}

/** As the ids of a calculator's fields are written. */
const fieldsOf = (calculator: string, readings: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(readings).map(([name, text]) => [`${calculator}-${name}`, text]));

async function calculator(tab: Tab, name: string): Promise<void> {
  await tab.go(`/calculators/${name}/`);
  await tab.see('[data-live]');
}

eachEngine((engine) => {
  test('three calculators by keys alone, and after a reload entries and verdict are there', async () => {
    const tab = await engine.open('/calculators/bridge/', { width: 820 });
    await tab.see('[data-live]');
    await byKeys(tab, { 'bridge-busVoltage': '0.02', motorLeads: true, ...fieldsOf('bridge', sound.bridge) });
    await verdict(tab, 'go');
    await tab.fill('#bridge-minusV', '3.8 Ω');
    await verdict(tab, 'no-go');

    await calculator(tab, 'insulation');
    const { together, PE, idleCores: _joined, ...test } = sound.insulation;
    await byKeys(tab, {
      ...fieldsOf('insulation', { together, PE }),
      occasion: true,
      idleCores: true,
      ...fieldsOf('insulation', test),
    });
    await verdict(tab, 'go');

    await calculator(tab, 'winding');
    await byKeys(tab, fieldsOf('winding', sound.winding));
    await tab.click('[name="leads"][value="four"]');
    await verdict(tab, 'go');
    await tab.reload();
    await verdict(tab, 'go');
    expect(await tab.valueOf('#winding-VW')).toBe(sound.winding.VW);
  });

  test('a visit begins, stops before a charged bus, and a reload brings all of it back', async () => {
    const tab = await engine.open('/visit/', { width: 820 });
    const openStep = () => tab.text('.visit-step[data-mark="problem"] .step-name');
    await tab.click({ button: 'Start a visit' });
    await tab.fill({ label: 'Machine' }, 'Marrow Bay line 2 (invented)');
    await tab.fill({ label: 'Axis' }, 'Lift');
    await tab.press('Tab');
    // The title takes the names, and what is below it moves.
    await tab.see({ text: 'Marrow Bay line 2 (invented), Lift' });
    await tab.click({ group: 'How did you find the drive?', label: 'From the drawings' });
    await tab.see({ text: 'Done. Next, below: What was live or moving?' });
    await tab.click({ group: 'What was live or moving', label: 'The load was speeding up' });
    await tab.click({ group: 'Can any axis fall', label: 'No' });
    await tab.click({ button: 'Go on: Lock out' });
    for (const tick of ['The supply is locked out', 'has passed', 'The meter was proved', 'PE at the drive is proved'])
      await tab.click({ label: tick });
    for (const [group, text] of [
      ['supply', '0.2 V'],
      ['output', '0.1 V'],
    ] as const) {
      for (const row of ['EachAc', 'PeAc', 'EachDc', 'PeDc']) await tab.fill(`#lockout-1-${group}${row}`, text);
    }
    await tab.fill('#lockout-1-busBetween', '320 V');
    await tab.press('Tab');
    await tab.see({ text: 'Stop. The bus is not shown to be below' });
    await expect.poll(() => tab.text('.save-status')).toMatch(/^Saved/);
    const step = await openStep();
    await tab.reload();
    await tab.see({ text: 'Marrow Bay line 2 (invented), Lift' });
    await tab.see({ text: 'Stop. The bus is not shown to be below' });
    expect(await openStep()).toBe(step);
    expect(await tab.valueOf('#lockout-1-busBetween')).toBe('320 V');
    expect(await tab.isChecked({ label: 'The meter was proved' })).toBe(true);
  });

  test('the search finds the page that answers', async () => {
    const tab = await engine.open('/');
    await tab.press('/');
    await tab.type('dew point');
    await tab.see('#search-panel[data-answers="dew point"]');
    await tab.press('ArrowDown');
    await tab.press('Enter');
    await tab.waitFor(() => location.pathname !== '/' && document.readyState === 'complete');
    expect(await tab.text('main')).toMatch(/dew point/i);
  });

  test('without a network, after the first visit, a page never opened before comes, and a calculator judges', async () => {
    const server = await serveSite({ folder: siteFolder, base: siteBase, port: 0, host: 'localhost' });
    onTestFinished(() => server.close());
    const tab = await engine.open('/', { site: server.address });
    await tab.waitFor(() => navigator.serviceWorker.ready.then(() => true));
    await server.close();
    await tab.go('/tables/');
    expect(await tab.text('h1')).not.toBe('');
    await calculator(tab, 'bridge');
    await tab.click(worked);
    await tab.see('.verdict[data-verdict="no-go"], .verdict[data-verdict="go"]');
  });

  test('a case of practice opens, leads are put on, and the meter reads', async () => {
    const code = encodeCase({ fault: 'short-lower-V', seed: 11, windingCelsius: windingTemperatures[7] as number });
    const tab = await engine.open(`/practice/#${code}`, { width: 820 });
    await tab.see('.practice-work');
    for (const deed of [
      'Support the axis',
      'Switch the supply off',
      'Lock and tag',
      'Wait the time',
      'Prove the meter',
    ]) {
      await tab.evaluate(() => {
        for (const group of document.querySelectorAll('.practice-acts details')) group.setAttribute('open', '');
      });
      await tab.click({ within: '.practice-acts', button: deed });
    }
    await tab.click({ within: '.practice-bench', label: 'Multimeter, DC volts' });
    for (const terminal of ['DC+', 'DC-']) await tab.click(`.terminal[data-node="${terminal}"]`);
    await tab.click('button.measure');
    await expect.poll(() => tab.text('.instrument .reading')).toMatch(/^[\d.]+ m?V$/);
  });
});
