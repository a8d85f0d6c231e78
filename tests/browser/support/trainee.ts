import type { Page } from 'playwright-core';

/** A person at the practice machine: presses what is in sight, puts leads on terminals, reads the display. */
export class Trainee {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** Presses buttons by their whole names, opening the group that a button is in. */
  async press(...names: string[]): Promise<void> {
    for (const name of names) {
      const button = this.page.locator('.practice-acts button', { hasText: name }).first();
      await button.evaluate((element) => element.closest('details')?.setAttribute('open', ''));
      await button.click();
    }
  }

  /** Supports the axis, locks out, waits, and measures the bus with a meter that is proved. */
  async makeSafe(): Promise<void> {
    await this.press('Support the axis', 'Switch the supply off', 'Lock and tag', 'Wait the time', 'Prove the meter');
    await this.turnTo('Multimeter, DC volts');
    await this.measure('DC+', 'DC-');
  }

  async turnTo(instrument: string): Promise<void> {
    await this.page.locator('.practice-bench label', { hasText: instrument }).click();
  }

  /** 500 V, and the leads stay on until it has discharged. */
  async turnToTester(): Promise<void> {
    await this.turnTo('Insulation tester');
    await this.page.getByLabel('Test voltage').selectOption('500');
    const discharge = this.page.getByLabel('Leads stay on after the test');
    if (!(await discharge.isChecked())) await discharge.check();
  }

  /** Puts both leads on, measures, and gives what the display shows. */
  async measure(red: string, black: string): Promise<string> {
    await this.page.getByRole('radio', { name: /^Red lead/ }).check();
    for (const node of [red, black]) await this.page.locator(`.terminal[data-node="${node}"]`).click();
    await this.page.locator('button.measure').click();
    return (await this.page.locator('.instrument .reading').textContent()) ?? '';
  }

  async measureBridge(): Promise<string[]> {
    await this.turnTo('Multimeter, resistance');
    const shown: string[] = [];
    for (const phase of ['U', 'V', 'W']) shown.push(await this.measure('DC+', `drive.${phase}`));
    for (const phase of ['U', 'V', 'W']) shown.push(await this.measure(`drive.${phase}`, 'DC-'));
    return shown;
  }

  /** At the drive end, cable and motor joined. */
  async measureInsulation(): Promise<string[]> {
    await this.turnToTester();
    const shown: string[] = [];
    for (const phase of ['U', 'V', 'W']) shown.push(await this.measure(`cable.drive.${phase}`, 'ground'));
    return shown;
  }

  async measureWindings(): Promise<void> {
    await this.turnTo('Low-resistance meter');
    for (const [a, b] of ['UV', 'VW', 'WU']) await this.measure(`cable.drive.${a}`, `cable.drive.${b}`);
  }

  async decide(decision: string, ...parts: string[]): Promise<void> {
    const form = this.page.locator('.practice-decision');
    await form.locator('label', { hasText: decision }).click();
    for (const part of parts) await form.getByRole('checkbox', { name: part, exact: true }).check();
    await form.getByRole('button', { name: 'End the case' }).click();
    await this.page.locator('.practice-feedback').waitFor();
  }

  judgement(): Promise<string | null> {
    return this.page.locator('.practice-feedback .verdict-word').textContent();
  }

  /** Codes of the unsafe acts that the feedback names. */
  unsafe(): Promise<(string | null)[]> {
    return this.page
      .locator('.time-line [data-mark="unsafe"]')
      .evaluateAll((list) => [...new Set(list.map((one) => one.getAttribute('data-code')))]);
  }
}
