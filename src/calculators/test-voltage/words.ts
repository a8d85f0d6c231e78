import { limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded, inVolts } from '../../kernel/reading/format-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import type { FindingSentences, StepSentences } from '../../kernel/words/sentences.ts';
import type { TestVoltageChoiceFinding, TestVoltageStep } from './rule/input.ts';
import { voltageSpan } from './span-words.ts';

export const testVoltageFindings: FindingSentences<TestVoltageChoiceFinding> = {
  ...figureFindings,
  'never-on-electronics': () =>
    'No insulation test on a feedback device or its cable while a device hangs on it. Any test voltage destroys its electronics.',
  'drive-connected': () =>
    'A drive still hangs on these conductors. The test voltage destroys its semiconductors, and its filters spoil the reading.',
  'drive-not-stated': () => 'It is not stated that every drive is off these conductors.',
  'sensitive-not-stated': () =>
    'It is not stated whether surge suppressors, sensors or other electronics hang on these conductors.',
  'lower-for-sensitive': () =>
    `With parts that cannot be taken off, only ${inVolts(limitRange('test-voltage-sensitive').from)} is permitted, all live conductors joined, against earth. Some electronics do not stand even that: their manual decides.`,
  'rated-voltage-not-stated': () => 'The rated voltage is missing. It decides which row of the table holds.',
  'not-extra-low': ({ ratedVolts }) =>
    `${inVolts(ratedVolts)} is not extra-low voltage: that ends at ${inVolts(limitValue('extra-low-end'))} DC.`,
  'extra-low-only-dc': ({ ratedVolts }) =>
    `${inVolts(ratedVolts)} is extra-low voltage only as DC: for AC that ends at ${inVolts(limitValue('extra-low-end-ac'))}. An AC circuit of this voltage is wiring.`,
  'brake-supply-unknown': ({ ratedVolts }) =>
    `A brake coil of ${inVolts(ratedVolts)} is often fed from the mains through a rectifier. Then its circuit is no extra-low voltage, whatever the coil is rated for.`,
  'beyond-tables': ({ ratedVolts }) =>
    `${inVolts(ratedVolts)} is above ${inVolts(limitValue('low-voltage-end'))}, where the tables for low-voltage installations end.`,
  'set-voltage-missing': ({ fromVolts, toVolts }) =>
    `The table gives ${voltageSpan(fromVolts, toVolts)} DC. What is set on your tester is not stated yet.`,
  'set-too-high': ({ setVolts, fromVolts, toVolts }) =>
    `${inVolts(setVolts)} is too high: the table gives ${voltageSpan(fromVolts, toVolts)} DC. Sound insulation, and what hangs on it, can be damaged.`,
  'set-too-low': ({ setVolts, fromVolts, toVolts }) =>
    `${inVolts(setVolts)} is below the ${voltageSpan(fromVolts, toVolts)} DC of the table. It can show a bad insulation but does not pass one.`,
  'set-fits': ({ setVolts, fromVolts, toVolts }) =>
    `${inVolts(setVolts)} fits: the table gives ${voltageSpan(fromVolts, toVolts)} DC.`,
  'minimum-of-table': ({ minimumOhms }) =>
    `The same table asks for at least ${formatRounded(minimumOhms, 'Ω')}. That is for new wiring without a fault, and much too low for a decision after a trip.`,
  'winding-minimum-elsewhere': () =>
    'Which resistance is enough depends on the occasion. The insulation calculator judges it.',
};

export const testVoltageSteps: StepSentences<TestVoltageStep> = {
  ...figureSteps,
  'check-feedback-otherwise': () =>
    'Check the feedback by unplugging it, as the guided visit does. A cable alone, unplugged at both ends, is wiring: choose that.',
  'take-drive-off': () =>
    'Lock out, prove the DC bus dead, and take U, V and W off the drive. Cap them or hold them apart. Then choose "off".',
  'take-sensitive-off': () =>
    'Look for suppressors, filters, temperature sensors, brake rectifiers and encoders on these conductors, and unplug them.',
  'state-rated': () => 'Type the rated voltage from the name plate, or the nominal voltage of the circuit.',
  'choose-object-again': () => 'Choose wiring instead, or correct the voltage.',
  'choose-by-supply': () =>
    'Look up in the wiring diagram what feeds the rectifier. From the mains: choose wiring, with the voltage of the mains. From a supply for extra-low voltage: choose that.',
  'ask-for-procedure': () => 'Ask for the procedure of the person responsible for this installation.',
  'set-the-tester': ({ volts }) =>
    `Set the tester to ${inVolts(volts)} DC, keep everybody clear of both ends, and test each conductor to PE.`,
  'join-conductors': () => 'Join all live conductors of the circuit, and test them together against PE.',
  'repeat-at-full-voltage': () =>
    'Treat the reading as a first look. Take the parts off when the machine allows it, and repeat at the full voltage.',
  'take-brake-parts-off': () =>
    'Support the axis, then unplug the brake at both ends and take its rectifier and suppressor out of the circuit. The maker’s figure for the brake counts before this table.',
  'discharge-afterwards': () =>
    `Discharge to PE afterwards for at least ${limitValue('discharge-after-test')} times as long as the voltage was on, before anyone touches a conductor.`,
};
