import {
  type CableLengthCode,
  type CableLengthStepCode,
  type Finding,
  formatRounded,
  limitValue,
} from '../calc/index.ts';
import { figureFindings, figureSteps } from './figures.ts';
import type { FindingSentences, StepSentences } from './sentences.ts';

const ohms = (value: number | undefined) => formatRounded(value ?? 0, 'Ω');
const metres = (value: number | undefined) => formatRounded(value ?? 0, 'm');

/** "at least 450 MΩ", or a span where the constant or the last digits leave one. */
function floor({ numbers }: Finding): string {
  const { least = 0, most = 0 } = numbers;
  const reference = formatRounded(limitValue('cable-reference-temperature'), '°C');
  return `A new cable of this build and length has at least ${ohms(least)} to ${ohms(most)} at ${reference}, by its specification.`;
}

const point = ({ numbers }: Finding) => `The go/no-go point after a trip is ${ohms(numbers.point)}.`;

export const cableLengthFindings: FindingSentences<CableLengthCode> = {
  ...figureFindings,
  'cable-data-missing': () =>
    'Both diameters and the length are needed. Without them nobody knows what a sound cable of this length reads.',
  'diameters-impossible': () =>
    'The diameter over the insulation must be larger than that of the conductor, by more than the last digit of either, and the length above zero.',
  'cable-reading-missing': () => 'The reading of the core is missing.',
  'cable-temperature-missing': () =>
    'The temperature of the cable is missing. A warm cable reads low and a cold one flatters.',
  'cable-passes-both': (f) => `The reading reaches both limits. ${point(f)} ${floor(f)}`,
  'cable-below-new': (f) =>
    `The reading reaches the point after a trip, but may lie below what a new cable has. It may be aged, moist, or dirty at its ends. ${point(f)} ${floor(f)}`,
  'cable-long-enough-to-explain': (f) =>
    `The reading is below the point after a trip, but a sound cable of this length may read so. ${point(f)} ${floor(f)}`,
  'cable-fails': (f) => `The reading is below both limits. The length does not explain it. ${point(f)} ${floor(f)}`,
  'cable-below-machine-minimum': ({ numbers }) =>
    `The reading is below ${ohms(numbers.minimum)}, the least that the machine standard asks for between power conductors and PE. No length and no warmth makes up for that.`,
  'cable-too-close': (f) =>
    `The reading, its temperature or the accuracy of the tester leave both answers open. ${point(f)} ${floor(f)}`,
  'point-still-holds': ({ numbers }) =>
    `Up to about ${metres(numbers.metres)} of this cable, the point after a trip lies below what a new cable has. It holds for your ${metres(numbers.length)} as it is.`,
  'point-holds-no-more': ({ numbers }) =>
    `From about ${metres(numbers.metres)} of this cable on, a sound run may read below the point after a trip. Your run is ${metres(numbers.length)} long.`,
  'constant-recalled': () =>
    'The constant of the formula comes from memory of cable specifications. The data sheet of your cable counts before it.',
};

export const cableLengthSteps: StepSentences<CableLengthStepCode> = {
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
