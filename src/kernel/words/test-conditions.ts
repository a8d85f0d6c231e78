import type { ReminderFinding } from '../assessment/test-reminders.ts';
import type { TestVoltageFinding } from '../assessment/test-voltage.ts';
import { inVolts } from '../reading/format-reading.ts';
import type { FindingSentences } from './sentences.ts';

/** What insulation and isolation both say about the test voltage, and beside every verdict. */
export const testFindings: FindingSentences<TestVoltageFinding | ReminderFinding> = {
  'test-voltage-missing': () => 'The test voltage is missing. Without it nobody knows what the insulation has stood.',
  'test-voltage-too-low': ({ setVolts, lowestVolts }) =>
    `${inVolts(setVolts)} is no insulation test: at least ${inVolts(lowestVolts)} is needed. A low voltage can show a bad insulation but never pass one.`,
  'test-voltage-unsuited': ({ setVolts, ratedVolts, fromVolts, toVolts }) =>
    `For a rated voltage of ${inVolts(ratedVolts)} the table gives a test voltage of ${span(fromVolts, toVolts)}; ${inVolts(setVolts)} was used.`,
  'rated-voltage-missing': () => 'The rated voltage is missing. It decides which test voltage is right.',
  'never-on-drive': () =>
    'Never put an insulation tester on the terminals of a drive. Take the leads off it first: the test voltage destroys semiconductors.',
  'discharge-after-test': ({ minutes, times }) =>
    `Discharge the winding to the frame after the test for at least ${inMinutes(minutes)} (${times} times the test), before anyone touches it.`,
};

function span(from: number, to: number): string {
  return from === to ? inVolts(from) : `${inVolts(from)} to ${inVolts(to)}`;
}

function inMinutes(minutes: number): string {
  const number = Number(minutes.toPrecision(2));
  return `${number} ${number === 1 ? 'minute' : 'minutes'}`;
}
