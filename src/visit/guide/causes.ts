import type { Cause, Symptom } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { causesOfChange } from './change.ts';
import { feedbackGone, peSpeaksAgainst } from './evidence.ts';
import { recordedCauses } from './recording.ts';
import { trips } from './tries.ts';

/** What a trip at each moment most often comes from, the most frequent first. Common practice, no source. */
const likely: Record<Symptom, readonly Cause[]> = {
  'control-off': [
    ...(['feedback-supply', 'drive-control', 'output-stage', 'braking-circuit', 'other-axis', 'supply'] as const),
    ...(['contact', 'moisture', 'brake', 'cable-insulation', 'winding-insulation'] as const),
  ],
  'on-enable': [
    ...(['output-stage', 'cable-insulation', 'winding-insulation', 'winding-turns', 'drive-control'] as const),
    ...(['current-sensor', 'commutation', 'brake', 'moisture', 'other-axis', 'contact', 'idle-core'] as const),
    ...(['protective-conductor', 'output-filter', 'feedback-supply'] as const),
  ],
  'on-acceleration': [
    ...(['load', 'moving-cable', 'winding-turns', 'winding-insulation', 'brake', 'tuning'] as const),
    ...(['feedback-signal', 'drive-control', 'output-stage', 'current-sensor', 'contact', 'commutation'] as const),
    ...(['cable-insulation', 'drive-cooling', 'supply', 'magnets', 'moisture', 'other-axis'] as const),
  ],
  'on-braking': [
    ...(['braking-circuit', 'brake', 'load', 'tuning', 'drive-control', 'output-stage', 'supply'] as const),
    ...(['moving-cable', 'feedback-signal', 'winding-insulation', 'other-axis'] as const),
  ],
  'position-or-cable': [
    ...(['moving-cable', 'contact', 'feedback-signal', 'cable-insulation', 'idle-core', 'load'] as const),
    ...(['protective-conductor', 'commutation', 'magnets'] as const),
  ],
  'when-hot': [
    ...(['winding-insulation', 'winding-turns', 'drive-cooling', 'load', 'brake', 'magnets'] as const),
    ...(['current-sensor', 'drive-control', 'output-stage', 'contact', 'moisture'] as const),
  ],
  'now-and-then': [
    ...(['contact', 'moving-cable', 'feedback-signal', 'moisture', 'interference', 'supply'] as const),
    ...(['drive-control', 'brake', 'load', 'current-sensor', 'drive-cooling', 'protective-conductor'] as const),
  ],
};

/** What a trip that went away with the feedback unplugged comes from. */
const likelyWithoutFeedback: readonly Cause[] = [
  'feedback-supply',
  'contact',
  'feedback-signal',
  'moisture',
  'drive-control',
];

/** Every family of causes. */
export const everyCause: readonly Cause[] = [
  ...([
    'output-stage',
    'drive-control',
    'current-sensor',
    'drive-cooling',
    'cable-insulation',
    'moving-cable',
  ] as const),
  ...(['contact', 'output-filter', 'winding-insulation', 'winding-turns', 'moisture', 'protective-conductor'] as const),
  ...(['idle-core', 'feedback-supply', 'feedback-signal', 'brake', 'load', 'tuning', 'commutation'] as const),
  ...(['magnets', 'braking-circuit', 'other-axis', 'supply', 'interference'] as const),
];

/** The families that a trip at this moment makes likely, the most frequent first. */
export function likelyAt(when: Symptom): readonly Cause[] {
  return likely[when];
}

/** The families that a recording of the trip, its moment and its history make likely, the most frequent first. */
function likelyCauses(visit: VisitAnswers): readonly Cause[] {
  const when = visit.symptom?.answer.when;
  const pointed = [...recordedCauses(visit), ...causesOfChange(visit)];
  if (when === undefined || when === 'unknown') return [...new Set(pointed)];
  const first = feedbackGone(visit) ? likelyWithoutFeedback : [];
  return [...new Set([...first, ...pointed, ...likely[when]])];
}

/**
 * The families of causes that no reading of this visit excludes, the likely ones first. The moment alone excludes none: it is
 * often reported wrongly.
 */
export function possibleCauses(visit: VisitAnswers): Cause[] {
  const excluded = new Set(exclusions.filter(([, holds]) => holds(visit)).flatMap(([causes]) => causes));
  return [...new Set([...likelyCauses(visit), ...everyCause])].filter((cause) => !excluded.has(cause));
}

/** What each observation excludes. A pass at rest excludes nothing that needs motion, heat or the voltage of the
 * bus, nor does a steady bend test: bending by hand brings a fault back only sometimes. */
const exclusions: readonly [readonly Cause[], (visit: VisitAnswers) => boolean][] = [
  // It trips with the control off, so nothing that moves is needed.
  [['load', 'tuning', 'commutation', 'magnets'], (visit) => trips(visit, 'retry-feedback-off')],
  [['feedback-supply', 'feedback-signal'], (visit) => trips(visit, 'retry-feedback-off')],
  [
    ['cable-insulation', 'moving-cable', 'winding-insulation', 'winding-turns', 'output-filter', 'commutation'],
    withoutMotor,
  ],
  [['magnets', 'load', 'tuning', 'protective-conductor'], withoutMotor],
  [['brake', 'braking-circuit', 'other-axis', 'idle-core'], withAllOff],
  [['protective-conductor'], (visit) => peSound(visit)],
  [['cable-insulation'], (visit) => atRest(visit) && visit.isolation?.answer.assessment.parts.cable === 'proven-good'],
  [['idle-core'], (visit) => visit['idle-cores']?.answer.cores === 'none'],
];

function withoutMotor(visit: VisitAnswers): boolean {
  return trips(visit, 'retry-leads-off') || trips(visit, 'retry-stripped');
}

function withAllOff(visit: VisitAnswers): boolean {
  return trips(visit, 'retry-stripped') && visit['strip-drive']?.answer.state === 'all-off';
}

/** PE reads what it should, and no reading says otherwise. */
export function peSound(visit: VisitAnswers): boolean {
  const short = visit.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-short') === true;
  return short && !peSpeaksAgainst(visit);
}

/** Bent twice, and every core stayed steady. */
export function bentSteady(visit: VisitAnswers): boolean {
  const answer = visit['bend-test']?.answer;
  return answer?.result === 'steady' && answer.again;
}

/** The moment needs neither motion nor heat. */
export function atRest(visit: VisitAnswers): boolean {
  const when = visit.symptom?.answer.when;
  return when === 'control-off' || when === 'on-enable';
}
