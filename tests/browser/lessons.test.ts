import { expect, test } from 'vitest';
import { open } from './support/open.ts';
import { Trainee } from './support/trainee.ts';

test('a question marked as missed in a lesson waits until tomorrow, and then is the only one shown', async () => {
  const page = await open('/lessons/six-readings/', { width: 360 });
  const question = page.locator('#question-climbing-row');
  await question.locator('summary').click();
  await question.getByRole('button', { name: 'I missed it' }).click();
  expect(await question.getByRole('button', { name: 'I missed it' }).getAttribute('aria-pressed')).toBe('true');
  await page.goto(new URL('/lessons/missed/', page.url()).href);
  await expect
    .poll(() => page.textContent('[data-due]'))
    .toContain('Nothing is due today. The next question comes on 2');
  expect(await page.locator('.question:visible').count()).toBe(0);
  await page.clock.setFixedTime(Date.now() + 36 * 3_600_000);
  await page.reload();
  await expect.poll(() => page.textContent('[data-due]')).toBe('1 question is due today.');
  expect(await page.locator('.question:visible').count()).toBe(1);
  await page.locator('.question:visible summary').click();
  await page.locator('.question:visible').getByRole('button', { name: 'I knew it' }).click();
  await expect
    .poll(() => page.textContent('.question:not([hidden]) [data-comes-again]'))
    .toContain('It comes again on 2');
});

test('the first end of a case at the end of the lessons stays: unsafe, unproven, unnecessary', async () => {
  const page = await open('/lessons/final/', { width: 360 });
  const first = page.locator('.final-cases > li').first();
  await first.locator('a').click();
  const trainee = new Trainee(page);
  await trainee.press('Take off: leads U, V and W');
  await trainee.decide('Replace or mend', 'motor');
  await page.getByRole('link', { name: 'Back to the six cases' }).click();
  await expect
    .poll(() => first.textContent())
    .toMatch(/Unsafe.*while the supply was on.*Unproven.*Left out: .*Unnecessary/s);
  expect(await page.locator('[data-summary]').first().textContent()).toMatch(
    /1 of 6 cases decided\.Unsafe in 1 case\./,
  );
});
