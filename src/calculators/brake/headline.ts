import { busBeforeFound, busBeforeMissing } from '../../kernel/words/bus-before-reading.ts';
import { figureHeadline, foundIn, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import { capital } from '../../kernel/words/sentences.ts';
import type { BrakeAssessment, BrakeFinding } from './rule/input.ts';
import type { BrakeCause } from './rule/release.ts';
import { cores } from './words.ts';

const words: HeadlineWords<BrakeFinding> = {
  found: {
    ...figureHeadline,
    ...busBeforeFound,
    'brake-axis-not-held': () => 'the axis may fall: hold it first',
    'brake-core-path': ({ readings }) => `a path: ${cores(readings)}`,
    'brake-stays-shut': () => 'it stays shut',
    'brake-drags': () => 'it drags',
    'brake-coil-open': () => 'the coil reads open',
    'brake-coil-low': () => 'the coil reads far below its plate',
    'brake-coil-high': () => 'the coil reads far above its plate',
    'brake-core-open': () => 'a core of the brake cable reads open',
    'brake-cores-touch': () => 'lower through the cable than at the motor',
    'brake-cores-high': () => 'the cores have more than their length explains',
    'brake-supply-low': () => 'too little voltage at the brake',
    'brake-supply-high': () => 'too much voltage at the brake',
    'brake-drop-high': () => 'too much voltage is lost on the way',
    'brake-electronics': () => 'electronics before the coil: its manual decides',
    'brake-plate-contradicts': () => 'the plate contradicts itself',
    'brake-leads-connected': () => 'with plug or leads on the drive, no ohms are judged',
    'brake-coil-over-range': () => 'over a range that a sound coil may exceed too',
    'brake-coil-too-close': () => 'the coil neither passes nor fails',
    'brake-cores-too-close': () => 'whether the cores have too much is not shown',
    'brake-cores-below': () => 'less through the cable than at the motor',
    'brake-core-unclear': ({ readings }) => `not clear: ${cores(readings)}`,
    'brake-supply-too-close': () => 'the voltage neither passes nor fails',
    'brake-drop-unclear': () => 'whether too much voltage is lost on the way is not clear',
    'brake-drop-contradicts': () => 'more voltage at the motor than at its source',
  },
  missing: {
    'brake-axis-not-stated': () => 'whether the axis is held',
    ...busBeforeMissing,
    'brake-leads-not-stated': () => 'whether plug and leads are off',
    'brake-circuit-not-stated': () => 'what lies before the coil',
    'brake-plate-missing': ({ readings }) => (readings.length === 1 ? 'the rated voltage' : 'the plate'),
    'brake-coil-missing': () => 'the coil',
    'brake-coil-temperature-missing': () => 'the temperature of the coil',
    'brake-cable-not-stated': () => 'length and cross-section of the cores',
    'brake-cores-not-measured': () => 'the brake cores to the others',
    'brake-supply-missing': () => 'the voltage at the brake',
    'brake-release-not-tried': () => 'whether it opens',
  },
};

const causes: Record<BrakeCause, string> = {
  coil: '; the coil explains it',
  cores: '; the cores explain it',
  supply: '; the voltage explains it',
  brake: '; suspect: the brake itself',
  unknown: '; cause not shown yet',
};

/** The verdict's reason in one line. No part is called bad by one reading. */
export function brakeHeadline(assessment: BrakeAssessment): string {
  const { verdict, cause } = assessment;
  if (verdict !== 'no-go' || cause === undefined) {
    return headlineFrom(assessment, words, 'coil, cores and voltage fit, and it opens');
  }
  return capital(`${foundIn(assessment, words)}${causes[cause]}`);
}
