import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { driveOnly, motorAndCable, visitOf } from '../support/marrow-bay-visits.ts';
import { open } from './support/open.ts';
import { importVisit } from './support/visit-files.ts';

const visits = { 'drive only': visitOf(driveOnly), 'motor with its cable': visitOf(motorAndCable) };

/** Prints the report of a visit and reads it back: the text that is on the paper, in one line, and the sheets. */
async function printed(visit: keyof typeof visits | typeof unfinished, format: 'A4' | 'Letter') {
  const page = await open('/visit/');
  await importVisit(page, typeof visit === 'string' ? visits[visit] : visit);
  await page.getByRole('link', { name: /^Report/ }).click();
  await page.locator('.report').waitFor();
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  const { totalPages, text } = await extractText(pdf, { mergePages: true });
  return { sheets: totalPages, text: text.replaceAll(/\s+/g, ' ') };
}

const unfinished = visitOf(driveOnly.slice(0, 9));

describe.each(['A4', 'Letter'] as const)('on %s', (format) => {
  test.each(Object.keys(visits) as (keyof typeof visits)[])('%s fits two sheets', async (name) => {
    expect((await printed(name, format)).sheets).toBeLessThanOrEqual(2);
  });
});

test('the drive’s report says what happened, what was measured, by which limits, and what to replace', async () => {
  const { text } = await printed('drive only', 'A4');
  expect(text).toContain('Replace: complete drive.');
  expect(text).toContain('The six readings at its output stage fail, and the odd one was read a second time.');
  expect(text).toContain('OVERCURRENT, AXES BRIDGE CARRIAGE LIFT');
  expect(text).toContain('When the axes are enabled.');
  // What was measured, exactly as typed, with what and when.
  expect(text).toContain('DC+ to U 482k');
  expect(text).toContain('06:36, Multimeter, M-07, calibrated until 2026-09, 1.2 % + 4 counts');
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

test('what the next drive will be joined to is told where motor and cable were tested', async () => {
  const { text } = await printed('drive only', 'A4');
  expect(text).toContain(
    'What the next drive will be joined to Both were tested before the new drive comes. The readings are below.',
  );
  expect(text).toContain('Motor: tested together with the other, and passed.');
});

test('and is said to be missing where they were not', async () => {
  const { text } = await printed(unfinished, 'Letter');
  expect(text).toContain('No decision yet');
  expect(text).toContain('Proof is missing. No drive is joined before it is there.');
  expect(text).toContain('Motor cable: PROOF IS MISSING');
});

test('the report speaks in the sentences of the screen', async () => {
  const page = await open('/visit/');
  await importVisit(page, visits['motor with its cable']);
  await page.locator('.visit-step[data-step="insulation"] h3 button').click();
  const onScreen = await page
    .locator('.visit-step .findings > li')
    .evaluateAll((items) => items.map((item) => item.lastChild?.textContent?.trim() ?? ''));
  const { text } = await printed('motor with its cable', 'A4');
  expect(onScreen.length).toBeGreaterThan(3);
  // A printed µ is read back as the Greek letter.
  const plain = (words: string) => words.replaceAll(/\s+/g, ' ').normalize('NFKC');
  expect(onScreen.filter((sentence) => !plain(text).includes(plain(sentence)))).toEqual([]);
});
