import { describe, expect, test } from 'vitest';
import { jsonOf } from '../content/support/files.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';

const cases = jsonOf('content/cases/*.json').map(({ path, data }) => ({
  id: path.replace(/^.*\/|\.json$/g, ''),
  data: data as { title: string; forms: Record<string, Record<string, string>>; expected: Record<string, string> },
}));

test('the list leads to every case, and says that all is invented', async () => {
  const page = await open('/cases/', { width: 360 });
  for (const { id, data } of cases) {
    expect(await page.getByRole('link', { name: data.title, exact: true }).getAttribute('href')).toBe(`/cases/${id}/`);
  }
  expect(await page.locator('.caution').first().textContent()).toContain('invented');
  expect(await axe(page)).toEqual([]);
});

test.each(cases)('$id shows the verdicts that were stated by hand, without script too', async ({ id, data }) => {
  const page = await open(`/cases/${id}/`, { width: 360, script: false });
  const verdicts = page.locator('.verdict:not(.decision)');
  const shown = await verdicts.evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.verdict));
  expect(shown).toEqual(Object.keys(data.forms).map((name) => data.expected[name]));
  expect(await page.locator('.lead').textContent()).toContain('invented');
  expect(await overflowing(page)).toEqual([]);
});

describe('from the page of a case', () => {
  test('axe finds nothing, and another calculator than the first opens filled in', async () => {
    const page = await open('/cases/marrow-bay-no-fault-found/', { scheme: 'dark' });
    expect(await axe(page)).toEqual([]);
    await page.locator('a[href*="/calculators/trend/#case="]').click();
    await page.waitForSelector('.verdict[data-verdict="undecided"]');
    expect(await page.inputValue('#trend-rows')).toContain('2022-05-11');
  });

  test('a case that is not the first of a calculator opens it with its own readings', async () => {
    const page = await open('/cases/marrow-bay-all-three/');
    await page.locator('a[href*="/calculators/isolation/#case="]').click();
    await page.waitForSelector('.verdict[data-verdict="no-go"]');
    expect(await page.inputValue('#isolation-cableU')).toBe('90k');
  });

  test('the whole visit opens in the guide, with the same decision', async () => {
    const page = await open('/cases/marrow-bay-broken-pe/');
    const decision = (await page.locator('#decision').textContent()) ?? '';
    await page.getByRole('link', { name: 'Open this visit in the guide' }).click();
    await page.getByRole('heading', { name: 'A visit from a link' }).waitFor();
    expect(await page.locator('main').textContent()).toContain(decision.trim());
    await page.getByRole('button', { name: 'Store it on this device' }).click();
    await page.getByRole('heading', { name: decision.trim() }).waitFor();
    expect(await page.locator('main').textContent()).toContain('The motor frame can become live.');
  });
});
