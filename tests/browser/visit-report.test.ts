import type { Page } from 'playwright-core';
import { extractText, getDocumentProxy } from 'unpdf';
import { expect, test } from 'vitest';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import { driveOnly, motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { nothingProven } from '../visits/nothing-proven.ts';
import { open } from './support/open.ts';
import { cameraPicture, pictureFile } from './support/pictures.ts';
import { importVisit } from './support/visit-files.ts';

type Sheet = 'owner' | 'parts' | 'annex';

interface Wish {
  format?: 'A4' | 'Letter';
  /** The only sheet to print; all of them without it. */
  only?: Sheet;
}

/** The report of a visit, open in the browser. */
async function report(visit: VisitRecord): Promise<Page> {
  const page = await open('/visit/');
  await importVisit(page, visit);
  await page.getByRole('link', { name: /^Report/ }).click();
  await page.locator('.report').waitFor();
  return page;
}

/** Prints and reads back: the text of each page in one line. */
async function print(page: Page, { format = 'A4', only }: Wish) {
  for (const sheet of ['owner', 'parts', 'annex'])
    await page.locator(`#print-${sheet}`).setChecked(only === undefined || sheet === only);
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  const { text } = await extractText(pdf, { mergePages: false });
  const pages = text.map((one) => one.replaceAll(/\s+/g, ' '));
  return { pages, text: pages.join(' ') };
}

const printed = async (visit: VisitRecord, wish: Wish = {}) => print(await report(visit), wish);

const drive = visitOf(driveOnly);
const motor = visitOf(motorAndCable);
const unfinished = visitOf(driveOnly.slice(0, 9));
const suspects = visitOf(nothingProven['feedback-not-separated']?.typed ?? [], {
  controllerMessage: 'OVERCURRENT, AXIS LIFT '.repeat(21).trim(),
  drive: 'Drive 2 of 3 '.repeat(38).trim(),
});

test.each([
  ['drive only', drive],
  ['motor with its cable', motor],
  ['not finished', unfinished],
  ['two suspects, and a long message', suspects],
] as [string, VisitRecord][])('%s: the sheets for the owner and for the parts are one page each', async (_, visit) => {
  const page = await report(visit);
  for (const only of ['owner', 'parts'] as const)
    for (const format of ['A4', 'Letter'] as const)
      expect((await print(page, { only, format })).pages, `${only}, ${format}`).toHaveLength(1);
});

test('each sheet begins on its own page, and with the decision', async () => {
  const { pages } = await printed(drive);
  const heads = ['Sheet for the owner', 'Sheet for the parts desk', 'Annex: what was measured and done'];
  expect(pages.length).toBeGreaterThanOrEqual(3);
  expect(pages.length).toBeLessThanOrEqual(5);
  for (const [index, head] of heads.entries()) {
    expect(pages[index]).toMatch(new RegExp(`Record marrow-bay-1 ${head} Replace: complete drive\\.`));
  }
});

test('what is not chosen is not printed, and without a sheet nothing is', async () => {
  const { text } = await printed(drive, { only: 'parts' });
  expect(text).toContain('Order what stands beside “Replace”, and nothing else');
  expect(text).not.toContain('Signature');
  expect(text).not.toContain('What was done');
  const page = await open('/visit/', { width: 360 });
  await importVisit(page, drive);
  await page.getByRole('link', { name: /^Report/ }).click();
  for (const sheet of ['owner', 'parts', 'annex']) await page.locator(`#print-${sheet}`).uncheck();
  await page.getByText('Choose at least one sheet.').waitFor();
  expect(await page.getByRole('button', { name: 'Print, or save as PDF' }).isDisabled()).toBe(true);
});

test('the parts desk sees the suspect transistor, and cable and motor', async () => {
  const position = async (visit: VisitRecord, drawing: string) => {
    const page = await report(visit);
    await page.emulateMedia({ media: 'print' });
    return page.locator(`[data-sheet="parts"] ${drawing}`);
  };
  expect(await (await position(drive, '[data-state="suspect"]')).getAttribute('data-position')).toBe('minusV');
  expect(await (await position(drive, 'li b')).first().textContent()).toBe('The lower transistor of V is shorted');
  const parts = await position(motor, '[data-status="proven-bad"]');
  expect(await parts.evaluateAll((all) => all.map((one) => one.getAttribute('data-part')))).toEqual(['cable', 'motor']);
});

test('photographs are in the annex with their captions', async () => {
  const caption = 'Core W, chafed at the gland';
  const page = await open('/visit/');
  await importVisit(page, motor);
  await page.locator('.visit-step[data-step="inspect"] h3 button').click();
  await page.getByLabel('Choose pictures').setInputFiles(pictureFile(await cameraPicture(page)));
  await page.getByLabel('What photograph 1 shows').fill(caption);
  await page.getByRole('link', { name: /^Report/ }).click();
  const image = page.locator('[data-sheet="annex"] .photograph');
  await image.waitFor();
  expect(await image.getAttribute('alt')).toBe(caption);
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(await page.pdf())), { mergePages: true });
  expect(text.replaceAll(/\s+/g, ' ')).toMatch(new RegExp(`Photographs 1\\. ${caption} Look at all parts, 20`));
});

test('the drive’s report says what happened, what was measured, by which limits, and what to replace', async () => {
  const { text } = await printed(drive);
  expect(text).toContain('Replace: complete drive.');
  expect(text).toContain('The six readings at its output stage fail, and the odd one was read a second time.');
  expect(text).toContain('OVERCURRENT, AXES BRIDGE CARRIAGE LIFT');
  expect(text).toContain('When the axes are enabled.');
  // What was measured, with its unit as it was judged, with what and when.
  expect(text).toMatch(
    /Terminals Reading Limit Verdict Time Instrument of the step DC-bus voltage 0.03 V 100 mV \[a\] Passes/,
  );
  expect(text).toMatch(/DC\+ to U 482 kΩ 10 % \[b\] Passes 06:36/);
  expect(text).toMatch(/DC− to V 3.8 Ω .+ Fails 06:36/);
  expect(text).toContain('Multimeter, M-07, calibrated until 2026-09, 1.2 % + 4 counts');
  // Each verdict with its limits, their values, and where they come from.
  expect(text).toContain('Six readings at the output stage: No-go');
  expect(text).toContain('Winding resistance: Go');
  expect(text).toMatch(/Limits: .*Residual voltage that falsifies a resistance reading 100 mV/);
  expect(text).toMatch(/Unbalance of the line-to-line resistances that passes 2 % \(published standard, .+\)/);
  expect(text).toContain('Never exchange parts between axes');
  expect(text).toContain('lock out, wait the time on the drive’s label, and measure the DC bus');
  expect(text).toMatch(/Name .*Ines.* Signature .*Date|Name Signature Date Ines/);
  // Lockouts and retries with their times are part of the proof.
  expect(text).toMatch(/06:28 Enable with the motor leads off: It trips again/);
});

test('what was done until the machine runs is kept with each answer, and printed in the annex', async () => {
  const page = await open('/visit/', { width: 360 });
  await importVisit(page, drive);
  await page.getByText('Return to service').click();
  const row = (name: RegExp) => page.locator('.restart fieldset', { hasText: name });
  await row(/What it is joined to/)
    .getByText('Fault')
    .click();
  await page.getByRole('heading', { name: 'Not in order. Do not enable' }).waitFor();
  await page.locator('#restart-remark').fill('Water in the gland');
  await page.reload();
  await page.getByRole('heading', { name: 'Not in order. Do not enable' }).waitFor();
  expect(await page.locator('#restart-remark').inputValue()).toBe('Water in the gland');
  await page.getByRole('link', { name: /^Report/ }).click();
  await page.locator('.report').waitFor();
  const { text } = await print(page, { only: 'annex' });
  expect(text).toMatch(/Return to service Not in order\. Do not enable\..*measured again Fault.*Water in the gland/);
});

test('what the next drive will be joined to is told where motor and cable were tested', async () => {
  const { text } = await printed(drive);
  expect(text).toContain(
    'What the next drive will be joined to Both were tested before the new drive comes. The readings are in the annex.',
  );
  expect(text).toContain('Motor: tested together with the other, and passed.');
});

test('and is said to be missing where they were not', async () => {
  const { text } = await printed(unfinished, { format: 'Letter' });
  expect(text).toContain('No decision yet');
  expect(text).toContain('Proof is missing. No drive is joined before it is there.');
  expect(text).toContain('Motor cable: PROOF IS MISSING');
});

test('the report speaks in the sentences of the screen', async () => {
  const page = await open('/visit/');
  await importVisit(page, motor);
  await page.locator('.visit-step[data-step="insulation"] h3 button').click();
  const onScreen = await page
    .locator('.visit-step .findings > li')
    .evaluateAll((items) => items.map((item) => item.lastChild?.textContent?.trim() ?? ''));
  const { text } = await printed(motor);
  expect(onScreen.length).toBeGreaterThan(3);
  // A printed µ is read back as the Greek letter.
  const plain = (words: string) => words.replaceAll(/\s+/g, ' ').normalize('NFKC');
  expect(onScreen.filter((sentence) => !plain(text).includes(plain(sentence)))).toEqual([]);
});
