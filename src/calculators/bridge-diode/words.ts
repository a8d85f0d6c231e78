import type { Severity, Step } from '../../kernel/assessment/assessment.ts';
import { limitRange, limitValue } from '../../kernel/limits.ts';
import { inVolts } from '../../kernel/reading/format-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, listed, type StepSentences } from '../../kernel/words/sentences.ts';
import { busFindings, moreThanOne, stageFailed, stageSteps } from '../bridge/output-stage-words.ts';
import { positionName, railNames, readingName, switchName } from '../bridge/position-names.ts';
import type { DiodePlace, SwitchPosition } from '../bridge/rule/switch-position.ts';
import type { BridgeDiodeFinding } from './rule/findings.ts';
import type { BridgeDiodeStepCode } from './rule/next-steps.ts';

const switches = (suspects: readonly SwitchPosition[]) => listed(suspects.map((one) => `the ${switchName(one)}`));
const listPositions = (positions: readonly SwitchPosition[]) => listed(positions.map(positionName));
const listPlaces = (places: readonly DiodePlace[]) => places.map(readingName).join('; ');

/** A finding that the other test contradicts does not count as a fail. */
const isOrWouldBe = (severity: Severity) => (severity === 'fail' ? 'That is' : 'That would be');

export const bridgeDiodeFindings: FindingSentences<BridgeDiodeFinding> = {
  ...figureFindings,
  ...busFindings,
  'bus-not-measured': () => 'The DC-bus voltage has not been measured. No reading is judged without it.',
  'bus-residual-voltage': ({ volts, falsifyingVolts }) =>
    `Up to ${inVolts(volts)} is left on the bus. Above ${inVolts(falsifyingVolts)} it falsifies the diode test, which works with little more than a volt, so nothing is judged.`,
  'diode-negative': ({ places }) =>
    `Stop. A reading is below zero: ${listPlaces(places)}. The meter can't show that by itself, so there is a voltage on the bus, whatever was measured before.`,
  'diode-drifting': () =>
    'Stop. The readings drift and do not come to rest. Something charges or discharges the bus while you touch it, so the bus is not dead.',
  'diode-steadiness-not-stated': () =>
    'You have not said whether the readings stand still. A reading that still moves says nothing, and may tell of a charged bus.',
  'motor-leads-connected': () =>
    'The motor leads are still on the drive. The windings join U, V and W, so a short in one position shows in all three.',
  'diode-incomplete': ({ places }) => `Not measured yet: ${listPlaces(places)}.`,
  'diode-short': ({ severity, positions, suspects }) =>
    `${listPositions(positions)}: ${inVolts(limitValue('diode-short'))} or less. ${isOrWouldBe(severity)} a short in ${switches(suspects)}.`,
  'diode-one-way': ({ positions }) =>
    `${listPositions(positions)} is a short in one polarity and not in the other. A short is one both ways: a tip slipped, or a figure is in the wrong row.`,
  'diode-short-possible': ({ positions }) =>
    `${listPositions(positions)} may be ${inVolts(limitValue('diode-short'))} or less. The reading does not exclude a short.`,
  'diode-all-alike': ({ rail }) =>
    `All three positions at ${railNames[rail]} conduct both ways. That is rare: something else may join the terminals.`,
  'diode-rows-swapped': ({ rail }) =>
    `At ${railNames[rail]} all three block where they should conduct, and conduct where they should block. The leads were the wrong way round, or the two rows are exchanged.`,
  'diode-leaky': ({ severity, positions, suspects }) =>
    `${listPositions(positions)} conducts both ways: below ${inVolts(limitValue('diode-blocking'))} where it should block. ${isOrWouldBe(severity)} a leak through ${switches(suspects)}.`,
  'diode-reverse-unclear': ({ places }) =>
    `These readings do not tell whether the position blocks: ${listPlaces(places)}. Usual is OL on all three, or three alike.`,
  'diode-blocks': ({ rail }) => `The three positions at ${railNames[rail]} block.`,
  'diode-forward-open': ({ suspects }) =>
    `${listPositions(suspects)} does not conduct, and another of the same rail does. That is an open diode or connection at ${switches(suspects)}.`,
  'diode-forward-all-open': ({ rail }) =>
    `None of the three positions at ${railNames[rail]} conducts. A broken lead shows the same, and so do diodes that drop more than the meter can show.`,
  'diode-unbalanced': ({ rail, suspects, leastVolts, toleranceVolts }) =>
    `The three drops at ${railNames[rail]} do not agree: they differ by at least ${inVolts(leastVolts)}; ${inVolts(toleranceVolts)} is allowed. Suspect: ${switches(suspects)}.`,
  'diode-too-close': ({ rail, range, toleranceVolts }) =>
    range === undefined
      ? `The drops at ${railNames[rail]} do not tell whether they agree within ${inVolts(toleranceVolts)}.`
      : `Too close to call: with the accuracy of your meter the drops at ${railNames[rail]} differ by anything from ${inVolts(range.leastVolts)} to ${inVolts(range.mostVolts)}; ${inVolts(toleranceVolts)} is allowed.`,
  'diode-balanced': ({ rail, mostVolts, toleranceVolts }) =>
    `The three drops at ${railNames[rail]} agree: they differ by no more than ${inVolts(mostVolts)}; ${inVolts(toleranceVolts)} is allowed.`,
  'diode-drop-unusual': ({ rail, severity }) =>
    `The three drops at ${railNames[rail]} agree, but are not of the usual size (${usual()}).${
      severity === 'undecided'
        ? ' They do not clearly conduct one way and read OL the other. A resistor can read so.'
        : ''
    }`,
  'tests-agree': () => 'The diode test and the resistance readings say the same.',
  'tests-contradict': ({ readings }) =>
    `${listPositions(readings)}: the diode test and the resistance readings contradict each other. One of them shows a path that the other excludes, so neither counts.`,
  'resistance-fails': ({ suspects }) => `The resistance readings fail at ${switches(suspects)}.`,
  'resistance-finds-leak': ({ suspects }) =>
    `The resistance readings fail at ${switches(suspects)}, where the diode test passes. That is no contradiction: the diode test does not see a leak of several kilohms.`,
  'resistance-explained': ({ readings }) =>
    `The resistance readings differ at ${listPositions(readings)} as well. The short that both tests name explains it, through the resistors of the bus.`,
  'resistance-sees-less': ({ readings }) =>
    `The resistance readings pass at ${listPositions(readings)}. They are taken with the diodes blocking, so they do not see what is wrong with a diode that should conduct.`,
  'resistance-undecided': () => 'The resistance readings decide nothing by themselves yet.',
  'diode-more-than-one': moreThanOne,
  'diode-blind-to-leaks': () =>
    'The diode test finds shorts, strong leaks and open diodes. A leak of several kilohms passes it: only the resistance readings show that.',
  'resistances-after-diodes': () =>
    'The blocking readings charge the bus by some volts, and those falsify resistances that are read afterwards.',
  'diode-suspect': () =>
    'The drive is suspect and gets no power, but it is not proven bad: no short was read in both polarities beside a sound position of the same rail. A second reading or the resistances prove it.',
  'diode-failed': stageFailed,
  'diode-passed': () =>
    'A pass does not prove the drive sound. The test does not see a fault in the gate drive or the control, or one that shows only under voltage.',
};

function usual(): string {
  const { from, to } = limitRange('diode-forward-typical');
  return `${inVolts(from)} to ${inVolts(to)}`;
}

export const bridgeDiodeSteps: StepSentences<Step<BridgeDiodeStepCode>> = {
  ...figureSteps,
  ...stageSteps,
  'discharge-residual': () =>
    'Wait longer, or have a qualified person discharge the bus as the drive manual says. Measure it again, then take the readings.',
  'take-motor-leads-off': () =>
    'Take the motor leads off U, V and W at the drive, then take the twelve readings again.',
  'let-readings-settle': () =>
    'Hold the tips until the reading stands still: where the stage blocks, the meter charges the bus for some seconds and the reading climbs to OL. Then say so above.',
  'measure-missing': () => 'Take the readings that are missing.',
  'keep-power-off': () => 'Put no power on this drive, and connect no new one, until this is decided.',
  'resistances-first': () =>
    'Read the resistances first and the diodes after them, or measure the bus between the two and wait until it is discharged again. Then say so above.',
  'exchange-leads': () =>
    'Exchange the two leads and take the rail again: conducting is red on the terminal and black on DC+, or red on DC− and black on the terminal. Make sure that nothing else joins the terminals.',
  'hold-tips-together': () =>
    'Hold the two meter tips together in the diode test: the meter must read about zero. Then take the readings again.',
  'repeat-position': () =>
    'Clean the terminal, press the tips on firmly, and take this position again in both polarities before you order anything.',
  'repeat-more-exactly': () => 'Repeat with the tips pressed on firmly, or with a more accurate meter.',
  'take-resistances': () =>
    'Take the six resistance readings as well, from DC+ and DC− to U, V and W, and type them in: they show a leak that the diode test passes.',
  'complete-resistances': () =>
    'Complete the resistance readings, or repeat them on the highest range and note the range. The page of the bridge balance says what is missing.',
  'repeat-both-tests': () =>
    'Measure the bus once more. Hold the tips together, clean the terminal, and take this position again with the same leads: resistance in both polarities on the lowest range, then the diode test in both polarities. Low in all four is a short. High in one of them is none.',
};
