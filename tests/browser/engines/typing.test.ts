import { expect, test } from 'vitest';
import { type Device, type Engine, eachEngine } from './each-engine.ts';
import type { Tab } from './tab.ts';

/** How often each way of leaving is tried; more by hand: `FIELDBOOK_LEAVES=20`. */
const tries = Number(process.env.FIELDBOOK_LEAVES ?? 1);

/** Sets out on a visit and waits until it is stored. Gives its address. */
async function newVisit(tab: Tab): Promise<string> {
  await tab.click({ button: 'Start a visit' });
  await tab.fill('#visit-axis', 'Lift');
  await tab.press('Tab');
  await tab.waitFor(() => document.querySelector('.save-status')?.textContent?.startsWith('Saved'));
  return tab.evaluate(() => location.pathname.replace(/.*(?=\/visit\/)/, '') + location.hash);
}

const field = '#visit-controllerMessage';

/** What stands in the field once the visit has been opened again. */
async function found(tab: Tab, address: string): Promise<string> {
  await tab.go('/tables/');
  await tab.go(address);
  await tab.see('.visit-details').catch(async (error: unknown) => {
    throw new Error(`instead: ${await tab.text('main')}`, { cause: error });
  });
  // A page that is left while it loads says so; that is no fault of it.
  tab.problems.length = 0;
  await tab.evaluate(() => document.querySelector('.visit-details details')?.setAttribute('open', ''));
  return tab.valueOf(field);
}

type Leave = (tab: Tab, device: Device) => Promise<Tab>;

const leaves: Record<string, Leave> = {
  'by another address': async (tab) => {
    await tab.go('/tables/');
    return tab;
  },
  'by a reload': async (tab) => {
    await tab.reload();
    return tab;
  },
  'by closing the tab': async (tab, device) => {
    const other = await device.open('/tables/');
    await tab.close();
    return other;
  },
};

const pause = (milliseconds: number) => new Promise((done) => setTimeout(done, milliseconds));

async function leaveAfterTyping(engine: Engine, leave: Leave): Promise<void> {
  const device = await engine.device();
  let tab = await device.open('/visit/');
  const address = await newVisit(tab);
  for (let turn = 0; turn < tries; turn++) {
    const typed = `Axis 3 trip ${turn}`;
    await tab.fill(field, typed);
    await pause(30 + (turn * 270) / tries);
    tab = await leave(tab, device);
    const left = await found(tab, address);
    expect([typed, typed.slice(0, -1)], `after ${turn} turns`).toContain(left);
  }
}

eachEngine((engine) => {
  test.each(Object.entries(leaves))('a visit that is left in the middle of a word keeps it: %s', async (_, leave) => {
    await leaveAfterTyping(engine, leave);
  });

  test.skipIf(!engine.ownDevice)(
    'a browser that is killed while somebody types loses half a second at most',
    async () => {
      const device = await engine.ownDevice?.();
      if (device === undefined) throw new Error('no device');
      let tab = await device.open('/visit/');
      const address = await newVisit(tab);
      for (let turn = 0; turn < Math.ceil(tries / 2); turn++) {
        const early = `Message ${turn} `;
        await tab.fill(field, early);
        // Keys that follow each other too quickly for any pause: nothing settles in between.
        for (const key of 'abcdefgh') {
          await tab.type(key);
          await pause(100);
        }
        await pause(400);
        await device.kill();
        await device.start();
        tab = await device.open('/visit/');
        const left = await found(tab, address);
        expect(`${early}abcdefgh`.startsWith(left)).toBe(true);
        expect(left.length, left).toBeGreaterThanOrEqual(`${early}abcdefgh`.length - 1);
      }
    },
  );

  test('what is typed without a pause is never said to be saved before it is', async () => {
    const tab = await engine.open('/visit/');
    await newVisit(tab);
    await tab.fill(field, 'Overcurrent');
    expect(await tab.text('.save-status')).not.toMatch(/^Saved/);
    await tab.waitFor(() => document.querySelector('.save-status')?.textContent?.startsWith('Saved'));
  });
});
