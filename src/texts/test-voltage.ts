import {
  formatRounded,
  limitRange,
  limitValue,
  type TestVoltageChoiceCode,
  type TestVoltageStepCode,
} from '../calc/index.ts';
import { figureFindings, figureSteps } from './figures.ts';
import type { FindingSentences, StepSentences } from './sentences.ts';

const volts = (value: number | undefined) => formatRounded(value ?? 0, 'V');

/** "500 V", "500 V to 1 kV". */
export function voltageSpan(from: number | undefined, to: number | undefined): string {
  return from === to ? volts(from) : `${volts(from)} to ${volts(to)}`;
}

export const testVoltageFindings: FindingSentences<TestVoltageChoiceCode> = {
  ...figureFindings,
  'never-on-electronics': () =>
    'No insulation test on a feedback device or its cable while a device hangs on it. Any test voltage destroys its electronics.',
  'drive-connected': () =>
    'A drive still hangs on these conductors. The test voltage destroys its semiconductors, and its filters spoil the reading.',
  'drive-not-stated': () => 'It is not stated that every drive is off these conductors.',
  'sensitive-not-stated': () =>
    'It is not stated whether surge suppressors, sensors or other electronics hang on these conductors.',
  'lower-for-sensitive': () =>
    `With parts that cannot be taken off, only ${volts(limitRange('test-voltage-sensitive').from)} is permitted, all live conductors joined, against earth. Some electronics do not stand even that: their manual decides.`,
  'rated-voltage-not-stated': () => 'The rated voltage is missing. It decides which row of the table holds.',
  'not-extra-low': ({ numbers }) =>
    `${volts(numbers.rated)} is not extra-low voltage: that ends at ${volts(limitValue('extra-low-end'))} DC.`,
  'extra-low-only-dc': ({ numbers }) =>
    `${volts(numbers.rated)} is extra-low voltage only as DC: for AC that ends at ${volts(limitValue('extra-low-end-ac'))}. An AC circuit of this voltage is wiring.`,
  'brake-supply-unknown': ({ numbers }) =>
    `A brake coil of ${volts(numbers.rated)} is often fed from the mains through a rectifier. Then its circuit is no extra-low voltage, whatever the coil is rated for.`,
  'beyond-tables': ({ numbers }) =>
    `${volts(numbers.rated)} is above ${volts(limitValue('low-voltage-end'))}, where the tables for low-voltage installations end.`,
  'set-voltage-missing': ({ numbers }) =>
    `The table gives ${voltageSpan(numbers.from, numbers.to)} DC. What is set on your tester is not stated yet.`,
  'set-too-high': ({ numbers }) =>
    `${volts(numbers.set)} is too high: the table gives ${voltageSpan(numbers.from, numbers.to)} DC. Sound insulation, and what hangs on it, can be damaged.`,
  'set-too-low': ({ numbers }) =>
    `${volts(numbers.set)} is below the ${voltageSpan(numbers.from, numbers.to)} DC of the table. It can show a bad insulation but does not pass one.`,
  'set-fits': ({ numbers }) =>
    `${volts(numbers.set)} fits: the table gives ${voltageSpan(numbers.from, numbers.to)} DC.`,
  'minimum-of-table': ({ numbers }) =>
    `The same table asks for at least ${formatRounded(numbers.minimum ?? 0, 'Ω')}. That is for new wiring without a fault, and much too low for a decision after a trip.`,
  'winding-minimum-elsewhere': () =>
    'Which resistance is enough depends on the occasion. The insulation calculator judges it.',
};

export const testVoltageSteps: StepSentences<TestVoltageStepCode> = {
  ...figureSteps,
  'check-feedback-otherwise': () =>
    'Check the feedback by unplugging it and by its supply current, as the guided visit does. A cable alone, unplugged at both ends, is wiring: choose that.',
  'take-drive-off': () =>
    'Lock out, prove the DC bus dead, and take U, V and W off the drive. Cap them or hold them apart. Then choose "off".',
  'take-sensitive-off': () =>
    'Look for suppressors, filters, temperature sensors, brake rectifiers and encoders on these conductors, and unplug them.',
  'state-rated': () => 'Type the rated voltage from the name plate, or the nominal voltage of the circuit.',
  'choose-object-again': () => 'Choose wiring instead, or correct the voltage.',
  'choose-by-supply': () =>
    'Look up in the wiring diagram what feeds the rectifier. From the mains: choose wiring, with the voltage of the mains. From a supply for extra-low voltage: choose that.',
  'ask-for-procedure': () => 'Ask for the procedure of the person responsible for this installation.',
  'set-the-tester': ({ names }) =>
    `Set the tester to ${volts(Number(names.volts))} DC, keep everybody clear of both ends, and test each conductor to PE.`,
  'join-conductors': () => 'Join all live conductors of the circuit, and test them together against PE.',
  'repeat-at-full-voltage': () =>
    'Treat the reading as a first look. Take the parts off when the machine allows it, and repeat at the full voltage.',
  'take-brake-parts-off': () =>
    'Support the axis, then unplug the brake at both ends and take its rectifier and suppressor out of the circuit. The maker’s figure for the brake counts before this table.',
  'discharge-afterwards': () =>
    `Discharge to PE afterwards for at least ${limitValue('discharge-after-test')} times as long as the voltage was on, before anyone touches a conductor.`,
};
