import { busBeforeFound, busBeforeMissing } from '../../kernel/words/bus-before-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { BrakingAssessment, BrakingFinding } from './rule/input.ts';
import { pathNames } from './words.ts';

const words: HeadlineWords<BrakingFinding> = {
  found: {
    ...figureHeadline,
    ...busBeforeFound,
    'chopper-negative': () => 'a reading is below zero: there is voltage on the bus',
    'chopper-short': ({ path, bothWays }) =>
      bothWays ? `short read both ways, ${pathNames[path]}` : `short read one way, ${pathNames[path]}`,
    'chopper-leaky': ({ path }) => `${pathNames[path]} conducts both ways`,
    'housing-path': () => 'a path from the resistor to its housing',
    'housing-insulation-bad': () => 'too little insulation to the housing',
    'resistor-open': () => 'the resistor reads open',
    'resistor-low': () => 'the resistor reads far below its plate',
    'resistor-high': () => 'the resistor reads far above its plate',
    'resistor-lead-jumps': () => 'the reading jumps when the lead is moved',
    'thermal-open': () => 'the thermal switch reads open while cool',
    'resistor-over-range': () => 'the resistor is over a range that a sound one may exceed too',
    'resistor-too-close': () => 'the resistor neither passes nor fails',
    'housing-unclear': () => 'whether there is a path to the housing is not clear',
    'housing-insulation-unclear': () => 'whether the insulation is enough is not clear',
    'chopper-exchanged': ({ path }) => `${pathNames[path]} conducts the wrong way round`,
    'chopper-open': ({ path }) => `${pathNames[path]} conducts neither way`,
    'chopper-unclear': ({ path }) => `${pathNames[path]} is not clear`,
    'thermal-unclear': () => 'the thermal switch is neither closed nor open',
    'thermal-other': () => 'the thermal switch is judged by its manual',
  },
  missing: {
    ...busBeforeMissing,
    'resistor-plate-missing': () => 'the plate of the resistor',
    'resistor-missing': () => 'the resistor from end to end',
    'resistor-lead-not-stated': () => 'whether its lead is steady',
    'housing-missing': () => 'the resistor to its housing',
    'housing-insulation-missing': () => 'its insulation test',
    'thermal-not-stated': () => 'the thermal switch',
    'chopper-missing': () => 'the chopper',
  },
};

/** The verdict's reason in one line. No part is called bad here: a second reading convicts. */
export function brakingHeadline(assessment: BrakingAssessment): string {
  return headlineFrom(assessment, words, 'resistor, housing, switch and chopper read as they should');
}
