import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { testReminders } from '../../../kernel/assessment/test-reminders.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { missing } from '../../../kernel/reading/reading.ts';
import {
  type AbsorptionAssessment,
  type AbsorptionFinding,
  type AbsorptionInput,
  type AbsorptionPayloads,
  type AbsorptionStepCode,
  absorptionTimes,
} from './input.ts';
import { describeRatio, judgeIndex, ratioOf } from './ratios.ts';
import { describeShape, judgeSteadiness } from './shape.ts';

/**
 * The ten-minute insulation test of one winding at one test voltage. The verdict is the polarization index if IEEE 43
 * lets it count: not above 5 GΩ after one minute, and not for small random-wound machines. A clear fall anywhere in the
 * curve bars go. Worse means a flatter curve; the level of the resistance is judged by `assessInsulation`, and an index
 * says nothing about the level. All readings of one test have one temperature, so it cancels in the ratios; it is
 * stated for later tests. An impossible figure (not finite, or negative) gives `figure-impossible`: undecided, nothing
 * is judged.
 */
export function assessAbsorption(input: AbsorptionInput): AbsorptionAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return { verdict: 'undecided', findings: impossible, next: steps(impossible) };
  const at = (seconds: number) => input.readings[seconds] ?? missing;
  const minute = limitValue('index-first-time');
  const index = ratioOf(at(limitValue('index-last-time')), at(minute), input.instrument);
  const ratio = ratioOf(at(minute), at(limitValue('ratio-first-time')), input.instrument);
  const findings: AbsorptionFinding[] = [
    ...judgeIndex(input, index),
    ...describeRatio(ratio),
    ...describeShape(input),
    ...judgeSteadiness(input),
    aboutTemperature(input),
    ...testReminders(lastTime(input) / minute),
  ];
  return {
    verdict: verdictOf(findings),
    findings,
    next: steps(findings),
    ...(index !== undefined && { index }),
    ...(ratio !== undefined && { ratio }),
  };
}

const finding = findingMaker<AbsorptionPayloads>();

function aboutTemperature({ temperature }: AbsorptionInput): AbsorptionFinding {
  if (temperature.kind !== 'value') return finding('temperature-missing', 'caution');
  return finding('temperature-stated', 'note', { celsius: temperature.value });
}

/** Least time that the voltage was on, in s: until the last reading, and at least one minute. */
function lastTime({ readings }: AbsorptionInput): number {
  const taken = absorptionTimes.filter((seconds) => (readings[seconds] ?? missing).kind !== 'missing');
  return Math.max(limitValue('index-first-time'), ...taken);
}

const stepAfter: Partial<Record<AbsorptionFinding['code'], AbsorptionStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'index-incomplete': ['read-to-ten-minutes'],
  'index-below': ['clean-dry-repeat', 'compare-with-earlier-curve'],
  'index-too-close': ['repeat-with-accuracy', 'compare-with-earlier-curve'],
  'index-not-for-random-wound': ['judge-one-minute', 'compare-with-earlier-curve'],
  'index-says-nothing': ['judge-one-minute', 'compare-with-earlier-curve'],
  'one-minute-low': ['judge-one-minute'],
  'curve-falls': ['clean-dry-repeat'],
  'curve-flat': ['clean-dry-repeat'],
  'curve-uneven': ['clean-dry-repeat'],
  'curve-breaks': ['repeat-steady'],
  'temperature-missing': ['state-temperature'],
};

/** The winding is discharged before anything else is done with it. */
function steps(findings: readonly AbsorptionFinding[]): Step<AbsorptionStepCode>[] {
  const codes = new Set(findings.flatMap(({ code }) => stepAfter[code] ?? []));
  return [step('discharge-winding' as const), ...[...codes].map((code) => step(code))];
}
