import { type Finding, formatRounded, type ReminderCode, type TestVoltageCode } from '../calc/index.ts';

const volts = (value: number | undefined) => formatRounded(value ?? 0, 'V');

/** What insulation and isolation say alike: of the test voltage, and beside every verdict. */
export const testFindings: Record<TestVoltageCode | ReminderCode, (finding: Finding) => string> = {
  'test-voltage-missing': () => 'The test voltage is missing. Without it nobody knows what the insulation has stood.',
  'test-voltage-too-low': ({ numbers }) =>
    `${volts(numbers.testVoltage)} is no insulation test: at least ${volts(numbers.lowest)} is needed. A low voltage can show a bad insulation but never pass one.`,
  'test-voltage-unsuited': ({ numbers }) =>
    `For a rated voltage of ${volts(numbers.ratedVoltage)} the table gives a test voltage of ${span(numbers.from, numbers.to)}; ${volts(numbers.testVoltage)} was used.`,
  'rated-voltage-missing': () => 'The rated voltage is missing. It decides which test voltage is right.',
  'never-on-drive': () =>
    'Never put an insulation tester on the terminals of a drive. Take the leads off it first: the test voltage destroys semiconductors.',
  'discharge-after-test': ({ numbers }) =>
    `Discharge the winding to the frame after the test for at least ${minutes(numbers.minutes)} (${numbers.times} times the test), before anyone touches it.`,
};

function span(from: number | undefined, to: number | undefined): string {
  return from === to ? volts(from) : `${volts(from)} to ${volts(to)}`;
}

function minutes(value: number | undefined): string {
  const number = Number((value ?? 0).toPrecision(2));
  return `${number} ${number === 1 ? 'minute' : 'minutes'}`;
}
