import { expect, test } from 'vitest';
import { encodeCase, windingTemperatures } from '../../src/practice/case/case-code.ts';
import { axe } from './support/axe.ts';
import { tabTo } from './support/keyboard.ts';
import { overflowing } from './support/layout.ts';
import { open, openIn } from './support/open.ts';
import { smallTargets } from './support/targets.ts';
import { Trainee } from './support/trainee.ts';

const codeOf = (fault: string, seed: number) =>
  encodeCase({ fault, seed, windingCelsius: windingTemperatures[7] as number });

test('a shorted transistor, found the safe way', async () => {
  const page = await open(`/practice/#${codeOf('short-lower-V', 11)}`, { width: 820 });
  const trainee = new Trainee(page);
  await page.getByRole('heading', { level: 1, name: 'Case' }).waitFor();
  await page.getByText('Glassworks, machine and readings are invented').waitFor();
  await trainee.makeSafe();
  await trainee.press('Take off: leads U, V and W');
  const bridge = await trainee.measureBridge();
  expect(bridge[4]).toMatch(/^[\d.]+ Ω$/);
  expect(bridge[3]).toMatch(/kΩ$/);
  await trainee.press('Take off: PE core');
  for (const shown of await trainee.measureInsulation()) expect(shown).toMatch(/[MG]Ω$/);
  await trainee.turnTo('Multimeter, resistance');
  await trainee.measure('cable.drive.PE', 'ground');
  await trainee.measureWindings();
  expect(await axe(page)).toEqual([]);
  await trainee.decide('Replace or mend', 'complete drive');
  expect(await trainee.judgement()).toBe('Right');
  expect(await trainee.unsafe()).toEqual([]);
  await page.getByText('Lower transistor V shorted. Bad: complete drive.').waitFor();
  await page.getByText('The six readings at its output stage fail, and the odd one was read a second time.').waitFor();
  await page
    .getByRole('link', { name: /^Read: / })
    .first()
    .waitFor();
  expect(await page.getByText('You left this out').count()).toBe(0);
  await page.getByText('Nothing was unsafe: you would have come home.').waitFor();
  expect(await page.locator('.time-line [data-mark="told"]', { hasText: 'it settles this case' }).count()).toBe(6);
  expect(await axe(page)).toEqual([]);
});

test('an insulation test through the drive, on a phone, with the tab closed in between', async () => {
  const code = codeOf('frame-V-high', 71);
  const page = await open(`/practice/?case=${code.toLowerCase()}`, { width: 360, context: { hasTouch: true } });
  const first = new Trainee(page);
  await page.locator('.practice-work').waitFor();
  expect(await overflowing(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  await first.makeSafe();
  expect((await first.measureInsulation())[1]).toMatch(/Ω$/);
  const notes = await page.locator('.acts-done li').allTextContents();
  await page.close();

  const later = await openIn(page.context(), '/practice/');
  await later.getByText(`Case ${code} is under way`).waitFor();
  await later.getByRole('link', { name: 'Go on with it' }).click();
  const trainee = new Trainee(later);
  await expect.poll(() => later.locator('.acts-done li').allTextContents()).toEqual(notes);
  await trainee.press('Take off: leads U, V and W', 'Take off: PE core');
  expect((await trainee.measureBridge()).some((shown) => /^\d\.\d+ kΩ$/.test(shown))).toBe(true);
  await trainee.press('Take off: screen', 'Take off: motor connector');
  await trainee.turnToTester();
  for (const phase of ['U', 'V', 'W']) await trainee.measure(`motor.${phase}`, 'motor.frame');
  await trainee.decide('Replace or mend', 'motor', 'complete drive');
  expect(await trainee.judgement()).toBe('Unsafe. Decision: right');
  expect(await trainee.unsafe()).toEqual(['tester-on-drive']);
  await later.getByText('The drive, with the insulation tester').waitFor();
  // The harm stands at the first such act, and its article at each.
  const unsafeActs = later.locator('.time-line [data-mark="unsafe"]');
  expect(await unsafeActs.first().textContent()).toMatch(/^Unsafe .*breaks down the transistors.*Read: /);
  expect(await unsafeActs.nth(1).textContent()).toMatch(/^Unsafe As in act \d+\. Read: /);
  expect(await overflowing(later)).toEqual([]);
  expect(await axe(later)).toEqual([]);
  await later.getByRole('button', { name: 'The same case again' }).click();
  await later.getByText('Nothing yet.').waitFor();
});

test('a healthy axis, by keyboard alone: a sound motor is named, and the feedback says so', async () => {
  const page = await open('/practice/', { width: 1280, scheme: 'dark' });
  await page.getByRole('heading', { level: 1, name: 'Practice' }).waitFor();
  await tabTo(page, 'case-code');
  await page.keyboard.type('7K3');
  await page.keyboard.press('Enter');
  await page.getByText('That is not a case code').waitFor();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(codeOf('nuisance', 151).replaceAll('-', ' '));
  await page.keyboard.press('Enter');
  await page.locator('.practice-work').waitFor();
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
  await page.getByRole('button', { name: 'Switch the supply off' }).focus();
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Switch the supply on, control off');
  await page.getByRole('button', { name: 'DC+. Put the red lead here' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'DC−. Put the black lead here' }).focus();
  await page.keyboard.press('Space');
  await page.locator('button.measure').focus();
  await page.keyboard.press('Enter');
  await expect
    .poll(() => page.locator('.practice-last [role=status]').textContent())
    .toMatch(/red on DC\+, black on DC−\. \d/);
  await page.getByRole('button', { name: 'End the case' }).focus();
  await page.keyboard.press('Enter');
  await page.getByText('Choose what you decide.').waitFor();
  await new Trainee(page).decide('Replace or mend', 'motor');
  expect(await new Trainee(page).judgement()).toBe('Unsafe. Decision: a sound part replaced');
  expect(await new Trainee(page).unsafe()).toContain('meter-not-proved');
  await page.reload();
  await page.locator('.practice-feedback').waitFor();
  expect(await axe(page)).toEqual([]);
});

test('the page of codes hides its answers, and its links open the cases', async () => {
  const page = await open('/practice/codes/', { width: 820 });
  const answer = page.getByText('To be replaced or mended').first();
  expect(await answer.isVisible()).toBe(false);
  await page.locator('summary', { hasText: 'Answer to' }).first().click();
  expect(await answer.isVisible()).toBe(true);
  const code = (await page.locator('a.case-code').first().textContent()) ?? '';
  await page.locator('a.case-code').first().click();
  await page.getByRole('heading', { level: 1, name: `Case ${code}` }).waitFor();
});

test('a drawn case opens, and its code is in the address', async () => {
  const page = await open('/practice/', { width: 820 });
  await page.getByRole('button', { name: 'Draw a case', exact: true }).click();
  await page.locator('.practice-work').waitFor();
  const code = await page.locator('h1 .case-code').textContent();
  expect(new URL(page.url()).hash).toBe(`#${code}`);
});

test('without script the page says what is here', async () => {
  const page = await open('/practice/', { script: false });
  expect(await page.getByText('The simulated axis needs script').isVisible()).toBe(true);
  expect(await page.locator('.script-notice').isVisible()).toBe(false);
});
