import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { address, newWindow, open, openIn } from './support/open.ts';
import { fileOf, importVisit, listed, textOf } from './support/visit-files.ts';
import { Visitor } from './support/visitor.ts';

const half = visitOf(motorAndCable.slice(0, 1));
const whole = visitOf(motorAndCable, { axis: 'Carriage' }, 'marrow-bay-2');
const banner = (page: Page) => page.locator('.save-trouble');

async function contextWith(script: () => void): Promise<BrowserContext> {
  const context = await newWindow({ viewport: { width: 820, height: 1000 } });
  await context.addInitScript(script);
  return context;
}

describe('a file', () => {
  test.each([
    ['damaged', '{"format":"overcurrent-fieldbook-visit","version":1,"id":', 'This is damaged or was cut off'],
    ['foreign', { format: 'shopping-list', items: [] }, 'This is not a visit of this handbook'],
    ['newer', { ...half, version: 99 }, 'This was made with a newer edition'],
    ['edited so that it does not fit', { ...half, machine: 7 }, 'does not fit its format at machine'],
    ['huge', JSON.stringify({ ...half, notes: 'x'.repeat(9_000_000) }), 'This is larger than a visit can be'],
  ])('that is %s gives a clear message and changes nothing', async (_kind, content, message) => {
    const page = await open('/visit/', { width: 360 });
    await importVisit(page, whole);
    await page.goto(page.url().replace(/#.*/, '#visits'));
    const before = await listed(page);
    await page.locator('#import-file').setInputFiles(fileOf(content, 'other.json'));
    await page.locator('.import-problem', { hasText: message }).waitFor();
    await page.reload();
    expect(await listed(page)).toEqual(before);
  });

  test('that is here already: the person chooses to keep both', async () => {
    const page = await open('/visit/');
    await importVisit(page, whole);
    await page.goto(page.url().replace(/#.*/, '#visits'));
    await page.locator('#import-file').setInputFiles(fileOf({ ...whole, notes: 'second' }));
    await page.getByText('This visit is on this device already').waitFor();
    expect(await listed(page)).toHaveLength(1);
    await page.getByRole('button', { name: 'Keep both' }).click();
    await page.waitForURL(/#visit=/);
    await page.getByRole('link', { name: 'All visits' }).click();
    expect(await listed(page)).toHaveLength(2);
  });
});

test('a visit is exported, deleted, put back by undo, deleted, and imported again from its file', async () => {
  const page = await open('/visit/');
  await importVisit(page, whole);
  await page.getByRole('link', { name: 'All visits' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Export/ }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('visit-Marrow-Bay-line-2-invented-Carriage-2026-03-03.json');
  const text = await textOf(download);
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByText('No visits yet.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.visit-list > li').waitFor();
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByText('No visits yet.').waitFor();
  await importVisit(page, JSON.parse(text));
  await page.getByRole('heading', { name: 'Replace: motor and motor cable.' }).waitFor();
});

test('two tabs on one visit: the second is told, and what both typed is kept', async () => {
  const first = await open('/visit/');
  await importVisit(first, half);
  const second = await openIn(first.context(), `/visit/${new URL(first.url()).hash}`);
  await second.locator('.visit-steps').waitFor();
  await new Visitor(first).choose('What was live or moving when it tripped?', 'Everything was warm');
  await new Visitor(first).saved();
  await second.getByText('This visit was changed in another tab').waitFor();
  await new Visitor(second).choose('What was live or moving when it tripped?', 'Something else each time');
  await banner(second).getByText('Nothing is lost: keep both').waitFor();
  await second.getByRole('button', { name: 'Keep both' }).click();
  await expect.poll(() => new URL(second.url()).hash).not.toBe(new URL(first.url()).hash);
  await second.locator('.visit-step', { hasText: 'Now and then' }).waitFor();
  await second.getByRole('link', { name: 'All visits' }).click();
  expect(await listed(second)).toHaveLength(2);
  await first.reload();
  await first.locator('.visit-step input[value="when-hot"]:checked').waitFor();
});

test('a browser without a channel between tabs: the person who comes back to a tab is told that it is older', async () => {
  const context = await contextWith(() => {
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
  });
  const first = await openIn(context, '/visit/');
  await importVisit(first, half);
  const second = await openIn(context, `/visit/${new URL(first.url()).hash}`);
  await new Visitor(second).choose('What was live or moving when it tripped?', 'Everything was warm');
  await new Visitor(second).saved();
  await first.evaluate(() => dispatchEvent(new Event('focus')));
  await first.getByText('This visit was changed in another tab').waitFor();
  await first.getByRole('button', { name: 'Show the newer one' }).click();
  await first.locator('.visit-step input[value="when-hot"]:checked').waitFor();
  // Its own save is no other tab's.
  await new Visitor(first).choose('What was live or moving when it tripped?', 'Something else each time');
  await first.evaluate(() => dispatchEvent(new Event('focus')));
  await new Visitor(first).saved();
  expect(await first.getByText('This visit was changed in another tab').count()).toBe(0);
});

test('deleted in another tab: it can be put back', async () => {
  const first = await open('/visit/');
  await importVisit(first, half);
  const second = await openIn(first.context(), '/visit/');
  await second.getByRole('button', { name: /^Delete/ }).click();
  await first.getByText('This visit was deleted in another tab').waitFor();
  await new Visitor(first).choose('What was live or moving when it tripped?', 'Everything was warm');
  await first.getByRole('button', { name: 'Put it back' }).click();
  await new Visitor(first).saved();
  expect(await listed(second)).toHaveLength(1);
});

test('storage refused: the visit goes on in the window, says so, and can be taken out', async () => {
  const context = await contextWith(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused by the test', 'SecurityError');
    };
  });
  const page = await openIn(context, '/visit/');
  await page.getByText('This browser keeps nothing for this site').waitFor();
  const visitor = new Visitor(page);
  await visitor.start('Marrow Bay line 2 (invented)', 'Lift');
  await banner(page).getByText('This browser keeps nothing for this site').waitFor();
  await visitor.choose('How did you find the drive?', 'From the drawings');
  await visitor.goOn('What was live or moving?');
  await page.getByRole('link', { name: 'All visits' }).click();
  await page.getByText('Not saved, only in this window.').waitFor();
  await page.getByRole('link', { name: 'Marrow Bay line 2 (invented), Lift' }).click();
  expect(await visitor.openStep()).toBe('What was live or moving?');
  const download = page.waitForEvent('download');
  await banner(page).getByRole('button', { name: 'Export this visit as a file' }).click();
  expect(await textOf(download)).toContain('"not-permitted"');
});

test('storage full: what was saved stays, and with room again the rest is saved', async () => {
  const context = await contextWith(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...args) {
      if (sessionStorage.getItem('full')) throw new DOMException('full by the test', 'QuotaExceededError');
      return put.apply(this, args);
    };
  });
  const page = await openIn(context, '/visit/');
  await importVisit(page, half);
  await page.evaluate(() => sessionStorage.setItem('full', 'yes'));
  const visitor = new Visitor(page);
  await visitor.choose('What was live or moving when it tripped?', 'Everything was warm');
  await banner(page).getByText('The storage of this device is full').waitFor();
  await visitor.choose(/any axis fall/, 'No');
  await page.evaluate(() => sessionStorage.removeItem('full'));
  await page.getByRole('button', { name: 'Try again' }).click();
  await visitor.saved();
  await page.reload();
  await page.locator('.visit-step[data-step="symptom"]', { hasText: 'When it is hot' }).waitFor();
});

test('a record edited by hand: the verdict that its readings give counts, and the difference is said', async () => {
  const page = await open('/visit/');
  const { bridge } = whole.steps;
  if (bridge?.snapshot === undefined) throw new Error('the visit has lost its bridge');
  const form = { ...bridge.form, minusV: '3.8 Ω', worstAgain: '3.7 Ω' };
  await importVisit(page, { ...whole, steps: { ...whole.steps, bridge: { ...bridge, form } } });
  await page.getByText('Kept and today’s verdict differ').waitFor();
  await page.locator('.visit-step[data-step="bridge"]', { hasText: 'No-go' }).waitFor();
  await page.getByRole('heading', { name: 'Replace: complete drive, motor and motor cable.' }).waitFor();
});

test('a clock that was set back: the list goes by what was saved last, and the guide by its own numbers', async () => {
  const page = await open('/visit/');
  await importVisit(page, { ...half, createdAt: '2030-01-01T08:00:00+01:00', changedAt: '2030-01-01T08:00:00+01:00' });
  await new Visitor(page).choose('What was live or moving when it tripped?', 'Everything was warm');
  await new Visitor(page).choose(/any axis fall/, 'No');
  await new Visitor(page).goOn('Lock out, wait, measure the DC bus');
  await new Visitor(page).saved();
  await page.goto(page.url().replace(/#.*/, '#visits'));
  await importVisit(page, whole);
  await page.getByRole('link', { name: 'All visits' }).click();
  await page.locator('.visit-list > li').first().filter({ hasText: 'Carriage' }).waitFor();
});

test('without network the whole page goes on: steps, saving, report, link and code', async () => {
  const context = await contextWith(() => undefined);
  const page = await context.newPage();
  const failed: string[] = [];
  // The icon of the browser's tab may be asked for again; nothing on the page hangs on it.
  page.on('requestfailed', (request) => !request.url().endsWith('icon.svg') && failed.push(request.url()));
  await page.goto(address('/visit/'));
  // When the page is idle it fetches what it may need later: the typefaces first, this part last.
  await page.waitForFunction(() => {
    const parts = performance.getEntriesByType('resource');
    const hasLast = parts.some(({ name, duration }) => /WindingBars[^/]*\.js/.test(name) && duration > 0);
    return hasLast && [...document.fonts].every(({ status }) => status === 'loaded');
  });
  await context.setOffline(true);
  await importVisit(page, visitOf(motorAndCable.slice(0, 10)));
  const visitor = new Visitor(page);
  await visitor.lockOut();
  await visitor.goOn('Cable or motor');
  await visitor.type('isolation', {
    ...{ cableU: '3M', cableV: '3M', cableW: '3M', cablePE: '2G', cableEndsChecked: 'yes' },
    ...{ cableAgain: '2.9M', cableDried: 'yes', cableSister: '2.00G' },
    ...{ motorTogether: '1.8M', motorPE: '0.2 Ω', motorAgain: '1.8M', motorDried: 'yes' },
  });
  await visitor.saved();
  await page.getByRole('button', { name: 'Link and QR code' }).click();
  await page.locator('.qr-code').waitFor();
  await page.getByRole('link', { name: /^Report/ }).click();
  await page.locator('.report', { hasText: 'Replace: motor and motor cable.' }).waitFor();
  expect(failed).toEqual([]);
});
