import type { BridgeDiodeCode, BridgeDiodeStepCode, Finding } from '../calc/index.ts';
import { formatRounded, limitRange, limitValue } from '../calc/index.ts';
import { figureFindings, figureSteps } from './figures.ts';
import { busFindings, moreThanOne, stageFailed, stageSteps } from './output-stage.ts';
import { positionName, readingName, switchName } from './positions.ts';
import { type FindingSentences, listed, type StepSentences } from './sentences.ts';

const volts = (value: number | undefined) => formatRounded(value ?? 0, 'V');
const rail = ({ names }: Finding) => (names.rail === 'plus' ? 'DC+' : 'DC−');
const idsIn = (text: string | undefined) => text?.split(' ').filter(Boolean) ?? [];
const suspects = ({ names }: Finding) => listed(idsIn(names.suspects).map((id) => `the ${switchName(id)}`));
const positions = (ids: readonly string[]) => listed(ids.map(positionName));

const readingNames = ({ readings }: Finding) => readings.map(readingName).join('; ');

/** Both readings of a position stand in the finding: one name for the two. */
const places = ({ readings }: Finding) =>
  positions([...new Set(readings.map((id) => id.replace(/Forward|Reverse/, '')))]);

/** A finding that the other test contradicts is no longer a fail. */
const isOrWouldBe = ({ severity }: Finding) => (severity === 'fail' ? 'That is' : 'That would be');

export const bridgeDiodeFindings: FindingSentences<BridgeDiodeCode> = {
  ...figureFindings,
  ...busFindings,
  'bus-not-measured': () => 'The DC-bus voltage has not been measured. No reading is judged without it.',
  'bus-residual-voltage': ({ numbers }) =>
    `Up to ${volts(numbers.voltage)} is left on the bus. Above ${volts(numbers.falsifying)} it falsifies the diode test, which works with little more than a volt, so nothing is judged.`,
  'diode-negative': (finding) =>
    `Stop. A reading is below zero: ${readingNames(finding)}. Something drives the meter, so the bus is not dead, whatever was measured before.`,
  'diode-drifting': () =>
    'Stop. The readings drift and do not come to rest. Something charges or discharges the bus while you touch it, so the bus is not dead.',
  'diode-steadiness-not-stated': () =>
    'You have not said whether the readings stand still. A reading that still moves says nothing, and may tell of a charged bus.',
  'motor-leads-connected': () =>
    'The motor leads are still on the drive. The windings join U, V and W, so a short in one position shows in all three.',
  'diode-incomplete': (finding) => `Not measured yet: ${readingNames(finding)}.`,
  'diode-short': (finding) =>
    `${places(finding)}: ${volts(limitValue('diode-short'))} or less. ${isOrWouldBe(finding)} a short in ${suspects(finding)}.`,
  'diode-one-way': (finding) =>
    `${places(finding)} is a short in one polarity and not in the other. A short is one both ways: a tip slipped, or a figure stands in the wrong row.`,
  'diode-short-possible': (finding) =>
    `${places(finding)} may be ${volts(limitValue('diode-short'))} or less. The reading does not exclude a short.`,
  'diode-all-alike': (finding) =>
    `All three positions at ${rail(finding)} conduct both ways. That is rare: something else may join the terminals.`,
  'diode-rows-swapped': (finding) =>
    `At ${rail(finding)} all three block where they should conduct, and conduct where they should block. The leads were the wrong way round, or the two rows are exchanged.`,
  'diode-leaky': (finding) =>
    `${places(finding)} conducts both ways: below ${volts(limitValue('diode-blocking'))} where it should block. ${isOrWouldBe(finding)} a leak through ${suspects(finding)}.`,
  'diode-reverse-unclear': (finding) =>
    `These readings do not tell whether the position blocks: ${readingNames(finding)}. Usual is OL on all three, or three alike.`,
  'diode-blocks': (finding) => `The three positions at ${rail(finding)} block.`,
  'diode-forward-open': (finding) =>
    `${positions(idsIn(finding.names.suspects))} does not conduct, and another of the same rail does. That is an open diode or connection at ${suspects(finding)}.`,
  'diode-forward-all-open': (finding) =>
    `None of the three positions at ${rail(finding)} conducts. A broken lead shows the same, and so do diodes that drop more than the meter can show.`,
  'diode-unbalanced': (finding) =>
    `The three drops at ${rail(finding)} do not agree: they differ by at least ${volts(finding.numbers.least)}; ${volts(finding.numbers.tolerance)} is allowed. Suspect: ${suspects(finding)}.`,
  'diode-too-close': (finding) =>
    finding.numbers.most === undefined
      ? `The drops at ${rail(finding)} do not tell whether they agree within ${volts(finding.numbers.tolerance)}.`
      : `Too close to call: with the accuracy of your meter the drops at ${rail(finding)} differ by anything from ${volts(finding.numbers.least)} to ${volts(finding.numbers.most)}; ${volts(finding.numbers.tolerance)} is allowed.`,
  'diode-balanced': (finding) =>
    `The three drops at ${rail(finding)} agree: they differ by no more than ${volts(finding.numbers.most)}; ${volts(finding.numbers.tolerance)} is allowed.`,
  'diode-drop-unusual': (finding) =>
    `The three drops at ${rail(finding)} agree, but are not of the usual size (${usual()}).${
      finding.severity === 'undecided'
        ? ' They do not clearly conduct one way and read OL the other. A resistor can read so.'
        : ''
    }`,
  'tests-agree': () => 'The diode test and the resistance readings say the same.',
  'tests-contradict': ({ readings }) =>
    `${positions(readings)}: the diode test and the resistance readings contradict each other. One of them shows a path that the other excludes, so neither counts.`,
  'resistance-fails': (finding) => `The resistance readings fail at ${suspects(finding)}.`,
  'resistance-finds-leak': (finding) =>
    `The resistance readings fail at ${suspects(finding)}, where the diode test passes. That is no contradiction: the diode test does not see a leak of several kilohms.`,
  'resistance-explained': ({ readings }) =>
    `The resistance readings differ at ${positions(readings)} as well. The short that both tests name explains it, through the resistors of the bus.`,
  'resistance-sees-less': ({ readings }) =>
    `The resistance readings pass at ${positions(readings)}. They are taken with the diodes blocking, so they do not see what is wrong with a diode that should conduct.`,
  'resistance-undecided': () => 'The resistance readings decide nothing by themselves yet.',
  'diode-more-than-one': moreThanOne,
  'diode-blind-to-leaks': () =>
    'The diode test finds shorts, strong leaks and open diodes. A leak of several kilohms passes it: only the resistance readings show that.',
  'diode-failed': stageFailed,
  'diode-passed': () =>
    'This is not a clean bill of health. The test does not see a fault in the gate drive or the control, or one that shows only under voltage.',
};

function usual(): string {
  const { from, to } = limitRange('diode-forward-typical');
  return `${volts(from)} to ${volts(to)}`;
}

export const bridgeDiodeSteps: StepSentences<BridgeDiodeStepCode> = {
  ...figureSteps,
  ...stageSteps,
  'discharge-residual': () =>
    'Wait longer, or have a qualified person discharge the bus as the drive manual says. Measure it again, then take the readings.',
  'take-motor-leads-off': () =>
    'Take the motor leads off U, V and W at the drive, then take the twelve readings again.',
  'let-readings-settle': () =>
    'Hold the tips until the reading stands still: where the stage blocks, the meter charges the bus for some seconds and the reading climbs to OL. Then say so above.',
  'measure-missing': () => 'Take the readings that are missing.',
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
    'Measure the bus once more. Hold the tips together, clean the terminal, and take this position again with the same leads: diode test in both polarities, then the resistance in both polarities on the lowest range. Low in all four is a short. High in one of them is none.',
};
