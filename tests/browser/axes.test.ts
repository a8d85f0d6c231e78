import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { newVisit } from '../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import { enterStep } from '../support/visit-records.ts';
import { soundForms } from '../unit/visit/guide/support/sound-forms.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { address, open } from './support/open.ts';
import { importVisit } from './support/visit-files.ts';

// Visits to the invented Marrow Bay Glassworks: 900, 400 and 150 MΩ over three years.

const carriage = { machine: 'Gantry 2', axis: 'Carriage', motor: 'SM-40, no. 17', drive: 'D-9, no. 4' };

function visited(id: string, day: string, together: string, axis = carriage.axis): VisitRecord {
  const visit = newVisit(id, `${day}T08:00:00+01:00`, { ...carriage, axis });
  return enterStep(visit, 'insulation', { ...soundForms.insulation, together }, `${day}T08:30:00+01:00`);
}

const visits = [
  visited('visit-2024-one', '2024-03-02', '900 MΩ'),
  visited('visit-2025-two', '2025-03-02', '400 MΩ', 'Carriage X'),
  visited('visit-2026-three', '2026-03-02', '150 MΩ'),
];

async function withVisits(page: Page): Promise<void> {
  for (const visit of visits) {
    await page.goto(address('/visit/'));
    await importVisit(page, visit);
  }
  await page.goto(address('/axes/'));
  await page.locator('.axis-list > li').first().waitFor();
}

const rows = (page: Page) => page.locator('.axis-list > li > a').allTextContents();

test('the register grows from the visits; two spellings are merged, and apart again', async () => {
  const page = await open('/axes/');
  await withVisits(page);
  expect(await rows(page)).toEqual(['Gantry 2, Carriage', 'Gantry 2, Carriage X']);
  await page.locator('#axes-search').fill('carriage x sm-40');
  await expect.poll(() => rows(page)).toEqual(['Gantry 2, Carriage X']);
  await page.locator('#axes-search').fill('');
  await page.getByRole('link', { name: 'Gantry 2, Carriage', exact: true }).click();
  await page.getByText('Merge a spelling into this one').click();
  await page.locator('#merge-axis').selectOption({ label: 'Gantry 2, Carriage X' });
  await page.getByRole('button', { name: 'Merge it into this axis' }).click();
  await page.getByText('Also called Gantry 2, Carriage X.').waitFor();
  await page.locator('.axis-trend', { hasText: '400 MΩ on 2025-03-02, 150 MΩ now' }).waitFor();
  expect(await page.locator('[aria-label="Visits and decisions"] tbody tr').count()).toBe(3);
  await page.reload();
  await page.getByText('Also called Gantry 2, Carriage X.').waitFor();
  await page.getByRole('button', { name: /^Separate it again/ }).click();
  await expect.poll(() => page.locator('[aria-label="Visits and decisions"] tbody tr').count()).toBe(2);
  await page.getByRole('link', { name: 'All axes' }).click();
  await expect.poll(() => rows(page)).toEqual(['Gantry 2, Carriage', 'Gantry 2, Carriage X']);
});

test('the third visit shows the reading before beside the field and the fall beside its go', async () => {
  const page = await open('/axes/');
  await withVisits(page);
  await page.goto(`${address('/visit/')}#visit=visit-2026-three`);
  await page.locator('.visit-steps').waitFor();
  await page.locator('h3', { hasText: 'Compared with earlier visits' }).waitFor();
  await page.getByText('Fallen since the last visit').first().waitFor();
  await page.locator('#step-insulation').click();
  expect(await page.locator('#insulation-together-note').textContent()).toContain(
    'Last visit, 2024-03-02: 900 MΩ at 24 °C.',
  );
  expect(await page.locator('#insulation-together').inputValue()).toBe('150 MΩ');
  expect(await page.locator('#insulation-verdict').getAttribute('data-verdict')).toBe('go');
  expect(await page.locator('#insulation-verdict h3').textContent()).toContain('but the insulation has fallen');
  await page.getByRole('link', { name: 'History of this axis' }).click();
  await page.getByRole('heading', { level: 1, name: 'Gantry 2, Carriage' }).waitFor();
});

test('an axis is noted, renamed, and a visit begins there with all that is known', async () => {
  const page = await open('/axes/');
  await page.getByRole('link', { name: 'Note an axis' }).click();
  await page.getByLabel('Machine', { exact: true }).fill('Gantry 3');
  await page.getByLabel('Axis', { exact: true }).fill('Z');
  await page.getByLabel('Motor', { exact: true }).fill('SM-48, no. 2');
  await page.getByLabel('Length of the motor cable').fill('12 m');
  await page.getByRole('button', { name: 'Save the axis' }).click();
  await page.getByRole('heading', { level: 1, name: 'Gantry 3, Z' }).waitFor();
  await page.getByRole('button', { name: 'Change or rename' }).click();
  await page.getByLabel('Axis', { exact: true }).fill('Lift');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Also called Gantry 3, Z.').waitFor();
  await page.getByRole('button', { name: 'Baseline visit' }).click();
  await page.getByRole('heading', { level: 1, name: 'Gantry 3, Lift' }).waitFor();
  await page.getByText('Baseline of a sound axis').waitFor();
  expect(await page.locator('.visit-step').count()).toBe(1);
  await page.getByText('Support every axis that can fall').waitFor();
  await page.getByRole('link', { name: 'History of this axis' }).click();
  await page.locator('b', { hasText: 'Baseline.' }).waitFor();

  // A new visit takes the names with one press; a name that is typed leaves only what fits.
  await page.goto(address('/visit/'));
  await page.getByRole('button', { name: 'Start a visit' }).click();
  const offered = page.getByRole('button', { name: 'Gantry 3, Lift', exact: true });
  await offered.waitFor();
  await page.locator('#visit-machine').fill('Gantry 4');
  await offered.waitFor({ state: 'detached' });
  await page.locator('#visit-machine').fill('gantry');
  await offered.click();
  await page.getByRole('link', { name: 'History of this axis' }).waitFor();
  expect(await page.locator('#visit-machine').inputValue()).toBe('Gantry 3');
  expect(await page.locator('#visit-axis').inputValue()).toBe('Lift');
});

describe.each([
  { width: 360, scheme: 'light' as const },
  { width: 1280, scheme: 'dark' as const },
])('at $width px, $scheme', (look) => {
  test('list, axis and form fit the width, and axe finds nothing', async () => {
    const page = await open('/axes/', look);
    await withVisits(page);
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
    await page.getByRole('link', { name: 'Gantry 2, Carriage', exact: true }).click();
    await page.locator('.axis-series').first().waitFor();
    await page.getByText('Note a part that was changed').click();
    await page.getByRole('button', { name: 'Change or rename' }).click();
    await page.getByText('Merge a spelling into this one').click();
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
    // A mouse points finer: on a desk targets may be smaller.
    if (look.width > 820) return;
    const small = await page
      .locator('main :is(button, summary, input, select, a.button, td a, th a, .running-head a)')
      .evaluateAll((all) =>
        all
          .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 48)
          .map((one) => one.outerHTML),
      );
    expect(small).toEqual([]);
  });
});
