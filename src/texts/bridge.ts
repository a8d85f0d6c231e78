import type { BridgeCode, BridgeStepCode, Finding } from '../calc/index.ts';
import { formatRounded, type LimitId, limitRange, limitValue } from '../calc/index.ts';
import { figureFindings, figureSteps } from './figures.ts';
import { busFindings, moreThanOne, stageFailed, stageSteps } from './output-stage.ts';
import { positionName, switchName } from './positions.ts';
import { type FindingSentences, listed, percent, type StepSentences } from './sentences.ts';

const railNames: Record<string, string> = { plus: 'DC+', minus: 'DC−' };

function rail({ names }: Finding): string {
  return railNames[names.rail ?? ''] ?? '';
}

function positions(ids: readonly string[]): string {
  return listed(ids.map(positionName));
}

function suspects({ names }: Finding): string[] {
  return names.suspects?.split(' ') ?? [];
}

const volts = (value: number | undefined) => formatRounded(value ?? 0, 'V');
const short = () => formatRounded(limitValue('bridge-short'), 'Ω');

/** "3.8 Ω, which is ", where a figure was read. */
function lowest({ readings, numbers }: Finding): string {
  if (numbers.lowest === undefined) return '';
  return `${readings.length === 1 ? '' : 'as little as '}${formatRounded(numbers.lowest, 'Ω')}, which is `;
}

function usualSize([id]: readonly LimitId[]): string {
  if (id === undefined) return '';
  const { from, to } = limitRange(id);
  return `${formatRounded(from, 'Ω')} ${Number.isFinite(to) ? `to ${formatRounded(to, 'Ω')}` : 'up to open'}`;
}

function unbalanced(finding: Finding): string {
  const { spread, deviation, tolerance } = finding.numbers;
  const size =
    spread === undefined
      ? 'One is beyond the range of the meter and another is not'
      : `They differ by ${percent(spread)} of the smaller (${percent(deviation)} from the mean)`;
  const ids = suspects(finding);
  const odd =
    ids.length === 1
      ? `Suspect: the ${switchName(ids[0] ?? '')}.`
      : `No single one stands out. Suspect: ${listed(ids.map((id) => `the ${switchName(id)}`))}.`;
  return `The readings from ${rail(finding)} do not agree. ${size}; ${percent(tolerance)} is allowed. ${odd}`;
}

function unbalancedByShort(finding: Finding): string {
  const at = finding.names.terminal?.split(' ') ?? [];
  const shorts = at.length === 1 ? 'short at the same terminal explains' : 'shorts at the same terminals explain';
  return `The readings from ${rail(finding)} do not agree. At ${listed(at)} the ${shorts} it, through the resistors of the bus. Read there, they tell nothing of the switches on this side.`;
}

function balanced(finding: Finding): string {
  const { spread, deviation, tolerance } = finding.numbers;
  return `The three readings from ${rail(finding)} agree: they differ by ${percent(spread)} of the smaller (${percent(deviation)} from the mean); ${percent(tolerance)} is allowed. No short.`;
}

export const bridgeFindings: FindingSentences<BridgeCode> = {
  ...figureFindings,
  ...busFindings,
  'bus-not-measured': () => 'The DC-bus voltage has not been measured. No resistance is judged without it.',
  'bus-residual-voltage': ({ numbers }) =>
    `Up to ${volts(numbers.voltage)} is left on the bus. Above ${volts(numbers.falsifying)} it falsifies every resistance reading, so none is judged.`,
  'all-open': () =>
    'All six readings are over-range. A broken lead or a tip that slipped shows the same, and nothing says that the meter was connected.',
  'tips-together-proven': () => 'The meter tips held together read a short: the leads are sound.',
  'motor-leads-connected': () =>
    'The motor leads are still on the drive. The windings join U, V and W, so a fault in one position shows in all three and looks balanced.',
  'rail-incomplete': (finding) => `Not measured yet: ${positions(finding.readings)}.`,
  'rail-short': (finding) =>
    `${positions(finding.readings)} ${finding.readings.length === 1 ? 'reads' : 'read'} ${lowest(finding)}${short()} or less. That is a short in the ${listed(suspects(finding).map(switchName))}.`,
  'rail-all-short': (finding) =>
    `All three readings from ${rail(finding)} are shorts. That is rare: the meter leads may be the wrong way round, or something else joins the terminals.`,
  'rail-short-possible': (finding) =>
    `${positions(finding.readings)} may be ${short()} or less. The reading does not exclude a short.`,
  'rail-unbalanced': unbalanced,
  'rail-unbalanced-by-short': unbalancedByShort,
  'rail-balanced': balanced,
  'rail-open': (finding) =>
    `The three readings from ${rail(finding)} are over-range: balanced and open. No short. Whether that is usual depends on the model.`,
  'rail-range-too-low': (finding) => `The range is too low to tell whether the readings from ${rail(finding)} agree.`,
  'rail-range-not-noted': (finding) =>
    `OL was noted without the range. The reading ${positions(finding.readings.slice(0, 1))} counts as open only if the meter was on its highest range.`,
  'rail-too-close': (finding) => {
    const { least, most, tolerance } = finding.numbers;
    return most === undefined
      ? `The readings from ${rail(finding)} do not tell whether they agree within ${percent(tolerance)}.`
      : `Too close to call: with the accuracy of your meter, the readings from ${rail(finding)} differ by anything from ${percent(least)} to ${percent(most)}; ${percent(tolerance)} is allowed.`;
  },
  'rail-lower-than-usual': (finding) =>
    `The readings from ${rail(finding)} agree, but they are lower than usual (${usualSize(finding.limits)}, depending on the model).`,
  'bridge-more-than-one': moreThanOne,
  'bridge-failed': stageFailed,
  'bridge-passed': () =>
    'This is not a clean bill of health. The check finds shorted, leaky and open switches. It does not see a fault in the gate drive or the control, or one that shows only under voltage.',
};

export const bridgeSteps: StepSentences<BridgeStepCode> = {
  ...figureSteps,
  ...stageSteps,
  'discharge-residual': () =>
    'Wait longer, or have a qualified person discharge the bus as the drive manual says. Measure it again, then read the resistances.',
  'hold-tips-together': () =>
    'Hold the two meter tips together, and type what the meter shows. Then take the six readings again.',
  'check-polarity': () =>
    'Before you order anything: red on DC+ for the upper three, black on DC− for the lower three. Make sure that nothing else joins the terminals, and repeat.',
  'take-motor-leads-off': () => 'Take the motor leads off U, V and W at the drive, then take the six readings again.',
  'measure-missing': () => 'Take the readings that are missing.',
  'use-higher-range': () =>
    'Repeat on the highest resistance range and note the range: type >72M if the meter shows OL on a range of 72 MΩ.',
  'repeat-short': () =>
    'Repeat on a lower range, with the leads held together first, so that a short can be told from a low reading.',
  'repeat-more-exactly': () => 'Repeat with a more accurate meter, or on the range that shows more digits.',
};
