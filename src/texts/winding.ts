import type { WindingCode, WindingStepCode } from '../calc/index.ts';
import { type FindingSentences, listed, percent, type StepSentences } from './sentences.ts';

const pairs = (ids: readonly string[]) => listed(ids.map((id) => id.split('').join('–')));

export const windingFindings: FindingSentences<WindingCode> = {
  'winding-incomplete': ({ readings }) => `Not measured yet: ${pairs(readings)}.`,
  'winding-open': ({ readings }) => `${pairs(readings)} is open. A winding, a core or a contact is broken.`,
  'winding-range-not-noted': ({ readings }) =>
    `${pairs(readings)} is over-range on a range that does not tell an open winding.`,
  'winding-balanced': ({ numbers }) =>
    `The windings are alike: the largest deviation from the mean is ${percent(numbers.deviation ?? numbers.most)}; ${percent(numbers.good)} passes.`,
  'winding-unbalanced': ({ numbers }) =>
    `The windings are not alike: the largest deviation from the mean is ${percent(numbers.deviation ?? numbers.least)}; above ${percent(numbers.bad)} fails.`,
  'winding-between-limits': ({ numbers }) =>
    `The largest deviation from the mean is ${percent(numbers.deviation ?? numbers.most)}, between ${percent(numbers.good)} that passes and ${percent(numbers.bad)} that fails. Some windings are built so.`,
  'winding-too-coarse': ({ numbers }) =>
    `Too coarse to tell: with one step of the display the deviation from the mean is anything from ${percent(numbers.least)} to ${percent(numbers.most)}; ${percent(numbers.good)} passes.`,
  'winding-passed': () =>
    'No open winding and no large difference. A few shorted turns can hide in this: only a specialist test of the winding finds them.',
  'winding-failed': () => 'The fault is in the winding, or in the cable if you measured through it.',
};

export const windingSteps: StepSentences<WindingStepCode> = {
  'measure-pairs': () => 'Measure the pairs that are missing: U–V, V–W and W–U.',
  'note-winding-range': () => 'Repeat on a range of some kilohms and note it.',
  'use-milliohm-meter': () => 'Repeat with a milliohm meter, four leads, or zero the leads and use the lowest range.',
  'measure-at-motor': () => 'Measure the same three pairs at the motor connector, so that the cable is out of it.',
  'ask-for-surge-test': () =>
    'Compare with a sound motor of the same model, or have the winding tested with surges by a repair shop.',
};
