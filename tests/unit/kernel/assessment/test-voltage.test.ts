import { describe, expect, it } from 'vitest';
import { judgeSuitability, judgeTestVoltage } from '../../../../src/kernel/assessment/test-voltage.ts';
import { typed } from '../../../support/typed.ts';

const volts = (text: string) => typed(text, 'voltage');
const outcome = (findings: { code: string; severity: string }[]) =>
  findings.map(({ code, severity }) => `${severity} ${code}`);

describe('the test voltage', () => {
  it.each([
    ['', ['undecided test-voltage-missing']],
    ['OL', ['undecided test-voltage-missing']],
    ['9 V', ['undecided test-voltage-too-low']],
    ['100 V', ['undecided test-voltage-too-low']],
    ['249 V', ['undecided test-voltage-too-low']],
    ['250 V', []],
    ['500 V', []],
    ['1 kV', []],
  ])('“%s”: %o', (text, expected) => {
    expect(outcome(judgeTestVoltage(volts(text)))).toEqual(expected);
  });

  it('that is too low carries its figures', () => {
    expect(judgeTestVoltage(volts('9 V'))[0]).toMatchObject({ setVolts: 9, lowestVolts: 250 });
  });
});

describe('the test voltage against the rated voltage', () => {
  it.each([
    ['500 V', '400 V', []],
    ['500 V', '230 V', []],
    ['250 V', '400 V', ['caution test-voltage-unsuited']],
    ['1000 V', '400 V', ['caution test-voltage-unsuited']],
    ['500 V', '1000 V', []],
    ['1000 V', '1000 V', []],
    ['1001 V', '2500 V', ['caution test-voltage-unsuited']],
    ['1000 V', '3300 V', []],
    ['2500 V', '3300 V', []],
    ['500 V', '3300 V', ['caution test-voltage-unsuited']],
    ['5000 V', '6600 V', []],
    ['10 kV', '13.8 kV', []],
    ['500 V', '', ['undecided rated-voltage-missing']],
    ['', '', ['undecided rated-voltage-missing']],
    ['', '400 V', []],
  ])('%s on a machine rated %s: %o', (test, rated, expected) => {
    expect(outcome(judgeSuitability(volts(test), volts(rated)))).toEqual(expected);
  });

  it('that is unsuited names the row of the table', () => {
    const [finding] = judgeSuitability(volts('250 V'), volts('400 V'));
    expect(finding?.limits).toEqual(['test-voltage-below-1000']);
    expect(finding).toMatchObject({ setVolts: 250, ratedVolts: 400, fromVolts: 500, toVolts: 500 });
  });
});
