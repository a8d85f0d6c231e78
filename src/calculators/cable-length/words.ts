import type { Step } from '../../kernel/assessment/assessment.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded, inOhms } from '../../kernel/reading/format-reading.ts';
import type { Interval } from '../../kernel/reading/interval.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import type { FindingSentences, StepSentences } from '../../kernel/words/sentences.ts';
import type { CableLengthFinding, CableLengthStepCode } from './rule/input.ts';

const inMetres = (metres: number) => formatRounded(metres, 'm');

/** Both limits, each with its figures. */
function limits({ pointOhms, newOhms }: { pointOhms: number; newOhms: Interval }): string {
  const reference = formatRounded(limitValue('cable-reference-temperature'), '°C');
  return `The go/no-go point after a trip is ${inOhms(pointOhms)}. A new cable of this build and length has at least ${inOhms(newOhms.lo)} to ${inOhms(newOhms.hi)} at ${reference}, by its specification.`;
}

export const cableLengthFindings: FindingSentences<CableLengthFinding> = {
  ...figureFindings,
  'cable-data-missing': () =>
    'Both diameters and the length are needed. Without them nobody knows what a sound cable of this length reads.',
  'diameters-impossible': () =>
    'The diameter over the insulation must be larger than that of the conductor, by more than the last digit of either, and the length above zero.',
  'cable-reading-missing': () => 'The reading of the core is missing.',
  'cable-temperature-missing': () =>
    'The temperature of the cable is missing. A warm cable reads low and a cold one flatters.',
  'cable-passes-both': (f) => `The reading reaches both limits. ${limits(f)}`,
  'cable-below-new': (f) =>
    `The reading reaches the after-trip limit, but may lie below what a new cable has. It may be aged, moist, or dirty at its ends. ${limits(f)}`,
  'cable-long-enough-to-explain': (f) =>
    `The reading is below the after-trip limit, but a sound cable of this length may read so. ${limits(f)}`,
  'cable-fails': (f) => `The reading is below both limits. The length does not explain it. ${limits(f)}`,
  'cable-below-machine-minimum': ({ minimumOhms }) =>
    `The reading is below ${inOhms(minimumOhms)}, the least that the machine standard asks for between power conductors and PE. No length and no warmth makes up for that.`,
  'cable-too-close': (f) =>
    `The reading, its temperature or the accuracy of the tester leave both answers open. ${limits(f)}`,
  'point-still-holds': ({ holdsToMetres, lengthMetres }) =>
    `Up to about ${inMetres(holdsToMetres)} of this cable, the after-trip limit lies below what a new cable has. It holds for your ${inMetres(lengthMetres)} as it is.`,
  'point-holds-no-more': ({ holdsToMetres, lengthMetres }) =>
    `From about ${inMetres(holdsToMetres)} of this cable on, a sound run may read below the after-trip limit. Your run is ${inMetres(lengthMetres)} long.`,
  'constant-recalled': () =>
    'The constant of the formula comes from memory of cable specifications. The data sheet of your cable counts before it.',
};

export const cableLengthSteps: StepSentences<Step<CableLengthStepCode>> = {
  ...figureSteps,
  'measure-cable-data': () =>
    'Take the diameters from the data sheet, or with a caliper at an end that is already open. Never cut into a cable for this.',
  'measure-cable': () =>
    'Test one core against all the others joined with the screen and PE, both ends disconnected, and read after one minute.',
  'measure-cable-temperature': () =>
    'Measure the temperature of the cable itself, where most of its length lies, and type it.',
  'compare-cores': () =>
    'Test the other cores in the same way. Cores of one sound cable read alike; one that stands out is bad, whatever the length.',
  'test-parts-of-run': () =>
    'Open the run at a connector or a terminal box and test the parts. Half the length must read about twice as much.',
  'compare-with-earlier': () =>
    'Compare with the readings from before the trip, at the same temperature. Keep these for the next visit.',
  'repeat-cable-exactly': () =>
    'Let the cable come to room temperature and repeat, with a tester that is accurate enough near the limit.',
};
