import type { Page } from 'playwright-core';
import { CountedVisitor } from './counted-visitor.ts';
import type { Bench, Measured } from './measured.ts';
import { withSite } from './with-site.ts';

/**
 * One visit on a shop tablet by touch: it trips on the enable, the lower transistor of V is shorted, core W of the cable is chafed,
 * the motor is good. Invented, at the Marrow Bay Glassworks. The instruments are known from the visit before, and the axis
 * from the register; one that nobody has noted takes 11 keys more.
 */
async function walk(page: Page, site: string): Promise<CountedVisitor> {
  const visitor = new CountedVisitor(page);
  await noteAxis(page, site);
  await page.goto(`${site}visit/`);
  await page.evaluate(
    (kept) => localStorage.setItem('fieldbook-instruments', JSON.stringify(kept)),
    [
      { what: 'Multimeter', identification: 'M-07', accuracy: '1.2 % + 4 counts', smallest: '0.1 Ω', largest: '60 MΩ' },
      { what: 'Milliohm meter', identification: 'R-01', accuracy: '0.1 % + 1 count', largest: '20 Ω' },
      { what: 'Insulation tester', identification: 'T-02', accuracy: '3 % + 5 counts', testVoltages: '500 V' },
    ],
  );
  await visitor.tap(page.getByRole('button', { name: 'Start a visit' }));
  await visitor.tap(page.getByRole('button', { name: 'Packer 3, X2' }));
  await visitor.answer('I looked at its indication');
  await visitor.type('find-drive', { axesOnDrive: '1' });
  await visitor.answer('The pulses had just come on');
  await visitor.tap(page.getByRole('group', { name: /any axis fall/ }).locator('label', { hasText: 'No, none' }));
  await visitor.goOn('Lock out, wait, measure the DC bus');

  for (const tick of ['The supply is locked out', 'has passed', 'The meter was proved', 'PE at the drive']) {
    await visitor.answer(tick);
  }
  await visitor.type('lockout-1', {
    ...{ supplyEachAc: '0', supplyPeAc: '0', supplyEachDc: '0', supplyPeDc: '0' },
    ...{ outputEachAc: '0', outputPeAc: '0', outputEachDc: '0', outputPeDc: '0' },
    ...{ busBetween: '.03', busPlusPe: '0', busMinusPe: '0' },
  });
  await visitor.goOn('Look at all parts');

  await visitor.tap(page.getByRole('button', { name: 'Nothing on the parts that are still open' }));
  await visitor.answer('Left as they are');
  await visitor.tap(page.getByRole('group', { name: 'Is it done?' }).locator('label', { hasText: 'Done' }));
  await visitor.goOn('Six readings at the output stage');

  await visitor.type('bridge', {
    plusU: '450k',
    plusV: '455',
    plusW: '452',
    minusU: '45k',
    minusV: '.4Ω',
    minusW: '46',
  });
  // The key bears “46 kΩ”.
  await visitor.next();
  // Asked for as soon as the readings fail.
  await page.locator('[id="bridge-worstAgain"]:visible').waitFor();
  await visitor.type('bridge', { worstAgain: '.4Ω' });
  await visitor.tap(page.locator('#bridge-alsoOnBus label', { hasText: 'Nothing' }));
  await visitor.goOn('Measure the DC bus again');

  await visitor.answer('The meter was proved on a known DC source');
  await visitor.type('bus-again', { busBetween: '.1', busPlusPe: '0', busMinusPe: '0' });
  await visitor.type('winding', { UV: '1.82Ω', VW: '1.83', WU: '1.82Ω' });
  await visitor.tap(page.locator('#winding-leads label', { hasText: 'Four leads' }));
  await visitor.goOn('Brake and sensor cores against U, V, W and PE');

  await visitor.answer('No, only U, V, W and PE');
  await visitor.type('insulation', { together: '2.1M', PE: '.2Ω', windingTemperature: '22' });
  await visitor.goOn('Cable or motor');

  await visitor.type('isolation', { cableU: '900M', cableV: '900', cableW: '2.1M', cablePE: '900M' });
  await visitor.tap(page.locator('#isolation-cableEndsChecked input[value="yes"]'));
  await visitor.type('isolation', { cableAgain: '2.1M', cableSister: '900M' });
  await visitor.tap(page.locator('#isolation-cableDried input[value="yes"]'));
  await visitor.type('isolation', { motorTogether: '900M', motorPE: '.2Ω' });
  await visitor.goOn('decision');
  await page.getByRole('heading', { name: /^Replace: complete drive and motor cable/ }).waitFor();
  await expectUnits(page);
  return visitor;
}

/** Names the axis in the register, long before the visit: not counted. */
async function noteAxis(page: Page, site: string): Promise<void> {
  await page.goto(`${site}axes/`);
  await page.getByRole('link', { name: 'Note an axis' }).click();
  await page.getByLabel('Machine').fill('Packer 3');
  await page.getByLabel('Axis', { exact: true }).fill('X2');
  await page.getByRole('button', { name: 'Save the axis' }).click();
  await page.getByRole('button', { name: 'New visit here' }).waitFor();
}

/** A figure whose unit came from its row is in the record with that unit. */
async function expectUnits(page: Page): Promise<void> {
  const texts = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done, failed) => {
      const request = indexedDB.open('overcurrent-fieldbook');
      request.onsuccess = () => done(request.result);
      request.onerror = () => failed(request.error);
    });
    const rows = await new Promise<{ record: { steps: Record<string, { form: Record<string, string> }> } }[]>(
      (done) => {
        const request = db.transaction('visits').objectStore('visits').getAll();
        request.onsuccess = () => done(request.result);
      },
    );
    db.close();
    const steps = rows[0]?.record.steps;
    return [
      steps?.bridge?.form.plusV,
      steps?.bridge?.form.minusW,
      steps?.winding?.form.VW,
      steps?.isolation?.form.cableV,
    ];
  });
  const wanted = ['455 kΩ', '46 kΩ', '1.83 Ω', '900 MΩ'];
  if (texts.join() !== wanted.join())
    throw new Error(`the record has ${texts.join(', ')} instead of ${wanted.join(', ')}`);
}

/** By touch a whole visit must be quicker than paper. */
export const bench: Bench = {
  name: 'A whole visit by touch: trip on the enable, a shorted transistor, a chafed core, the motor good',
  run: () =>
    withSite(async (browser, site): Promise<Measured[]> => {
      const page = await browser.newPage({ viewport: { width: 820, height: 1180 }, hasTouch: true });
      page.setDefaultTimeout(20_000);
      const { taps, keys, screens, longest } = await walk(page, site);
      return [
        { what: 'screens, one after the other', value: screens, unit: '', budget: 9 },
        { what: 'taps', value: taps, unit: '', budget: 35 },
        { what: 'keys, “next” included', value: keys, unit: '', budget: 120 },
        { what: 'longest screen, in heights of the window', value: longest, unit: '' },
      ];
    }),
};
