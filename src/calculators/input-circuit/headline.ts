import { busBeforeFound, busBeforeMissing } from '../../kernel/words/bus-before-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import { listed } from '../../kernel/words/sentences.ts';
import type { InputAssessment, InputFinding } from './rule/input.ts';
import { diodes, sideNames } from './words.ts';

const ways = (bothWays: boolean) => (bothWays ? 'short read both ways' : 'short read one way');

const words: HeadlineWords<InputFinding> = {
  found: {
    ...figureHeadline,
    ...busBeforeFound,
    'input-negative': () => 'a reading is below zero: there is voltage',
    'link-short': ({ bothWays }) => `${ways(bothWays)}, DC+ to DC−`,
    'rectifier-short': ({ diodes: some, bothWays }) => `${ways(bothWays)}, ${diodes(some)}`,
    'link-leaky': () => 'DC+ to DC− conducts both ways',
    'rectifier-leaky': ({ diodes: some }) => `conducts both ways: ${diodes(some)}`,
    'precharge-bypassed': () => 'the precharge reads like a shut contact',
    'precharge-open': () => 'the precharge reads open',
    'precharge-off': () => 'the precharge is far off its plate',
    'rectifier-open': ({ diodes: some }) => `conducts neither way: ${diodes(some)}`,
    'fuse-open': ({ lines }) => `the fuse of ${listed(lines)} is open`,
    'supply-leads-connected': () => 'with the supply leads on, nothing is judged',
    'others-connected': () => 'something else is still on the bus',
    'fuse-unclear': () => 'a fuse reads neither open nor closed',
    'rectifier-side-open': ({ side }) => `nothing conducts to ${sideNames[side]}`,
    'rectifier-uneven': ({ side }) => `the drops to ${sideNames[side]} are not alike`,
    'rectifier-exchanged': ({ diodes: some }) => `conducts the wrong way round: ${diodes(some)}`,
    'rectifier-unclear': ({ diodes: some }) => `not clear: ${diodes(some)}`,
    'link-open': () => 'DC+ to DC− conducts neither way',
    'link-exchanged': () => 'DC+ to DC− conducts the wrong way round',
    'link-one-drop': () => 'DC+ to DC− conducts like one diode, not like two',
    'link-unclear': () => 'DC+ to DC− is not clear',
    'link-no-climb': () => 'DC+ to DC− was open at once, without climbing',
    'precharge-inside': () => 'the precharge is out of reach, and can blow fuses',
    'precharge-over-range': () => 'the precharge is over a range that a sound one may exceed too',
    'precharge-none': () => 'what limits the current at power-on is not judged',
    'precharge-too-close': () => 'the precharge neither passes nor fails',
  },
  missing: {
    ...busBeforeMissing,
    'supply-leads-not-stated': () => 'whether the supply leads are off',
    'others-not-stated': () => 'what else is on the bus',
    'fuses-missing': () => 'the fuses',
    'rectifier-missing': () => 'the rectifier',
    'link-missing': () => 'DC+ to DC−',
    'link-climb-not-stated': () => 'whether it climbed',
    'precharge-missing': () => 'the precharge',
  },
};

/** The verdict's reason in one line. No part is called bad here: a second reading convicts. */
export function inputHeadline(assessment: InputAssessment): string {
  return headlineFrom(assessment, words, 'fuses, rectifier, bus and precharge read as they should');
}
