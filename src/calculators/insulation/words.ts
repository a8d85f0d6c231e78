import type { Step } from '../../kernel/assessment/assessment.ts';
import { shownAfterTrip } from '../../kernel/electrics/after-trip-leakage.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatQuantity, inCelsius, inOhms } from '../../kernel/reading/format-reading.ts';
import { cableEndFindings, cableEndSteps } from '../../kernel/words/cable-ends.ts';
import { methodNames } from '../../kernel/words/correction-names.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { peRemarkTexts } from '../../kernel/words/protective-conductor.ts';
import { capital, type FindingSentences, listed, type StepSentences } from '../../kernel/words/sentences.ts';
import { testFindings } from '../../kernel/words/test-conditions.ts';
import type { InsulationFinding, InsulationStepCode, PhaseJudged } from './rule/input.ts';

function reads({ phase, kind, ohms }: PhaseJudged): string {
  const bound = kind === 'over' ? 'at least ' : kind === 'under' ? 'at most ' : '';
  const what = phase === 'together' ? 'U, V and W, joined, read to PE' : `${phase} to PE reads`;
  return `${what} ${ohms === undefined ? 'over-range' : `${bound}${formatQuantity(ohms, 'Ω')}`}`;
}

function corrected({ corrected: at, referenceCelsius }: PhaseJudged): string {
  if (at === undefined) return '';
  return ` (${inOhms(at.ohms)} at ${inCelsius(referenceCelsius)}, factor ${Number(at.factor.toPrecision(3))})`;
}

function point({ occasion, limitOhms, referenceCelsius }: PhaseJudged): string {
  return occasion === 'routine'
    ? `The minimum is ${inOhms(limitOhms)} at ${inCelsius(referenceCelsius)}.`
    : `The go/no-go point after a trip is ${inOhms(limitOhms)}.`;
}

export const insulationFindings: FindingSentences<InsulationFinding> = {
  ...figureFindings,
  ...testFindings,
  ...cableEndFindings,
  ...peRemarkTexts,
  'phase-missing': ({ readings }) => `Not measured yet: ${listed(readings)} to PE.`,
  'together-missing': () => 'Not measured yet: U, V and W joined, to PE.',
  'phase-good': (f) => `${reads(f)}${corrected(f)}. That is good. ${point(f)}`,
  'phase-bad': (f) => `${reads(f)}${corrected(f)}. That is bad. ${point(f)}`,
  'phase-hot': (f) =>
    `${reads(f)}${corrected(f)}. It may be below the after-trip limit only because the winding is warm. ${point(f)} Measure it again cold before you blame it.`,
  'phase-cold': (f) =>
    `${reads(f)}${corrected(f)}. A cold winding flatters: at ${inCelsius(f.referenceCelsius)} it may be below the after-trip limit. ${point(f)}`,
  'phase-temperature-needed': (f) =>
    `${reads(f)}. Whether that is enough depends on the winding temperature. ${point(f)}`,
  'phase-too-close': (f) =>
    `${reads(f)}${corrected(f)}. With the accuracy of your tester that is too close to call. ${point(f)}`,
  'phase-bound-too-low': (f) =>
    f.ohms === undefined || f.ohms === 0
      ? `${f.phase === 'together' ? 'U, V and W joined' : f.phase} to PE is over-range, but on which range is not noted. ${point(f)}`
      : `${reads(f)}${corrected(f)}. That bound is too low to tell. ${point(f)}`,
  'phase-bound-too-high': (f) => `${reads(f)}${corrected(f)}. That bound is too high to tell. ${point(f)}`,
  'phase-methods-differ': (f) =>
    `${reads(f)}${corrected(f)}. The methods of correction do not agree on it: ${listed(f.methods.map((method) => methodNames[method]))} would judge otherwise. The verdict depends on the method, so it is undecided. ${point(f)}`,
  'pe-short': () => 'The PE pin shows continuity to the frame, as it should.',
  'pe-higher-than-expected': () =>
    'The PE pin reads more than a sound protective conductor should. Find out why before anything is powered.',
  'pe-not-short': () =>
    `The PE pin shows no continuity (it needs ${inOhms(limitValue('pe-dead-short'))} or less). The protective conductor is broken or makes bad contact. An insulation reading taken to this pin has had no return path and says nothing.`,
  'pe-not-proven': () =>
    'The PE reading is too coarse to prove a short. A zero on a megohm display can hide thousands of ohms.',
  'pe-missing': () =>
    'The PE pin has not been measured. Without it nobody knows that the tester was connected to the frame.',
  'temperature-missing': () =>
    'The winding temperature is missing. A hot winding looks bad and a cold one looks good, so no insulation passes without it.',
  'temperature-out-of-validity': ({ method, fromCelsius, toCelsius }) =>
    `${capital(methodNames[method])} ${method === 'thermosetting' ? 'hold' : 'holds'} from ${inCelsius(fromCelsius)} to ${inCelsius(toCelsius)}. The winding is outside, and nothing is extrapolated.`,
  'winding-at-dew-point': ({ windingCelsius, dewPointCelsius }) =>
    `The winding is at ${inCelsius(windingCelsius)} and the dew point at ${inCelsius(dewPointCelsius)}: there is water on the winding. The phases are not judged wet.`,
  'air-not-stated': () =>
    'The winding is colder than a room, and nothing is known of the air. If warm air reaches a cold winding, water settles on it.',
  'dew-point-incomplete': ({ severity }) =>
    `No dew point could be worked out: it needs the air temperature and the relative humidity, both within their usual range. ${
      severity === 'caution'
        ? 'The winding is warmer than the air, so it is dry.'
        : 'The winding is not shown to be warmer than the air, so it may be wet.'
    }`,
  'phases-differ': ({ ratio }) =>
    `The phases differ by more than a factor of ${ratio}. The windings meet inside a star-connected motor, so all three should read alike: suspect charge left from the reading before, the hook-up, a contact, an open core or an open winding.`,
  'form-wound-below-1-kv': () =>
    `The standard puts form-wound machines rated below 1 kV in the class with ${inOhms(limitValue('ieee43-minimum-random-wound'))}. You chose the stricter class.`,
  'charts-do-not-apply': () =>
    `The after-trip limit is common practice, no standard: ${inOhms(limitValue('after-trip-point'))} at ${shownAfterTrip.volts} is a leakage of ${shownAfterTrip.leakage}. Charts for routine tests of healthy machines do not apply.`,
  'insulation-passed': () =>
    'The insulation to PE passes. The test says nothing of shorts between phases or turns, nor of the feedback device and the brake.',
  'insulation-failed': () =>
    'Do not connect a drive to this. A motor or cable that fails here destroys the next drive.',
};

export const insulationSteps: StepSentences<Step<InsulationStepCode>> = {
  ...figureSteps,
  ...cableEndSteps,
  'measure-together': () => 'Join U, V and W and measure them to PE in one reading.',
  'measure-phases': () => 'Measure the phases that are missing, each to PE.',
  'measure-pe': () => 'Measure the PE pin to the frame on the lowest resistance range of a multimeter.',
  'measure-pe-low-range': () =>
    'Measure the PE pin to the frame again, with a multimeter on its lowest resistance range or a continuity tester.',
  'mend-pe': () =>
    'Find and mend the break in the protective conductor before anything is powered. Until then the frame can become live.',
  'repeat-after-pe': () => 'Take the readings of the phases again once the protective conductor is mended.',
  'repeat-near-reference': () =>
    `Repeat with the winding nearer to ${inCelsius(limitValue('reference-temperature-routine'))}: there the methods agree.`,
  'measure-temperature': () =>
    'Measure the winding temperature, or that of the housing once both have had hours to settle.',
  'other-method-or-temperature': () =>
    'Let the winding come to a temperature within the range and repeat, or choose a method that holds at this one.',
  'state-test-voltage': () => 'Type the test voltage that was set on the insulation tester.',
  'use-insulation-tester': () => 'Repeat with an insulation tester at the voltage of the table.',
  'state-rated-voltage': () => 'Type the rated voltage from the name plate of the motor.',
  'measure-air': () => 'Measure the temperature and the relative humidity of the air at the motor, and type both.',
  'dry-first': () => 'Warm the motor above the dew point and dry it, then repeat the test.',
  'let-cool': () => 'Let the motor cool to room temperature, then repeat the test.',
  'let-warm': () => 'Let the motor come to room temperature in dry air, then repeat the test.',
  'repeat-more-exactly': () => 'Repeat with a tester that is accurate enough near the limit, on the range that fits.',
  'note-range': () =>
    'Repeat on a higher range, or note the limit of the tester: type >700M if it shows more than 700 MΩ.',
  'find-contact': () => 'Discharge, check the hook-up and the contacts, then repeat the phase that stands out.',
  'separate-cable-and-motor': () =>
    'Separate the cable from the motor and test each alone, the cable core by core: the reading does not tell which is bad, and often both are.',
  'keep-as-baseline': () =>
    'Keep these readings with their temperature. They are what the next visit is compared with.',
};
