import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { typeInto } from './support/keyboard.ts';
import { overflowing } from './support/layout.ts';
import { address, newWindow, open, openIn } from './support/open.ts';

/** Opens a calculator and waits until its script has come. */
async function calculator(path: string, options: Parameters<typeof open>[1] = {}): Promise<Page> {
  const page = await open(path, options);
  await page.waitForSelector('[data-live]');
  return page;
}

const verdict = (page: Page, word: string) => page.waitForSelector(`.verdict[data-verdict="${word}"]`);
const findings = (page: Page) => page.locator('.verdict').textContent();
const tapVisit = (page: Page) => page.getByRole('button', { name: /Fill in the worked visit/ }).click();

describe('by keyboard alone', () => {
  test('the bridge: go, then the reading that spoils it, with the reason', async () => {
    const page = await calculator('/calculators/bridge/');
    const plus = { 'bridge-plusU': '482k', 'bridge-plusV': '495k', 'bridge-plusW': '488k' };
    const minus = { 'bridge-minusU': '46.1k', 'bridge-minusV': '45,9 kΩ', 'bridge-minusW': '45.7k' };
    await typeInto(page, { 'bridge-busVoltage': '0.02', motorLeads: true, ...plus });
    await verdict(page, 'undecided');
    expect(await findings(page)).toContain('Not measured yet: DC− to U');
    await typeInto(page, minus);
    await verdict(page, 'go');
    await page.locator('#bridge-minusV').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('3.8 Ω');
    await verdict(page, 'no-go');
    expect(await findings(page)).toContain('short in the lower transistor of V');
    expect(await page.locator('[role="status"]', { hasText: 'Verdict: No-go' }).count()).toBe(1);
    // One reading keeps the power off; only the second one condemns the drive.
    expect(await page.locator('.next-steps').textContent()).toContain('Lift the tips, clean the terminal');
    expect(await page.locator('.next-steps').textContent()).not.toContain('Replace the complete drive');
    // It unfolds by itself once a reading fails.
    await page.locator('#bridge-worstAgain').waitFor();
    await page.fill('#bridge-worstAgain', '3.7 Ω');
    await page.locator('#bridge-alsoOnBus input[value="nothing"]').check();
    await page.locator('.next-steps', { hasText: 'Replace the complete drive' }).waitFor();
    await verdict(page, 'no-go');
  });

  test('the insulation: after a trip', async () => {
    const page = await calculator('/calculators/insulation/');
    await typeInto(page, {
      occasion: true,
      'insulation-together': '>700M',
      'insulation-PE': '0.3 Ω',
      idleCores: true,
      'insulation-testVoltage': '500',
      'insulation-ratedVoltage': '400',
      'insulation-windingTemperature': '22',
    });
    await verdict(page, 'go');
    await page.locator('.plot .point').first().waitFor({ state: 'attached' });
    expect(await page.locator('.plot .point').count()).toBe(1);
    expect(await page.locator('.limits-used a').first().getAttribute('href')).toContain('/tables/#');
  });

  test('the isolation: each stage opens when it is asked for', async () => {
    const page = await calculator('/calculators/isolation/');
    const stage = (number: number) => page.locator(`details[data-stage="${number}"]`);
    const row = (name: string, text: string) =>
      Object.fromEntries(['U', 'V', 'W'].map((phase) => [`isolation-${name}${phase}`, text]));
    await typeInto(page, {
      idleCores: true,
      'isolation-joinedTogether': '3M',
      'isolation-joinedPE': '0.3 Ω',
      'isolation-testVoltage': '500',
      'isolation-windingTemperature': '25',
    });
    await page.waitForSelector('details[data-stage="2"][open]');
    expect(await stage(3).getAttribute('open')).toBeNull();
    await typeInto(page, { ...row('cable', '2G'), 'isolation-cablePE': '2G', ...row('bonded', '2G') });
    await page.waitForSelector('details[data-stage="3"][open]');
    await typeInto(page, { 'isolation-motorTogether': '3M', 'isolation-motorPE': '0.2 Ω' });
    await page.waitForSelector('[data-part="motor"][data-status="suspect"]');
    await page.waitForSelector('[data-part="cable"][data-status="proven-good"]');
    expect(await page.locator('.next-steps').textContent()).toContain('read the lowest terminal once more');
  });
});

describe('an entry that can’t be read', () => {
  test('gets a message beside it, no verdict, and keeps the rest', async () => {
    const page = await calculator('/calculators/bridge/');
    await tapVisit(page);
    await verdict(page, 'no-go');
    await page.fill('#bridge-plusU', '450');
    await page.locator('#bridge-plusU').blur();
    await verdict(page, 'empty');
    expect(await page.locator('#bridge-plusU-error').textContent()).toContain('has no unit');
    expect(await page.getAttribute('#bridge-plusU', 'aria-invalid')).toBe('true');
    expect(await page.getAttribute('#bridge-plusU', 'aria-describedby')).toContain('bridge-plusU-error');
    expect(await page.inputValue('#bridge-minusV')).toBe('3.8 Ω');
    await page.getByRole('button', { name: '450 kΩ' }).click();
    expect(await page.inputValue('#bridge-plusU')).toBe('450 kΩ');
    await verdict(page, 'no-go');
  });

  test('does not nag while one is typing', async () => {
    const page = await calculator('/calculators/bridge/');
    await page.locator('#bridge-plusU').pressSequentially('45');
    expect(await page.locator('.error').count()).toBe(0);
    await page.waitForSelector('#bridge-plusU-error');
  });

  test('is listed with the others where there are several, with links that go there', async () => {
    const page = await calculator('/calculators/bridge/');
    await page.fill('#bridge-plusU', 'abc');
    await page.fill('#bridge-minusW', 'x'.repeat(10_000));
    const summary = page.locator('.error-summary');
    await summary.getByRole('link', { name: 'DC− to W' }).waitFor();
    expect(await summary.textContent()).toContain('2 fields');
    await summary.getByRole('link', { name: 'DC− to W' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('bridge-minusW');
    expect(await overflowing(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });
});

describe('the worked visit', () => {
  test('gives its verdict in one tap', async () => {
    const page = await calculator('/calculators/isolation/', { width: 360 });
    await tapVisit(page);
    await verdict(page, 'no-go');
  });

  test('opens a calculator filled in from the page of the case', async () => {
    const page = await open('/cases/marrow-bay-lift/');
    await page.locator('a[href*="/calculators/isolation/#case="]').click();
    await verdict(page, 'no-go');
    expect(await page.inputValue('#isolation-motorPE')).toBe('0.2 Ω');
  });

  test('never costs what was typed before: it can be undone', async () => {
    const page = await calculator('/calculators/bridge/');
    await page.fill('#bridge-plusU', '123k');
    await tapVisit(page);
    expect(await page.inputValue('#bridge-plusU')).toBe('482k');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.inputValue('#bridge-plusU')).toBe('123k');
    await page.getByRole('button', { name: 'Clear the form' }).click();
    expect(await page.inputValue('#bridge-plusU')).toBe('');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.inputValue('#bridge-plusU')).toBe('123k');
  });
});

describe('what was typed', () => {
  test('survives a reload, with its verdict', async () => {
    const page = await calculator('/calculators/bridge/#case=marrow-bay-lift');
    await verdict(page, 'no-go');
    await page.fill('#bridge-minusV', '45.9k');
    // The second reading of that terminal still says short.
    await verdict(page, 'undecided');
    await page.fill('#bridge-worstAgain', '45.8k');
    await verdict(page, 'go');
    await page.reload();
    await verdict(page, 'go');
    expect(await page.inputValue('#bridge-minusV')).toBe('45.9k');
  });

  test('is still there later, in the same tab and after it is closed, and the page says so until it is cleared', async () => {
    const page = await calculator('/calculators/bridge/');
    const context = page.context();
    await page.fill('#bridge-plusU', '123k');
    await page.locator('#bridge-plusU').blur();
    await page.goto(page.url().replace('bridge', 'insulation'));
    await page.goBack();
    await page.getByText('Kept on this device from').waitFor();
    expect(await page.inputValue('#bridge-plusU')).toBe('123k');
    await page.close();
    const later = await openIn(context, '/calculators/bridge/');
    await later.getByText('Kept on this device from').waitFor();
    expect(await later.inputValue('#bridge-plusU')).toBe('123k');
    await later.getByRole('button', { name: 'Clear them' }).click();
    expect(await later.inputValue('#bridge-plusU')).toBe('');
    await later.reload();
    await later.locator('[data-island="bridge"][data-live]').waitFor();
    expect(await later.getByText('Kept on this device from').count()).toBe(0);
  });

  test('before the script has come is kept', async () => {
    const context = await newWindow();
    let release = () => {};
    const held = new Promise<void>((done) => {
      release = done;
    });
    await context.route(/_astro\/Calculator\.[^.]+\.js$/, async (route) => {
      await held;
      await route.continue();
    });
    const page = await openIn(context, '/calculators/bridge/');
    await page.fill('#bridge-busVoltage', '320');
    await page.check('input[name="motorLeads"][value="off"]');
    expect(await page.locator('[data-live]').count()).toBe(0);
    release();
    await verdict(page, 'stop');
    expect(await page.inputValue('#bridge-busVoltage')).toBe('320');
    expect(await page.isChecked('input[name="motorLeads"][value="off"]')).toBe(true);
  });
});

test('a charged bus stops everything, and no resistance is judged', async () => {
  const page = await calculator('/calculators/bridge/#case=marrow-bay-lift');
  await verdict(page, 'no-go');
  await page.fill('#bridge-busVoltage', '311 V');
  await verdict(page, 'stop');
  expect(await page.locator('.verdict-word').textContent()).toBe('Stop');
  expect(await page.locator('[data-state="suspect"]').count()).toBe(0);
});

test('the schematic marks the suspect, in word, sign and text equivalent', async () => {
  const page = await calculator('/calculators/bridge/#case=marrow-bay-lift');
  await verdict(page, 'no-go');
  expect(await page.locator('[data-state="suspect"]').getAttribute('data-position')).toBe('minusV');
  expect(await page.locator('[data-state="suspect"]').textContent()).toContain('SUSPECT');
  expect(await page.locator('[data-state="sound"]').count()).toBe(5);
  expect(await page.locator('#bridge-drawing-text').textContent()).toContain('DC− to V: 3.8 Ω, SUSPECT.');
});

test('on a phone the verdict is in sight while one types', async () => {
  const page = await calculator('/calculators/bridge/#case=marrow-bay-lift', { width: 360 });
  await verdict(page, 'no-go');
  await page.locator('#bridge-worstAgain').evaluate((field) => field.closest('details')?.setAttribute('open', ''));
  await page.fill('#bridge-worstAgain', '45.8k');
  await page.locator('#bridge-minusV').scrollIntoViewIfNeeded();
  await page.fill('#bridge-minusV', '45.9k');
  await verdict(page, 'go');
  const bar = await page.locator('.verdict-bar').boundingBox();
  if (bar === null) throw new Error('there is no bar');
  expect(bar.y + bar.height).toBeLessThanOrEqual(800);
  expect(await page.locator('.verdict-bar').textContent()).toContain('Go');
  // By its place on the screen: `click` would first scroll the bar to where it comes to rest.
  await page.mouse.click(bar.x + bar.width / 2, bar.y + bar.height / 2);
  expect((await page.locator('.verdict').boundingBox())?.y).toBeLessThan(400);
});

test('printed, the entries and the verdict stay, and the buttons go', async () => {
  const page = await calculator('/calculators/bridge/#case=marrow-bay-lift');
  await verdict(page, 'no-go');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.verdict').isVisible()).toBe(true);
  expect(await page.locator('#bridge-minusV').isVisible()).toBe(true);
  expect(await page.locator('.verdict-bar').isVisible()).toBe(false);
  expect(await page.getByRole('button', { name: 'Clear the form' }).isVisible()).toBe(false);
});

test('a drawing that does not come leaves the verdict, and says so', async () => {
  const context = await newWindow({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await context.route('**/InsulationPlot*.js', (route) => route.abort());
  await page.goto(address('/calculators/insulation/#case=marrow-bay-lift'));
  await verdict(page, 'no-go');
  await page.getByText('The drawing could not be loaded.').waitFor();
});

test('a rule that does not come is no verdict; the entries are kept, and the next try judges them', async () => {
  const context = await newWindow({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const rule = /_astro\/form\.[^/]+\.js$/;
  await context.route(rule, (route) => route.abort());
  await page.goto(address('/calculators/winding/'));
  await page.locator('[data-live]').waitFor();
  await page.getByRole('button', { name: 'Fill in the worked visit' }).click();
  await page.getByText('The rule of this calculator could not be loaded').waitFor();
  expect(await page.locator('.verdict').getAttribute('data-verdict')).toBe('empty');
  await context.unroute(rule);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.locator('.verdict[data-verdict="go"]').waitFor();
});
