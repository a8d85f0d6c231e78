import type { Step } from '../../kernel/assessment/assessment.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded, inOhms, inVolts } from '../../kernel/reading/format-reading.ts';
import { busBeforeFindings, busBeforeSteps } from '../../kernel/words/bus-before-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { capital, type FindingSentences, listed, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import type { BrakeFinding, BrakeStepCode } from './rule/input.ts';
import type { BrakeCause } from './rule/release.ts';

const coreNames: Record<string, string> = {
  coresApart: 'the two brake cores to each other',
  toPhases: 'the brake cores to U, V and W',
  toPe: 'the brake cores to PE',
};
const pathMeans: Record<string, string> = {
  coresApart: 'The cable loads the supply of the brake, or shorts it.',
  toPhases: 'At the next enable the bus voltage may reach a circuit that people touch.',
  toPe: 'With a second path to PE the brake may open by itself. A brake supply that is joined to PE reads the same until both brake cores are off it.',
};
export const cores = (readings: readonly string[]) => listed(readings.map((one) => coreNames[one] ?? one));

const causeWords: Record<BrakeCause, string> = {
  coil: 'The coil fails, and that explains it.',
  cores: 'The cores fail, and that explains it.',
  supply: 'The voltage fails, and that explains it.',
  brake:
    'Coil, cores and voltage pass, so the brake itself is the suspect: air gap, lining, armature. One with permanent magnets also stays shut if plus and minus are exchanged: check that first.',
  unknown: 'The cause is not shown yet: coil, cores and voltage have not all been measured and passed.',
};

const at20 = () => formatRounded(limitValue('winding-reference-20'), '°C');
const voltage = ({ volts, ratedVolts }: { volts?: number; ratedVolts: number }) =>
  `${volts === undefined ? 'The voltage at the brake' : `${inVolts(volts)} at the brake`}, where its plate says ${inVolts(ratedVolts)}`;

export const brakeFindings: FindingSentences<BrakeFinding> = {
  ...figureFindings,
  ...busBeforeFindings,
  'brake-axis-not-held': () =>
    'Stop. The axis may fall. Support or pin it before the brake plug is touched, and before anything releases the brake.',
  'brake-axis-not-stated': () =>
    'You have not said whether the axis is held. No brake is unplugged, released or measured on an axis that may fall.',
  'brake-leads-connected': () =>
    'Brake plug or motor leads are still on the drive. Its own circuits read as well, so nothing in ohms is judged.',
  'brake-leads-not-stated': () => 'You have not said whether brake plug and motor leads are off the drive.',
  'brake-not-extra-low': ({ ratedVolts }) =>
    `${inVolts(ratedVolts)} is no extra-low voltage here: from ${inVolts(limitValue('touch-voltage'))} live parts are not worked on. Measure this brake dead only. Its voltage is for a qualified person with a permit.`,
  'brake-electronics': () =>
    'Electronics lie between the terminals and the coil: a rectifier, an economy circuit or a pulsed output. Neither the coil nor a voltage can be judged through them.',
  'brake-circuit-not-stated': () =>
    'You have not said what lies between the terminals and the coil. Behind a rectifier or an economy circuit, a sound coil reads open and a sound supply reads low.',
  'brake-plate-missing': ({ readings }) =>
    readings.length === 1
      ? 'The rated voltage of the brake is missing. Without it no voltage is judged.'
      : 'The plate is missing: volts and watts, or ohms. Without it the coil can’t be judged.',
  'brake-plate-contradicts': ({ byPower, stated }) =>
    `Volts and watts give ${inOhms(byPower)}, and the plate says ${inOhms(stated)}. One of them belongs to another brake or another temperature.`,
  'brake-coil-missing': () => 'The coil has not been measured.',
  'brake-coil-temperature-missing': () =>
    'The temperature of the coil is missing, or no coil has it. Copper gains four percent in ten kelvins, so no coil passes without it.',
  'brake-coil-fits': ({ ohms, expectedOhms, tolerancePercent }) =>
    `The coil has ${inOhms(ohms)} at ${at20()}, within ${percent(tolerancePercent)} of the ${inOhms(expectedOhms)} of its plate.`,
  'brake-coil-low': ({ ohms, expectedOhms }) =>
    `The coil has ${inOhms(ohms)} at ${at20()}, far below the ${inOhms(expectedOhms)} of its plate: shorted turns, a shorted suppressor, cores that touch, or a second brake on the same cores.`,
  'brake-coil-high': ({ ohms, expectedOhms }) =>
    `The coil has ${inOhms(ohms)} at ${at20()}, far above the ${inOhms(expectedOhms)} of its plate: a bad contact, broken strands, or another coil.`,
  'brake-coil-open': () => 'The coil reads open at the motor, both ways round.',
  'brake-coil-over-range': () => 'The meter was over its range, and that range may end below the ohms of a sound coil.',
  'brake-coil-too-close': ({ expectedOhms, tolerancePercent }) =>
    `The plate asks for ${inOhms(expectedOhms)} within ${percent(tolerancePercent)}. The reading neither passes nor fails.`,
  'brake-core-open': () =>
    'Open at the drive’s end and not at the motor: a core, a pin or a terminal of the brake cable is open.',
  'brake-cores-touch': () =>
    'Lower through the cable than at the motor: the two cores touch, there is water between them, a second brake is on the same cores, or the coil cooled in between.',
  'brake-cores-below': () =>
    'Lower through the cable than at the motor, and cores only add. The coil cooled in between, or something lies beside it, such as water in the connector: read both again within minutes.',
  'brake-cable-not-stated': () =>
    'Length and cross-section of the brake cores are missing. Without them nobody knows what the cable adds to the coil.',
  'brake-cores-fit': ({ addedOhms, explainedOhms }) =>
    `The cores add ${inOhms(addedOhms)}; length, cross-section and contacts explain ${inOhms(explainedOhms)} at most.`,
  'brake-cores-high': ({ addedOhms, explainedOhms }) =>
    `The cores add ${inOhms(addedOhms)}; length, cross-section and contacts explain ${inOhms(explainedOhms)} at most. A contact or broken strands: the coil loses that share of its voltage.`,
  'brake-cores-too-close': ({ explainedOhms }) =>
    `The cores may have more than the ${inOhms(explainedOhms)} that length, cross-section and contacts explain, or something beside them takes some away. That is not shown either way: a coil that cools between two readings changes by more.`,
  'brake-cores-not-measured': ({ readings }) => `Not measured yet: ${cores(readings)}.`,
  'brake-core-path': ({ readings, leastOhms }) =>
    `A path: ${cores(readings)} read less than ${inOhms(leastOhms)}. ${readings.map((one) => pathMeans[one] ?? '').join(' ')} Nothing is connected again. Cable or motor: one reading does not say which.`,
  'brake-core-unclear': ({ readings, leastOhms }) =>
    `Not clear: ${cores(readings)}. The reading does not show ${inOhms(leastOhms)} or more.`,
  'brake-cores-free': ({ leastOhms }) =>
    `Each other, U, V, W and PE: the brake cores read ${inOhms(leastOhms)} or more.`,
  'brake-supply-missing': () =>
    'The voltage at the brake, connected and released, is missing. A sound coil does not open without it.',
  'brake-supply-fits': ({ computed, tolerancePercent, ...figures }) =>
    `${capital(voltage(figures))}: within ${percent(tolerancePercent)}.${computed ? ' Computed from the source, behind cores that were measured.' : ''}`,
  'brake-supply-low': (figures) =>
    `${capital(voltage(figures))}: too low. Little more than half of the pull is left at three quarters of the voltage, and a warm coil takes less current still.`,
  'brake-supply-high': (figures) =>
    `${capital(voltage(figures))}: too high. The coil overheats, and its suppressor fails.`,
  'brake-supply-too-close': (figures) =>
    `${capital(voltage(figures))}: neither passes nor fails. The tolerance in the brake’s manual decides.`,
  'brake-drop-contradicts': () =>
    'The voltage at the motor is higher than at its source. The two were not read at the same moment, or belong to different circuits.',
  'brake-drop-high': ({ volts, percent: share }) =>
    `${inVolts(volts)} are lost on the way (${percent(share)}), more than cores of this length and cross-section take: a contact, a terminal or broken strands.`,
  'brake-drop-unclear': ({ volts, percent: share }) =>
    `${inVolts(volts)} are lost on the way (${percent(share)}). Whether that is more than cores of this length and cross-section take is not shown: two readings of one voltage differ by as much.`,
  'brake-drop': ({ volts, percent: share }) =>
    `${inVolts(volts)} are lost on the way, ${percent(share)} of the rated voltage.`,
  'brake-drop-expected': ({ volts, percent: share }) =>
    `With the rated voltage at the source, the two cores take about ${inVolts(volts)} by the table, ${percent(share)} of it.`,
  'brake-opens': () =>
    'It opens: a click at each command, and the motor then turns as usual. That says nothing of the torque that it holds.',
  'brake-stays-shut': ({ cause }) => `It stays shut when it is released. ${causeWords[cause]}`,
  'brake-drags': ({ cause }) =>
    `It clicks and drags all the same. ${causeWords[cause]}${cause === 'brake' ? ' A stiff axis draws more current too: heat and dust at the brake tell them apart.' : ''}`,
  'brake-release-not-tried': () => 'Nobody has heard yet whether it opens.',
};

export const brakeSteps: StepSentences<Step<BrakeStepCode>> = {
  ...figureSteps,
  ...busBeforeSteps,
  'support-axis-first': () =>
    'Set the axis on its support or pin it, look that nobody is below it, and say so above. An axis that can’t fall counts as held.',
  'take-leads-off': () =>
    'Axis held, locked out and dead: take brake plug and motor leads off the drive, cap them, read the ohms again, and say so above.',
  'look-between': () =>
    'Look in the drawing and in the motor’s terminal box for a rectifier, an economy circuit or a drive output that pulses. Measure the coil behind it.',
  'read-plate': () => 'Read volts and watts, or ohms, from the plate of the brake, of the motor or from its manual.',
  'measure-coil': () =>
    'Locked out, plug off: measure the coil at the motor, both ways round. A diode across it conducts one way. Type the higher figure.',
  'measure-coil-temperature': () =>
    'Measure the temperature of the brake housing after some hours without power, or that of the motor’s sensor.',
  'repeat-coil-with-care': () =>
    'Lift the tips, clean the pins, take the tips’ own ohms off, let the coil cool, and read again both ways round.',
  'state-brake-cable': () => 'Type length and cross-section of the brake cores, or measure the coil at the motor.',
  'separate-cable': () =>
    'Axis held, locked out and dead: unplug the motor end too. Measure the cable alone, then the motor alone: the one that reads badly by itself, twice, is bad.',
  'measure-brake-cores': () =>
    'Multimeter, highest range, motor leads and brake off the drive: both brake cores to U, V, W and PE. Then unplug the motor, and read the two cores to each other.',
  'note-range': () => 'Measure on the highest range, and type its end if it is over it, such as > 20 MΩ.',
  'measure-supply': () =>
    'A brake for extra-low voltage only, axis held, nobody in reach: the control releases the brake, and a qualified person measures DC at the motor’s end of the cable and at the source at the same moment. The plug at the drive is the source: it shows nothing of the cores.',
  'find-drop': () =>
    'Locked out, measure each core from end to end and look at every terminal between the source and the plug.',
  'find-feed-fault': () =>
    'At extra-low voltage only, axis held, by a qualified person: measure at the source at the same moment. Good there: cores and contacts. Bad there: fuse, relay contact, setting of the supply, other loads on it.',
  'ask-brake-manual': () =>
    'Read in the brake’s manual which voltage it needs to open and to stay open, and how to measure it.',
  'listen-to-release': () =>
    'Axis held, nobody in reach: have the control release the brake as its procedure says. Listen at the motor, and look at the current afterwards. Drive nothing against a support or a pin. Never put a voltage of your own on it.',
  'replace-coil': () =>
    'If it reads so twice, at the motor: replace the brake or the motor, as its manual says. Brakes are set and tested by people trained for that.',
  'have-brake-tested': () =>
    'Have air gap, lining and armature looked at by people trained for that. Afterwards the brake is tested by the builder’s procedure before the support comes off.',
};
