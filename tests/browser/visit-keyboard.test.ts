import { expect, test } from 'vitest';
import { KeyboardWalker } from './support/focus.ts';
import { open } from './support/open.ts';
import { sound } from './support/visitor.ts';

const busRows = ['DC+ to DC−', 'DC+ to PE', 'DC− to PE'];

// A whole visit without a mouse or a finger. At each press of Tab the focus is looked at: support/focus.ts.

test('a guided visit by keyboard alone, from its start to the decision, and out of the page', async () => {
  const page = await open('/visit/', { width: 820 });
  const walker = new KeyboardWalker(page);
  const goOn = async (next: string) => {
    await walker.press(new RegExp(`^Go on.*${next}`));
    // The focus goes on with the step: its title is what is read next.
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent ?? ''))
      .toMatch(new RegExp(`^\\d+Step \\d+: ${next}`));
  };

  /** The next step stands on the same screen: Tab goes on into it. */
  const below = (next: string) => page.getByText(`Done. Next, below: ${next}`).waitFor();

  expect(await walker.tab()).toBe('Skip to the content');
  await walker.press('Start a visit');
  await page.locator('.visit-steps').waitFor();
  await walker.choose(/^How did you find the drive/, 'From the drawings');
  await below('What was live or moving');
  await walker.choose(/^What was live or moving/, 'The load was speeding up, or moving');
  await walker.choose(/any axis fall/, 'No');
  await goOn('Lock out');
  await walker.tick('The supply is locked out');
  await walker.tick(/has passed/);
  await walker.tick('The meter was proved');
  await walker.tick(/^PE at the drive is proved/);
  for (const row of ['AC, each to each', 'AC, each to PE', 'DC, each to each', 'DC, each to PE'])
    await walker.type(row, '0.2 V');
  for (const row of ['AC, each to each', 'AC, each to PE', 'DC, each to each', 'DC, each to PE'])
    await walker.type(row, '0.1 V');
  for (const row of busRows) await walker.type(row, '0.03 V');
  await goOn('Look at all parts');
  await walker.press('Nothing on the parts that are still open');
  await walker.choose(/^Last: did you re-seat/, 'Re-seated');
  await below('Take the motor leads off');
  await walker.choose(/^Is it done/, 'Done');
  await goOn('Move it by hand');
  await walker.choose(/^What did you find/, 'It moves freely');
  await goOn('Six readings');

  // One measurement: the lower transistor of phase U is gone, and it was read a second time.
  const rails = [sound.bridge.plusU, sound.bridge.plusV, sound.bridge.plusW, '3.8 Ω', '45.2k', '45.7k'];
  for (const [index, text] of rails.entries()) await walker.type(['to U', 'to V', 'to W'][index % 3] as string, text);
  await walker.to(/^Something is odd/);
  await page.keyboard.press('Enter');
  await walker.type('The odd terminal again', '3.7 Ω');
  await walker.choose(/^What else is on DC/, 'Nothing');
  await goOn('Measure the DC bus again');
  await walker.tick('The meter was proved');
  for (const row of busRows) await walker.type(row, '0.05 V');
  await below('Winding resistance');
  for (const [index, text] of Object.values(sound.winding).entries())
    await walker.type(['U–V', 'V–W', 'W–U'][index] as string, text);
  await walker.choose(/test leads/, 'Four leads');
  await goOn('Brake and sensor cores');
  await walker.choose(/^Has the motor cable cores/, 'No, only U, V, W and PE');
  await below('Insulation');
  const { together, PE, testVoltage, ratedVoltage, windingTemperature } = sound.insulation;
  await walker.type('U, V, W joined', together);
  await walker.type('PE pin', PE);
  await walker.type('Test voltage', testVoltage);
  await walker.type('Rated voltage', ratedVoltage);
  await walker.type('Winding temperature', windingTemperature);
  await walker.press('Go on to the decision');
  await page.getByRole('heading', { name: /^Replace: complete drive/ }).waitFor();

  // Not trapped: Tab leaves the page at its end, and Shift and Tab come back into it.
  for (let step = 0; step < 60 && (await walker.tab()) !== ''; step++);
  expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true);
  await page.keyboard.press('Shift+Tab');
  expect(await page.evaluate(() => document.activeElement?.closest('.site-footer, main') !== null)).toBe(true);
});
