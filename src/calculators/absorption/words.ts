import type { Step } from '../../kernel/assessment/assessment.ts';
import { formatRounded, formatSeconds, inOhms } from '../../kernel/reading/format-reading.ts';
import type { Interval } from '../../kernel/reading/interval.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import type { FindingSentences, StepSentences } from '../../kernel/words/sentences.ts';
import { testFindings } from '../../kernel/words/test-conditions.ts';
import type { AbsorptionFinding, AbsorptionStepCode } from './rule/input.ts';

/** A ratio to three digits, "2.05"; rounded outwards, so that an interval never looks narrower than it is. */
function figure(value: number, round: (value: number) => number): string {
  if (!Number.isFinite(value)) return 'any value';
  const step = 10 ** (Math.floor(Math.log10(Math.max(value, 0.01))) - 2);
  return String(Number((round(value / step) * step).toPrecision(3)));
}

/** "2.05", "1.9 to 2.2", "at least 2". */
export function ratioText({ lo, hi }: Interval): string {
  const [low, high] = [figure(lo, (v) => Math.floor(v + 1e-9)), figure(hi, (v) => Math.ceil(v - 1e-9))];
  if (high === 'any value') return lo === 0 ? high : `at least ${low}`;
  return low === high ? low : `${low} to ${high}`;
}

const polarization = (index: Interval) => `The polarization index is ${ratioText(index)}`;
const notApart =
  'Moisture, dirt and a warm winding do this alike. The curve does not tell them apart; cleaning and drying do.';

export const absorptionFindings: FindingSentences<AbsorptionFinding> = {
  ...figureFindings,
  ...testFindings,
  'index-incomplete': () => 'The polarization index needs the readings at 1 minute and at 10 minutes.',
  'index-meets': (f) =>
    `${polarization(f.index)}, and at least ${f.wanted} is wanted. This is about the curve only: the go/no-go after a trip is a test of its own.`,
  'index-below': (f) =>
    `${polarization(f.index)}. At least ${f.wanted} is wanted. The winding may be moist, dirty or damaged: leakage outweighs absorption.`,
  'index-too-close': (f) =>
    `${polarization(f.index)}, by the accuracy of the tester and the digits that you typed. The limit of ${f.wanted} lies within.`,
  'index-not-for-random-wound': (f) =>
    `${polarization(f.index)}. In a small random-wound winding the absorption is over within a minute or two, so that the index may be low in a sound one. By trade practice it is not held against such a machine, and it passes none.`,
  'index-says-nothing': (f) =>
    `${polarization(f.index)}, but the reading at 1 minute is above ${inOhms(f.highOhms)} or may be. The current is then so small that leads and air decide the index. It says nothing about the winding.`,
  'one-minute-low': ({ floorOhms }) =>
    `The reading at 1 minute is below ${inOhms(floorOhms)} or may be. A rising curve does not make up for a low level.`,
  'index-dry': () => 'The index is very high. In an old winding, that may be insulation that is dry and brittle.',
  'ratio-stated': ({ ratio, from, to }) =>
    `The dielectric absorption ratio is ${ratioText(ratio)}. It decides nothing: no standard has a limit for it, and publications draw their borders anywhere from ${from} to ${to}. Compare it with an earlier one of this winding.`,
  'curve-falls': ({ fromSeconds, toSeconds }) =>
    `The resistance falls from ${formatSeconds(fromSeconds)} to ${formatSeconds(toSeconds)}. Sound insulation does not do that: leakage grows while the voltage is on. ${notApart}`,
  'curve-uneven': ({ atSeconds }) =>
    `The curve goes up and down: at ${formatSeconds(atSeconds)} it is lower than before. That may be a voltage that was not steady, a loose lead, or a path that breaks through and heals.`,
  'curve-breaks': ({ atSeconds }) =>
    `At ${formatSeconds(atSeconds)} the reading is clearly lower than one before. An index takes a steady voltage and a sound path for granted, so nothing is passed on it.`,
  'curve-flat': ({ fromSeconds, toSeconds }) =>
    `The curve stays level from ${formatSeconds(fromSeconds)} to ${formatSeconds(toSeconds)}: leakage outweighs absorption, or the winding is too small to show any. ${notApart}`,
  'curve-rises': () =>
    'The curve rises, as insulation does that takes up charge. It does not prove that no weak spot is left: one small spot hides in the sum.',
  'temperature-missing': () =>
    'The winding temperature is missing. Within one test it cancels out, but without it this test can’t be compared with a later one.',
  'temperature-stated': ({ celsius }) =>
    `At ${formatRounded(celsius, '°C')}, not corrected: all readings of one test have the same temperature. State it with the curve.`,
};

export const absorptionSteps: StepSentences<Step<AbsorptionStepCode>> = {
  ...figureSteps,
  'discharge-winding': () =>
    'Discharge the winding to the frame first, for as long as the note says. After a long test it gives back a dangerous voltage if it is opened too soon.',
  'read-to-ten-minutes': () =>
    'Leave the voltage on and steady, and take the readings at 1 minute and 10 minutes. If it was switched off, discharge the winding fully before a new start.',
  'judge-one-minute': () => 'Judge the reading at 1 minute with the insulation calculator.',
  'repeat-with-accuracy': () =>
    'Discharge, then repeat with a tester that shows more digits or is more accurate, on one range throughout.',
  'repeat-steady': () =>
    'Discharge the winding, fix the leads so that nothing moves, and take the whole curve again with the voltage steady. A fall that comes again is in the winding.',
  'clean-dry-repeat': () =>
    'Clean and dry the terminals and the plug, and repeat. If the curve gets steeper it was the surface. If not, dry the winding and repeat again before you blame it.',
  'compare-with-earlier-curve': () =>
    'Compare with an earlier curve of this machine at the same voltage and about the same temperature. A change tells more than one figure.',
  'state-temperature': () => 'Measure the winding temperature and type it.',
};
