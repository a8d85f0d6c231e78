import type { Page } from 'playwright-core';
import { expect } from 'vitest';

type Typed = Readonly<Record<string, string>>;

/** A person on a visit: clicks what is in sight, types readings, goes on when the step lets them. */
export class Visitor {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async start(machine: string, axis: string): Promise<void> {
    await this.page.getByRole('button', { name: 'Start a visit' }).click();
    await this.page.getByLabel('Machine', { exact: true }).fill(machine);
    await this.page.getByLabel('Axis', { exact: true }).fill(axis);
    await this.page.getByLabel('Axis', { exact: true }).blur();
    await this.page.getByRole('heading', { level: 1, name: `${machine}, ${axis}` }).waitFor();
  }

  /** The title of the step that is open, of several on one screen the last one. */
  openStep(): Promise<string | null> {
    return this.page.locator('.visit-step button[aria-expanded="true"] .step-name').last().textContent();
  }

  /** Chooses an answer of a question: clicks its label, as a thumb does. */
  async choose(question: string | RegExp, answer: string): Promise<void> {
    const group = this.page.getByRole('group', { name: question });
    await group.locator('label', { hasText: answer }).first().click();
  }

  async tick(text: string): Promise<void> {
    await this.page.locator('label', { hasText: text }).first().click();
  }

  /** Types into the fields of a calculator by their ids, one key after the other. */
  async type(name: string, readings: Typed): Promise<void> {
    for (const [id, text] of Object.entries(readings)) {
      const field = this.page.locator(`#${name}-${id}`);
      await field.evaluate((element) => element.closest('details')?.setAttribute('open', ''));
      // A choice has its options below its id, a reading is the field itself.
      const option = field.locator(`input[value="${text}"]`);
      if ((await option.count()) > 0) await option.check();
      else await field.fill(text);
    }
    await this.page.keyboard.press('Tab');
  }

  /** Waits until the step is done, goes on by its button unless the next step is on the same screen, and finds that open. */
  async goOn(next: string): Promise<void> {
    const button = this.page.getByRole('button', {
      name: next === 'decision' ? 'Go on to the decision' : `Go on: ${next}`,
    });
    const below = this.page.getByText(`Done. Next, below: ${next}`);
    await button.or(below).first().waitFor();
    if (await button.isVisible()) await button.click();
    if (next === 'decision') await this.page.locator('.decision').waitFor();
    else await expect.poll(() => this.openStep()).toBe(next);
  }

  async lockOut(bus = '0.03 V'): Promise<void> {
    await this.tick('The supply is locked out and tagged');
    await this.tick('has passed');
    await this.tick('The meter was proved');
    await this.tick('PE at the drive is proved');
    await this.points({ supplyEachAc: '0.2 V', supplyPeAc: '0.1 V', supplyEachDc: '0 V', supplyPeDc: '0 V' });
    await this.points({ outputEachAc: '0.1 V', outputPeAc: '0.1 V', outputEachDc: '0 V', outputPeDc: '0 V' });
    await this.measurePoints(bus);
  }

  /** The bus, point by point. `bus`: DC+ to DC−. */
  private async measurePoints(bus: string): Promise<void> {
    await this.points({ busBetween: bus, busPlusPe: '0.01 V', busMinusPe: '0.01 V' });
    await this.page.keyboard.press('Tab');
  }

  /** Types what measured points read, in the step of a lockout that is open. */
  async points(readings: Typed): Promise<void> {
    for (const [id, text] of Object.entries(readings)) await this.page.locator(`.step-form [id$="-${id}"]`).fill(text);
  }

  /** The bus once more; if it was measured again before, the step starts over. */
  async measureBus(bus = '0.05 V'): Promise<void> {
    const again = this.page.getByRole('button', { name: 'Begin this step again' });
    if ((await again.count()) > 0) await again.click();
    await this.tick('The meter was proved');
    await this.measurePoints(bus);
  }

  async seeNothing(seen: Typed = {}): Promise<void> {
    for (const part of ['Drive', 'Motor and its connector', 'Motor cable', 'Feedback cable']) {
      await this.page
        .getByRole('group', { name: part, exact: true })
        .getByText(seen[part] ?? 'Nothing')
        .click();
    }
    await this.choose(/^Last: did you re-seat/, 'Re-seated');
  }

  /** Switches on as often as stated; it trips each time or never. */
  async retry(result: 'It trips again' | 'No trip', tries = 3): Promise<void> {
    await this.tick('I am qualified and permitted to switch on');
    await this.choose('What happened?', result);
    await this.page.getByLabel('How often did you try?').fill(String(tries));
    await this.page
      .getByLabel('How often did the same message come?')
      .fill(String(result === 'It trips again' ? tries : 0));
    await this.page.keyboard.press('Tab');
  }

  /** How often the trip came, without which tries prove nothing. */
  async cameEachTime(starts = 3): Promise<void> {
    await this.page.getByLabel('How often did it trip?').fill(String(starts));
    await this.page.getByLabel('In how many starts or moves?').fill(String(starts));
    await this.page.keyboard.press('Tab');
  }

  async noIdleCores(): Promise<void> {
    await this.choose('Has the motor cable cores of brake, sensor or feedback?', 'No, only U, V, W and PE');
  }

  async done(): Promise<void> {
    await this.choose('Is it done?', 'Done');
  }

  /** The lines of the steps above, as they stand beside their titles. */
  lines(): Promise<string[]> {
    return this.page.locator('.visit-step .step-line').allTextContents();
  }

  async saved(): Promise<void> {
    await expect.poll(() => this.page.locator('.save-status').textContent()).toMatch(/^Saved \d\d:\d\d$/);
  }
}

/** Readings of a sound output stage, of sound insulation, of sound windings. */
export const sound = {
  bridge: { plusU: '482k', plusV: '495k', plusW: '488k', minusU: '46.1k', minusV: '45.2k', minusW: '45.7k' },
  insulation: {
    together: '>700M',
    PE: '0.2 Ω',
    idleCores: 'to-pe',
    testVoltage: '500 V',
    ratedVoltage: '400 V',
    windingTemperature: '25 °C',
  },
  winding: { UV: '1.820 Ω', VW: '1.822 Ω', WU: '1.819 Ω' },
} as const;
