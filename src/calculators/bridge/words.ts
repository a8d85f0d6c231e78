import type { Step } from '../../kernel/assessment/assessment.ts';
import { type LimitId, limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, listed, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import { busFindings, moreThanOne, stageFailed, stageSteps } from './output-stage-words.ts';
import { positionName, railNames, switchName } from './position-names.ts';
import type { BridgeFinding } from './rule/findings.ts';
import type { BridgeStepCode } from './rule/next-steps.ts';
import type { SwitchPosition } from './rule/switch-position.ts';
import { secondReadingFindings, suspectNote } from './second-reading-words.ts';

type Of<Code extends BridgeFinding['code']> = BridgeFinding & { code: Code };

const positions = (list: readonly SwitchPosition[]) => listed(list.map(positionName));
const short = () => formatRounded(limitValue('bridge-short'), 'Ω');

/** "3.8 Ω, which is ", if a figure was read. */
function lowest({ readings, lowestOhms }: Of<'rail-short'>): string {
  if (lowestOhms === undefined) return '';
  return `${readings.length === 1 ? '' : 'as little as '}${formatRounded(lowestOhms, 'Ω')}, which is `;
}

function usualSize(usual: LimitId): string {
  const { from, to } = limitRange(usual);
  return `${formatRounded(from, 'Ω')} ${Number.isFinite(to) ? `to ${formatRounded(to, 'Ω')}` : 'up to open'}`;
}

type Off = Of<'rail-unbalanced'> | Of<'rail-uneven'> | Of<'rail-as-sister'>;

function size({ differences, tolerancePercent }: Off): string {
  const by =
    differences === undefined
      ? 'One is beyond the range of the meter and another is not'
      : `They differ by ${percent(differences.spreadPercent)} of the smaller (${percent(differences.deviationPercent)} from the mean)`;
  return `${by}; ${percent(tolerancePercent)} is allowed.`;
}

function unbalanced(finding: Of<'rail-unbalanced'>): string {
  const { rail, suspects, high } = finding;
  const named = listed(suspects.map((position) => `the ${switchName(position)}`));
  const odd = high
    ? `${positions(suspects)} ${suspects.length === 1 ? 'reads' : 'read'} high: a poor contact of the tip comes first, a broken track after it.`
    : suspects.length === 1
      ? `Suspect: ${named}.`
      : `No single one stands out. Suspect: ${named}.`;
  return `The readings from ${railNames[rail]} do not agree. ${size(finding)} ${odd}`;
}

function unbalancedByShort({ rail, shorted }: Of<'rail-unbalanced-by-short'>): string {
  const shorts = shorted.length === 1 ? 'short at the same terminal explains' : 'shorts at the same terminals explain';
  return `The readings from ${railNames[rail]} do not agree. At ${listed(shorted)} the ${shorts} it, through the resistors of the bus. Read there, they say nothing of the transistors on this side.`;
}

function balanced({ rail, differences, tolerancePercent }: Of<'rail-balanced'>): string {
  const { spreadPercent, deviationPercent } = differences;
  return `The three readings from ${railNames[rail]} agree: they differ by ${percent(spreadPercent)} of the smaller (${percent(deviationPercent)} from the mean); ${percent(tolerancePercent)} is allowed. No short.`;
}

export const bridgeFindings: FindingSentences<BridgeFinding> = {
  ...figureFindings,
  ...busFindings,
  'bus-not-measured': () => 'The DC-bus voltage has not been measured. No resistance is judged without it.',
  'bus-residual-voltage': ({ volts, falsifyingVolts }) =>
    `Up to ${formatRounded(volts, 'V')} is left on the bus. Above ${formatRounded(falsifyingVolts, 'V')} it falsifies every resistance reading, so none is judged.`,
  'all-open': () =>
    'All six readings are over-range. A broken lead or a tip that slipped shows the same, and nothing says that the meter was connected.',
  'tips-together-proven': () => 'The meter tips held together read a short: the leads are sound.',
  'motor-leads-connected': () =>
    'The motor leads are still on the drive. The windings join U, V and W, so a fault in one position shows in all three and looks balanced.',
  'rail-incomplete': ({ readings }) => `Not measured yet: ${positions(readings)}.`,
  'rail-short': (finding) =>
    `${positions(finding.readings)} ${finding.readings.length === 1 ? 'reads' : 'read'} ${lowest(finding)}${short()} or less. That is a short in the ${listed(finding.suspects.map(switchName))}.`,
  'rail-all-short': ({ readings, rail, severity }) =>
    severity === 'caution'
      ? `Every reading from ${railNames[rail]} is ${short()} or less. The higher ones may be diodes that conduct: the leads may be the wrong way round.`
      : `${positions(readings)}: ${short()} or less, and no reading of this rail is higher. Sound diodes read so too if the leads are the wrong way round, or if the meter has its plus on the black lead. Nothing is proven yet.`,
  'rail-short-possible': ({ readings }) =>
    `${positions(readings)} may be ${short()} or less. The reading does not exclude a short.`,
  'rail-unbalanced': unbalanced,
  'rail-uneven': (finding) =>
    `The readings from ${railNames[finding.rail]} do not agree. ${size(finding)} Odd: ${positions(finding.odd)}. That is not clearly off (less than half or more than twice): some sound models have a measuring resistor at one terminal.`,
  'rail-as-sister': (finding) =>
    `The readings from ${railNames[finding.rail]} do not agree. ${size(finding)} A sound drive of the same model shows the same pattern, and the second reading confirms it: it belongs to the model.`,
  'rail-unbalanced-by-short': unbalancedByShort,
  'rail-balanced': balanced,
  'rail-open': ({ rail }) =>
    `The three readings from ${railNames[rail]} are over-range: balanced and open. No short. Whether that is usual depends on the model.`,
  'rail-range-too-low': ({ rail }) =>
    `The range is too low to tell whether the readings from ${railNames[rail]} agree.`,
  'rail-range-not-noted': ({ position }) =>
    `OL was noted without the range. The reading ${positionName(position)} counts as open only if the meter was on its highest range.`,
  'rail-too-close': ({ rail, range, tolerancePercent }) =>
    range === undefined
      ? `The readings from ${railNames[rail]} do not tell whether they agree within ${percent(tolerancePercent)}.`
      : `Too close to call: with the accuracy of your meter, the readings from ${railNames[rail]} differ by anything from ${percent(range.leastPercent)} to ${percent(range.mostPercent)}; ${percent(tolerancePercent)} is allowed.`,
  'rail-lower-than-usual': ({ rail, usual, severity }) =>
    `The readings from ${railNames[rail]} agree, but they are lower than usual (${usualSize(usual)}, depending on the model).${
      severity === 'undecided'
        ? ' Diodes that conduct read so too, and hide a leak beside them: the leads may be the wrong way round.'
        : ''
    }`,
  'bridge-more-than-one': moreThanOne,
  ...secondReadingFindings,
  'bridge-failed': stageFailed,
  'bridge-suspect': suspectNote,
  'bridge-passed': () =>
    'A pass does not prove the drive sound. The check finds shorted, leaky and open transistors. It does not see a fault in the gate drive or the control, or one that shows only under voltage.',
};

export const bridgeSteps: StepSentences<Step<BridgeStepCode>> = {
  ...figureSteps,
  ...stageSteps,
  'discharge-residual': () =>
    'Wait longer, or have a qualified person discharge the bus as the drive manual says. Measure it again, then read the resistances.',
  'hold-tips-together': () =>
    'Hold the two meter tips together, and type what the meter shows. Then take the six readings again.',
  'exchange-leads': () =>
    'Exchange the two leads at U, wait until the figure stands still, and type it as “U with the leads exchanged”. Make sure that nothing else joins the terminals.',
  'type-exchanged-row': () =>
    'Read the whole row with the leads exchanged, and type it in place of the first. Do the same with the other rail: your leads are the wrong way round, or your meter has its plus on the black lead.',
  'read-first-again': () =>
    'Read U once more now, as the last of its row, and type it as “U again”. While the bus capacitor charges from the meter, the first reading is too low.',
  'read-row-again': () =>
    'Hold the tips on U until the figure stands still; that can take minutes. Then read the whole row again, U once more at the end, and type the new figures.',
  'read-odd-again': () =>
    'Lift the tips, clean the terminal, and read the lowest or odd terminal once more. Type it as “The odd terminal again”.',
  'read-third-time': () =>
    'Clean the terminal and read it a third time. Type the figure that came twice into its row, and the other one nowhere.',
  'read-bus-again': () =>
    'Hold the tips on DC+ and DC− for a minute, red on DC+, then note what the meter shows. Exchange the leads and read again.',
  'clear-the-bus': () =>
    'Take braking resistor, DC links to neighbours and capacitor modules off DC+ and DC− as the manual allows, measure the bus again, and repeat. If nothing else is there, say so.',
  'keep-power-off': () => 'Put no power on this drive, and connect no new one, until this is decided.',
  'take-motor-leads-off': () => 'Take the motor leads off U, V and W at the drive, then take the six readings again.',
  'measure-missing': () => 'Take the readings that are missing.',
  'use-higher-range': () =>
    'Repeat on the highest resistance range and note the range: type >72M if the meter shows OL on a range of 72 MΩ.',
  'repeat-short': () =>
    'Repeat on a lower range, with the leads held together first, so that a short can be told from a low reading.',
  'repeat-more-exactly': () => 'Repeat with a more accurate meter, or on the range that shows more digits.',
};
