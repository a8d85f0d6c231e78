import type { Page } from 'playwright-core';
import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { callFields } from '../../src/call/form.ts';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { open } from './support/open.ts';
import { smallTargets } from './support/targets.ts';
import { Visitor } from './support/visitor.ts';

const part = (page: Page, name: string) => page.locator(`.call-block[data-part="${name}"]`);

/** Opens a call that is kept on the device. */
async function kept(page: Page, form: Record<string, string>): Promise<void> {
  await page.evaluate((texts) => {
    const at = '2026-03-03T05:50:00+01:00';
    localStorage.setItem('fieldbook-call-marrowbay', JSON.stringify({ at, changedAt: at, form: texts }));
    location.hash = '#call=marrowbay';
  }, form);
  await page.locator('.call-proof', { hasText: '2026-03-03, 05:50' }).waitFor();
}

async function answer(page: Page): Promise<Visitor> {
  const visitor = new Visitor(page);
  await page.getByLabel('Machine', { exact: true }).fill('Marrow Bay line 2 (invented)');
  await page.getByLabel('Axis', { exact: true }).fill('Lift');
  await visitor.choose('What was live or moving when it tripped?', 'The pulses had just come on');
  await visitor.choose(/^Can any axis fall/, 'Yes');
  await visitor.tick('Motor cable chafed, crushed or burnt');
  return visitor;
}

test('the sheet follows what the caller says, and a closed tab keeps it', async () => {
  const page = await open('/call/', { width: 360 });
  await expect.poll(() => page.locator('.call-next').textContent()).toContain('Can the axis fall');
  await answer(page);
  await expect
    .poll(() => part(page, 'suspect').locator('li').first().textContent())
    .toContain('Insulation of the motor cable');
  expect(await part(page, 'say').textContent()).toContain('Nobody goes or reaches under the axis');
  expect(await page.locator('.call-next').textContent()).toContain('Is it on a prop');
  expect(await part(page, 'bring').textContent()).toContain('Prop, pin or blocks');
  await page.reload();
  await expect.poll(() => page.getByLabel('Axis', { exact: true }).inputValue()).toBe('Lift');
  await page.getByRole('button', { name: 'New call' }).click();
  expect(await page.getByLabel('Axis', { exact: true }).inputValue()).toBe('');
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByText('No other calls.').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('link', { name: 'Marrow Bay line 2 (invented), Lift' }).click();
  await expect.poll(() => page.getByLabel('Axis', { exact: true }).inputValue()).toBe('Lift');
});

test('it becomes the visit: what was reported counts once it is confirmed on site', async () => {
  const page = await open('/call/', { width: 820 });
  await answer(page);
  await page.getByRole('button', { name: 'Begin the visit' }).click();
  await page.waitForURL(/\/visit\/#visit=/);
  const visitor = new Visitor(page);
  await page.getByRole('heading', { level: 1, name: 'Marrow Bay line 2 (invented), Lift' }).waitFor();
  expect(await visitor.openStep()).toBe('Find the drive and its output');
  await visitor.choose('How did you find the drive?', 'From the drawings');
  await visitor.goOn('What was live or moving?');
  const reported = page.locator('.look-again', { hasText: 'Reported on the phone' });
  expect(await reported.textContent()).toContain('When the axes are enabled, an axis can fall');
  expect(await page.locator('input[name="when"]:checked').count()).toBe(0);
  expect(await axe(page)).toEqual([]);
  await reported.getByRole('button', { name: 'Confirmed on site: take it over' }).click();
  await reported.waitFor({ state: 'detached' });
  expect(await page.locator('input[name="when"]:checked').inputValue()).toBe('on-enable');
  await visitor.saved();
  await page.reload();
  await page.locator('.visit-step').first().waitFor();
  expect((await visitor.lines()).join()).toContain('When the axes are enabled');
});

describe('on paper', () => {
  const everything = Object.fromEntries(
    callFields.map((field) => {
      if (field.kind === 'choice') return [field.id, field.options[0]?.value ?? ''];
      return [
        field.id,
        field.kind === 'tick'
          ? 'yes'
          : field.kind === 'text' && field.digits
            ? '12'
            : 'Marrow Bay line 2, hall 3, invented',
      ];
    }),
  );
  test.each([
    ['nothing said', {}, 'A4'],
    ['nothing said', {}, 'Letter'],
    ['everything said', everything, 'A4'],
    ['everything said', everything, 'Letter'],
    ['the cable moves', { when: 'position-or-cable', seenMotorWet: 'yes', beforeWater: 'yes' }, 'A4'],
  ] as const)('%s: one sheet (%o, %s)', async (_name, form, format) => {
    const page = await open('/call/', { scheme: 'dark' });
    await page.locator('[data-call][data-live]').waitFor();
    await kept(page, form);
    const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
    const { totalPages, text } = await extractText(pdf, { mergePages: true });
    expect(totalPages).toBe(1);
    for (const word of [
      'Say to the caller',
      'Ask back',
      'Suspect, and why',
      'Bring',
      'People and permits',
      'Time to plan',
    ]) {
      expect(text).toContain(word);
    }
    expect(text).not.toContain('Begin the visit');
    expect(text).not.toContain('Other calls on this device');
  });
});

test('a filled call: axe, width and targets on a phone, in the dark and in forced colours', async () => {
  const page = await open('/call/', { width: 360, scheme: 'dark' });
  await answer(page);
  expect(await axe(page)).toEqual([]);
  expect(await overflowing(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
  expect(await axe(page)).toEqual([]);
});

test('without script the lists stand there', async () => {
  const page = await open('/call/', { script: false });
  expect(await page.locator('.worksheet').textContent()).toMatch(
    /Leave it off[\s\S]*Can the axis fall[\s\S]*Fuses for the meter/,
  );
});
