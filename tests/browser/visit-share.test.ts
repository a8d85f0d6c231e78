import { describe, expect, test } from 'vitest';
import { shareText } from '../../src/visit/record/share.ts';
import { motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { address, open, openIn } from './support/open.ts';
import { importVisit, listed } from './support/visit-files.ts';
import { sound } from './support/visitor.ts';

const visit = visitOf(motorAndCable);

test('a visit goes by its link to another device, which asks before it stores anything', async () => {
  const sender = await open('/visit/', { width: 360 });
  await importVisit(sender, visit);
  await sender.getByRole('button', { name: 'Link and QR code' }).click();
  const link = await sender.getByLabel('Link', { exact: true }).inputValue();
  expect(link.startsWith(address('/visit/#share='))).toBe(true);
  await sender.getByRole('img', { name: 'QR code of the link' }).waitFor();

  const receiver = await open('/visit/', { width: 360 });
  await receiver.goto(link);
  await receiver.getByText('Nothing is stored yet.').waitFor();
  await receiver.getByText('Replace: motor and motor cable.').waitFor();
  const other = await openIn(receiver.context(), '/visit/');
  expect(await listed(other)).toEqual([]);
  await receiver.getByRole('button', { name: 'Store it on this device' }).click();
  await receiver.getByRole('heading', { name: 'Replace: motor and motor cable.' }).waitFor();
  await expect.poll(() => listed(other)).toEqual(['Marrow Bay line 2 (invented), Lift']);
});

test('a visit that is too long for a QR code says so and keeps the link', async () => {
  const page = await open('/visit/');
  // Words that don't repeat, so that packing can't make them short.
  const notes = Array.from({ length: 700 }, (_, index) => (index * 2_654_435_761).toString(36)).join(' ');
  await importVisit(page, { ...visit, notes });
  await page.getByRole('button', { name: 'Link and QR code' }).click();
  await page.getByText('too much in this for a QR code').waitFor();
  expect(await page.getByLabel('Link', { exact: true }).inputValue()).toContain('#share=');
  expect(await page.locator('.qr-code').count()).toBe(0);
});

describe.each(['/visit/', '/calculators/bridge/'])('a link to %s', (path) => {
  const share = shareText({ kind: 'visit', visit });
  const good = share.ok ? share.value : '';
  test.each([
    ['cut off', good.slice(0, 60)],
    ['not packed at all', '<img src=x onerror=alert(1)>'],
    ['a script address', 'javascript:alert(1)'],
    ['of a newer edition', good.replace(/^1/, '9')],
    ['far too long', `1.${'A'.repeat(200_000)}`],
  ])('that is %s gives a message, runs nothing and stores nothing', async (_kind, text) => {
    const page = await open(path, { width: 360 });
    await page.goto(address(`${path}#share=${encodeURIComponent(text)}`));
    await page.getByText('This link can’t be opened').waitFor();
    const list = await openIn(page.context(), '/visit/');
    expect(await listed(list)).toEqual([]);
  });
});

test('words that look like a program stay words', async () => {
  const words = '<img src=x onerror=alert(1)>';
  const text = shareText({ kind: 'visit', visit: { ...visit, machine: words, notes: words } });
  const page = await open('/visit/');
  await page.goto(address(`/visit/#share=${text.ok ? text.value : ''}`));
  await page.getByRole('heading', { name: words }).waitFor();
  await page.getByRole('button', { name: 'Store it on this device' }).click();
  await page.getByRole('link', { name: 'Report' }).click();
  await page.locator('.report', { hasText: words }).waitFor();
  expect(await page.locator('main img').count()).toBe(0);
});

test('a filled calculator goes by its link, which asks before it fills anything in', async () => {
  const sender = await open('/calculators/bridge/');
  await sender.waitForSelector('[data-live]');
  for (const [id, text] of Object.entries({ busVoltage: '0.02', ...sound.bridge })) {
    await sender.locator(`#bridge-${id}`).fill(text);
  }
  await sender.getByText('Taken off U, V and W').click();
  await sender.waitForSelector('.verdict[data-verdict="go"]');
  await sender.getByRole('button', { name: 'Link and QR code of this form' }).click();
  const link = await sender.getByLabel('Link', { exact: true }).inputValue();

  const receiver = await open('/calculators/bridge/');
  await receiver.goto(link);
  await receiver.getByText('This link holds a filled form.').waitFor();
  expect(await receiver.locator('#bridge-plusU').inputValue()).toBe('');
  await receiver.getByRole('button', { name: 'Fill it in here' }).click();
  await receiver.waitForSelector('.verdict[data-verdict="go"]');
  expect(await receiver.locator('#bridge-plusU').inputValue()).toBe('482k');
  expect(new URL(receiver.url()).hash).toBe('');

  const elsewhere = await open('/visit/');
  await elsewhere.goto(link.replace('/calculators/bridge/', '/visit/'));
  await elsewhere.getByRole('link', { name: 'Open the calculator' }).click();
  await elsewhere.getByText('This link holds a filled form.').waitFor();
});
