import type { Step } from '../../kernel/assessment/assessment.ts';
import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import { formatQuantity, inCelsius } from '../../kernel/reading/format-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, listed, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import { pairNames } from './pair-names.ts';
import type { WindingFinding, WindingStepCode } from './rule/assess.ts';
import { type WindingPair, windingPairs } from './rule/pairs.ts';
import type { Pairs } from './rule/phases.ts';

const pairs = (list: readonly WindingPair[]) => listed(list.map((pair) => pairNames[pair]));

/** Four digits: windings of one motor differ in the third. */
const inOhms = (ohms: number) => formatQuantity(Number(ohms.toPrecision(4)), 'Ω');

const eachPhase = (ohms: Phases<number>) => listed(phases.map((phase) => `${phase} ${inOhms(ohms[phase])}`));
const eachPair = (ohms: Pairs<number>) =>
  listed(windingPairs.map((pair) => `${pairNames[pair]} ${inOhms(ohms[pair])}`));

/** Fewer turns, or one more contact. */
function suspect(name: string, side: 'low' | 'high'): string {
  return side === 'low'
    ? `winding ${name} is lower than the other two: shorted turns`
    : `winding ${name} is higher than the other two: a bad joint or contact, or a broken strand`;
}

/** With the other usual figure beside it, since a manual may mean either. */
function deviation(deviationPercent: number, rangePercent?: number): string {
  const spread = rangePercent === undefined ? '' : ` (highest less lowest is ${percent(rangePercent)} of the mean)`;
  return `the largest deviation from the mean is ${percent(deviationPercent)}${spread}`;
}

export const windingFindings: FindingSentences<WindingFinding> = {
  ...figureFindings,
  'winding-incomplete': ({ readings }) => `Not measured yet: ${pairs(readings)}.`,
  'winding-open': ({ readings }) => `${pairs(readings)} is open. A winding, a core or a contact is broken.`,
  'winding-open-phase': ({ terminal }) =>
    `Both go through ${terminal}, and the third pair reads: the break is in phase ${terminal}, its core or its contact.`,
  'winding-open-alone': ({ readings }) =>
    `No winding is open between ${pairs(readings)} alone: the other two readings lead through the third terminal. A tip did not touch, or a figure is a slip.`,
  'winding-range-not-noted': ({ readings }) =>
    `${pairs(readings)} is over-range on a range that does not tell an open winding.`,
  'winding-balanced': ({ deviationPercent, goodPercent }) =>
    `The windings are alike: ${deviation(deviationPercent)}; ${percent(goodPercent)} passes.`,
  'winding-unbalanced': ({ deviationPercent, rangePercent, badPercent }) =>
    `The windings are not alike: ${deviation(deviationPercent, rangePercent)}; above ${percent(badPercent)} fails.`,
  'winding-between-limits': ({ deviationPercent, goodPercent, badPercent }) =>
    `The largest deviation from the mean is ${percent(deviationPercent)}, between ${percent(goodPercent)} that passes and ${percent(badPercent)} that fails. Some windings are built so.`,
  'winding-needs-four-leads': () =>
    'The resistance is too low for two leads, and you have not said that you used four. Each time the tips are pressed on, the reading changes by as much as the limit allows, with the leads zeroed too. So nothing is decided.',
  'winding-too-coarse': ({ leastPercent, mostPercent, goodPercent }) =>
    `Too coarse to tell: with one step of the display the deviation from the mean is anything from ${percent(leastPercent)} to ${percent(mostPercent)}; ${percent(goodPercent)} passes.`,
  'winding-leads-subtracted': ({ leadOhms }) => `${inOhms(leadOhms)} of the leads is taken off each reading.`,
  'winding-leads-not-stated': () =>
    'You have not said how the test leads were kept out of the readings. Without that no winding passes: leads can hide a difference.',
  'winding-leads-missing': () =>
    'You want the leads taken off, but their own resistance is not given. What is left of the readings is not known.',
  'winding-leads-contradict': ({ leadOhms }) =>
    leadOhms === undefined
      ? 'The tips held together must read a plain value. Over-range there means a broken lead.'
      : `You say that the leads are out of the readings, and give ${inOhms(leadOhms)} to take off. Only one of the two can be true.`,
  'winding-leads-exceed': ({ leadOhms }) =>
    `The leads, with ${inOhms(leadOhms)}, are more than a whole reading. One of the two is a slip.`,
  'winding-sum-of-others': ({ pair, leftOut, connection }) =>
    `${pairNames[pair]} reads as much as the other two together, or nearly. ${connection === 'delta' ? '' : `In a star the winding of ${leftOut} then has no resistance: it is shorted. `}${connection === 'star' ? '' : `In a delta the winding ${pairNames[pair]} is open. `}A slip or a loose tip can do it too.`,
  'winding-more-than-others': ({ pair }) =>
    `${pairNames[pair]} reads more than the other two together. No motor shows that: it is a bad contact, or a slip.`,
  'winding-not-confirmed': () =>
    'One set of readings proves no part bad: a dirty terminal or a tip does the same. A second set decides.',
  'winding-again-confirms': () => 'The second set says the same as the first.',
  'winding-again-passes': () =>
    'The second set passes. A contact has changed: a tip, a terminal or a pin. If it was a tip that slipped, type the second set above in place of the first. If it was a pin or a terminal, it can have caused the trip.',
  'winding-again-fails': () =>
    'The second set fails and the first did not. A contact has changed: a tip, a terminal or a pin.',
  'winding-again-differs': () =>
    'The second set fails too, but not in the same way. Something makes bad contact, so neither set proves a part bad.',
  'winding-again-unclear': () => 'The second set can’t be judged, so it confirms nothing.',
  'winding-contact-possible': () =>
    'Two sets agree, but with two leads a bad contact can still be part of both: two pairs that share a terminal read high.',
  'winding-joint-good': ({ limitOhms }) =>
    `The mated connector has ${inOhms(limitOhms)} or less: it is not what makes the readings differ.`,
  'winding-joint-bad': ({ limitOhms }) =>
    `The mated connector has more than ${inOhms(limitOhms)}. It makes the readings differ, and it gets hot: neither motor nor cable is proven bad by them.`,
  'winding-joint-unclear': () =>
    'The reading across the mated connector does not tell: with two leads their own contacts are in it.',
  'winding-phases-star': ({ ohms }) => `Joined in star, the windings have ${eachPhase(ohms)}.`,
  'winding-phases-delta': ({ ohms }) => `Joined in delta, the windings have ${eachPair(ohms)}.`,
  'winding-suspect-star': ({ name, side }) => `Suspect, if joined in star: ${suspect(name, side)}.`,
  'winding-suspect-delta': ({ name, side }) => `Suspect, if joined in delta: ${suspect(pairNames[name], side)}.`,
  'winding-no-single-suspect': () =>
    'No single winding stands apart from the other two, so none is named as the suspect.',
  'winding-corrected': ({ ohms, fromCelsius, toCelsius }) =>
    `Carried from ${inCelsius(fromCelsius)} to ${inCelsius(toCelsius)}: ${eachPair(ohms)}.`,
  'winding-not-corrected': () =>
    'The temperature is outside what windings see in service, so nothing is corrected or compared.',
  'winding-reference-no-temperature': () =>
    'The nameplate or earlier value is not compared: both temperatures are needed, because copper gains about four percent in ten kelvins.',
  'winding-reference-matches': ({ atCelsius, tolerancePercent }) =>
    `The mean fits the nameplate or earlier value at ${inCelsius(atCelsius)}: they differ by no more than ${percent(tolerancePercent)}.`,
  'winding-reference-differs': ({ atCelsius, tolerancePercent, apartPercent }) =>
    `The mean differs from the nameplate or earlier value at ${inCelsius(atCelsius)} by more than ${percent(tolerancePercent)}${far(apartPercent)}. Another model, the cable in between, a wrong temperature or a damaged winding do that.`,
  'winding-reference-too-close': ({ tolerancePercent }) =>
    `The figures do not tell whether the mean fits the nameplate or earlier value within ${percent(tolerancePercent)}.`,
  'winding-passed': () =>
    'No open winding and no large difference. A few shorted turns can hide in this: only a specialist test of the winding finds them.',
  'winding-failed': () =>
    'If you measured at the motor connector, the fault is in the motor. Through the cable, it can be in the cable or the connector as well.',
};

/** ": it is at least 14 % higher", if the figures show it. */
function far(apartPercent: number | undefined): string {
  if (apartPercent === undefined) return '';
  return `: it is at least ${percent(Math.abs(apartPercent))} ${apartPercent > 0 ? 'higher' : 'lower'}`;
}

export const windingSteps: StepSentences<Step<WindingStepCode>> = {
  ...figureSteps,
  'measure-pairs': () => 'Measure the pairs that are missing: U–V, V–W and W–U.',
  'note-winding-range': () => 'Repeat on a range of some kilohms and note it.',
  'use-milliohm-meter': () => 'Repeat with a milliohm meter, four leads, or zero the leads and use the lowest range.',
  'use-four-leads': () =>
    'Make a four-wire measurement: a milliohm meter with four leads, two that carry the current and two that sense the voltage, the sensing ones inside. Say so above.',
  'state-leads': () => 'Say above how the test leads were kept out: four leads, zeroed, or their reading taken off.',
  'read-leads-together': () =>
    'Hold the two tips together and type what the meter shows, or zero the meter so, or use four leads. Then take the three readings again.',
  'repeat-pair': () => 'Clean the terminals, press the tips on firmly, and repeat this pair before you believe it.',
  'read-pairs-again': () =>
    'Take the leads off, clean the terminals, put the leads on again and take all three readings once more. Type them as the second set.',
  'find-contact': () =>
    'Find the contact that changes: look at pins, crimps and terminals, and move each lead while you watch the reading. Mend it, then take three readings again.',
  'mend-joint': () =>
    'Part the connector, look at both halves for brown or pushed-back pins, clean or replace them, and measure again.',
  'note-temperatures': () =>
    'Read the temperature of the winding, from its sensor or at the housing once both have settled for hours. Note the temperature that the other value was given for.',
  'compare-at-motor': () =>
    'Measure at the motor connector, with four leads and a motor that has settled to the temperature of the room, and compare once more. A sound motor of the same model decides.',
  'measure-at-motor': () =>
    'Measure the same three pairs at the motor connector, so that the cable is out of it. If the motor passes there, measure across the mated connector, and each core end to end: that separates joint and cable.',
  'ask-for-surge-test': () =>
    'Compare with a sound motor of the same model, or have a surge test made by a repair shop.',
};
