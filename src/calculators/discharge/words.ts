import type { Step } from '../../kernel/assessment/assessment.ts';
import { formatRounded, formatSeconds, inVolts } from '../../kernel/reading/format-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import type { DischargeFinding, DischargeStepCode } from './rule/input.ts';
import { onlyTheMeter } from './wait-words.ts';

const charge = ({ volts, joules }: { volts: number; joules: number }) =>
  `Charged to ${inVolts(volts)}, the bus holds up to ${formatRounded(joules, 'J')}.`;

const fromSecond = (seconds: number | undefined) =>
  seconds === undefined ? '' : ` From your second reading: up to ${formatSeconds(seconds)}.`;

export const dischargeFindings: FindingSentences<DischargeFinding> = {
  ...figureFindings,
  'only-the-meter': () => onlyTheMeter,
  'start-missing': () =>
    'The voltage at the start is missing, or over-range and so without an upper end. Without it no time can be computed.',
  'discharge-data-missing': () =>
    'Nothing tells how fast the bus discharges. Type capacitance and bleeder, or the time constant, or two readings of the meter with the time between them.',
  'value-impossible': () =>
    'A capacitance, a resistance or a time constant of zero is impossible. Look at the entry again.',
  'pair-incomplete': () => 'Two voltages and the time between them belong together. One of the three is missing.',
  'times-equal': () => 'The time between the two readings is zero. They tell nothing about the discharge.',
  'voltage-rises': () =>
    'The second reading is higher than the first. Something feeds the bus: a supply that is still on, another drive on a common bus, or a motor that turns. Treat it as live.',
  'no-fall-shown': ({ atLeastSeconds }) =>
    `The two readings do not show a fall.${
      atLeastSeconds === undefined
        ? ''
        : ` All they tell is a time constant of at least ${formatSeconds(atLeastSeconds)}.`
    }`,
  'stands-near-half': ({ startVolts, standsVolts }) =>
    `It stands at ${inVolts(standsVolts)}, about half of ${inVolts(startVolts)}. Two capacitors in series do that when the balancing resistor of one is open: that half keeps its charge and nothing empties it. A supply that feeds the bus looks the same.`,
  'no-end': () =>
    'From these entries the bus may keep its charge without end, as it does with an open bleeder. Count on a charged bus.',
  'longest-wait': ({ touchVolts, shortestSeconds, longestSeconds, fromSecondSeconds }) =>
    `Computed: below ${inVolts(touchVolts)} after ${formatSeconds(shortestSeconds)} to ${formatSeconds(longestSeconds)} from the moment that the supply was cut. The longest time counts.${fromSecond(fromSecondSeconds)}`,
  'longest-wait-from-reading': ({ touchVolts, shortestSeconds, longestSeconds, fromSecondSeconds }) =>
    `Computed: below ${inVolts(touchVolts)} after ${formatSeconds(shortestSeconds)} to ${formatSeconds(longestSeconds)} from your first reading, not from the moment that the supply was cut: what the bus had then is not known. The longest time counts.${fromSecond(fromSecondSeconds)}`,
  'slower-than-values': ({ measuredSeconds, statedSeconds }) =>
    `The bus discharges more slowly than its parts would. Its time constant is at least ${formatSeconds(measuredSeconds)}, and the stated values give ${formatSeconds(statedSeconds)} at the most. A bleeder may be open.`,
  'faster-than-values': ({ measuredSeconds, statedSeconds }) =>
    `The bus falls faster than its parts would: a time constant of ${formatSeconds(measuredSeconds)} at the most, where the stated values give at least ${formatSeconds(statedSeconds)}. The drive's own supply helps as long as it runs, or the capacitors have aged. The longer time counts.`,
  'slower-than-label': ({ seconds, labelSeconds, volts }) =>
    `By your readings, ${inVolts(volts)} takes at least ${formatSeconds(seconds)}. The label says ${formatSeconds(labelSeconds)}. A bleeder may be open.`,
  'values-beyond-label': ({ seconds, labelSeconds, volts }) =>
    `By the stated values, ${inVolts(volts)} takes at least ${formatSeconds(seconds)}. The label says ${formatSeconds(labelSeconds)}. One of the two is wrong, or there is another path of discharge. Wait for the longer one.`,
  'longer-than-standard': ({ longestSeconds, volts, withinSeconds }) =>
    `It may take ${formatSeconds(longestSeconds)} to ${inVolts(volts)}, longer than the ${formatSeconds(withinSeconds)} of the machine standard. Such a part carries a label with its waiting time. Look for it.`,
  'tail-slower': () =>
    "The last part may be slower than your readings tell. The drive's own supply discharges the bus at first and stops at a lower voltage.",
  'usual-tolerance': ({ capacitancePercent, bleederPercent }) =>
    `Calculated with ± ${percent(capacitancePercent)} for the capacitors and ± ${percent(bleederPercent)} for the bleeder. Where you typed none, these are the usual ones.`,
  'energy-arc': (f) => `${charge(f)} Arc hazard: a short circuit throws molten metal.`,
  'energy-shock': (f) => `${charge(f)} Shock hazard: enough to kill.`,
  'energy-reflex': (f) =>
    `${charge(f)} Reflex hazard: the jerk throws a person back, off a ladder or into the machine.`,
  'energy-burn': (f) => `${charge(f)} Burn hazard: a ring or a tool across it gets hot at once.`,
  'energy-below': (f) => `${charge(f)} That is below the published classes. It may hurt all the same.`,
};

export const dischargeSteps: StepSentences<Step<DischargeStepCode>> = {
  ...figureSteps,
  'type-discharge-data': () =>
    'Type what you know: the highest voltage that the bus can have, and one of the three ways to its discharge.',
  'repeat-pair': () =>
    'Take two readings that are further apart, with the supply locked out. Leave the meter connected between them and stay clear.',
  'find-feed': () =>
    'Go back. Look for what still feeds the bus and lock it out. A hanging axis that sinks can do it too: support it.',
  'suspect-bleeder': () =>
    'Take the bleeder for open. The bus may stay charged for hours. Follow the drive manual to discharge it, with the means that it names.',
  'treat-as-live': () =>
    'Treat the bus as live for as long as it stands. Cover shut, and only the discharge procedure of the drive manual. The drive goes out with this as a finding.',
  'wait-then-measure': () =>
    'Wait for the longest of the computed time, the label and the drive manual. Then measure, before anything is touched.',
  'prove-dead': () =>
    'Prove the meter on a known source, measure DC+ to DC−, DC+ to PE and DC− to PE, and prove the meter again. Measure again before every new start of work: capacitors recover some of their voltage.',
};
