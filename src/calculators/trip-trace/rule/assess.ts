import { findingMaker, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { busVoltage } from './bus.ts';
import { addsUp, currentSum, eachPhaseMeasured } from './current-sum.ts';
import type { TraceFigures } from './figures.ts';
import type {
  Branch,
  TripTraceAssessment,
  TripTraceFinding,
  TripTraceInput,
  TripTracePayloads,
  TripTraceStep,
  TripTraceStepCode,
} from './input.ts';
import { load } from './load.ts';
import { openPhase } from './open-phase.ts';
import { ordinaryCurrents } from './ordinary-currents.ts';
import { oscillation } from './oscillation.ts';
import { rotation, speedJump } from './rotation.ts';
import { slope } from './slope.ts';
import { wantedIn } from './wanted.ts';

const finding = findingMaker<TripTracePayloads>();

/**
 * What a trace of the trip points to. Every rule is physics and stands alone: it speaks for something, against something, or
 * makes no statement. The verdict is always undecided: a trace proves no part good or bad.
 */
export function assessTripTrace(input: TripTraceInput): TripTraceAssessment {
  const { figures } = input;
  if (figures === undefined) {
    const findings: TripTraceFinding[] = [finding('file-missing', 'undecided')];
    return { verdict: 'undecided', findings, next: [step('open-the-file')], points: [] };
  }
  const { rows, sampleSeconds, tripSeconds, tripFrom } = figures;
  const jump = speedJump(figures);
  const ruled: TripTraceFinding[] = [
    slope(figures, input),
    openPhase(figures, input),
    currentSum(figures, input),
    busVoltage(figures, input),
    ...(jump ? [jump] : []),
    oscillation(figures, input),
    rotation(figures, input),
    load(figures, input),
    ordinaryCurrents(figures, input),
  ];
  const findings = [
    ...ruled,
    finding('points-only', 'note'),
    finding('trace-read', 'note', { rows, sampleSeconds, tripSeconds, tripFrom }),
    ...(tripFrom === 'file-end' ? [finding('trip-not-recorded', 'caution')] : []),
  ];
  const points = pointsOf(ruled, figures, input);
  return { verdict: verdictOf(findings), findings, next: steps(findings, points, figures, input), points, figures };
}

/** What each finding points to. With several, nothing in the trace tells them apart. */
const pointsTo: Partial<Record<TripTraceFinding['code'], readonly Branch[]>> = {
  'slope-for': ['short-outside'],
  'slope-of-one': ['earth-path', 'short-outside', 'sensing'],
  'zero-for': ['open-core', 'sensing'],
  'sum-for': ['earth-path', 'sensing'],
  'sum-of-one': ['sensing', 'earth-path'],
  'sum-offset': ['sensing'],
  'bus-braking': ['supply-braking'],
  'bus-supply': ['supply-braking'],
  'speed-jump-for': ['feedback', 'mechanics'],
  'rotation-for': ['feedback'],
  'oscillation-for': ['tuning', 'feedback'],
  'motion-lost': ['mechanics', 'feedback'],
  'motion-stalled': ['mechanics', 'feedback'],
  'motion-against-torque': ['feedback', 'mechanics', 'sensing'],
  'motion-load': ['mechanics', 'feedback', 'sensing'],
  'ordinary-for': ['inside-drive', 'short-outside', 'sensing'],
};

/**
 * The first finding that speaks for something leads: the order is that of cause before effect, since a short circuit or an open
 * core also shakes loops, speed and bus.
 */
function pointsOf(findings: readonly TripTraceFinding[], figures: TraceFigures, input: TripTraceInput): Branch[] {
  const first = findings.find((one) => one.severity === 'undecided' && pointsTo[one.code] !== undefined);
  if (first === undefined) return [];
  const branches = pointsTo[first.code] ?? [];
  return [...new Set([...branches, ...alike(first, findings, figures, input)])];
}

/** What looks the same as the first finding because nothing in the file excludes it. */
function alike(
  first: TripTraceFinding,
  findings: readonly TripTraceFinding[],
  figures: TraceFigures,
  input: TripTraceInput,
): Branch[] {
  const sumSeen = eachPhaseMeasured(figures, input);
  switch (first.code) {
    case 'motion-lost':
    case 'motion-stalled':
      // With an open core, or a sensor that reads nothing, a motor makes no torque either.
      return findings.some(({ code }) => code === 'zero-against') ? [] : ['open-core', 'sensing'];
    case 'zero-for':
      // A leak from one of two measured cores is in the computed third too, beside a motor that carries little.
      return sumSeen ? [] : ['earth-path'];
    case 'bus-supply':
      // A current that a sensor does not show pulls the bus down too.
      return sumSeen && addsUp(figures) ? [] : ['sensing'];
    case 'ordinary-for':
      return [
        ...(first.earth === 'possible' ? (['earth-path'] as const) : []),
        ...(first.supply === 'unknown' ? (['supply-braking'] as const) : []),
        ...(first.core === 'possible' ? (['open-core'] as const) : []),
      ];
    default:
      return [];
  }
}

const stepsFor: Record<Branch, TripTraceStepCode[]> = {
  'short-outside': ['check-bridge', 'measure-insulation', 'measure-winding'],
  'earth-path': ['measure-insulation'],
  'inside-drive': ['check-bridge'],
  sensing: ['compare-sensors'],
  feedback: ['check-feedback'],
  'open-core': ['measure-winding'],
  mechanics: ['check-mechanics'],
  tuning: ['check-tuning'],
  'supply-braking': ['check-braking'],
};

function steps(
  findings: readonly TripTraceFinding[],
  points: readonly Branch[],
  figures: TraceFigures,
  input: TripTraceInput,
): TripTraceStep[] {
  const silent = (why: string) => findings.some((one) => 'why' in one && one.why === why);
  const codes: TripTraceStepCode[] = ['look-at-moment', ...points.flatMap((branch) => stepsFor[branch])];
  if (silent('no-inductance')) codes.push('state-inductance');
  const isNear = findings.some(
    (one) => one.code === 'slope-nothing' && (one.why === 'coarse' || one.why === 'between'),
  );
  if (isNear && input.inductanceIs === undefined) codes.push('state-smaller');
  if (silent('level-unknown')) codes.push('state-level');
  if (silent('no-pairs') || silent('frequency-unknown')) codes.push('state-pairs');
  if (silent('filtered') && input.stored === undefined) codes.push('state-storing');
  if (figures.measured === 3 && figures.sum?.zero === false && input.sensors === undefined) codes.push('state-sensors');
  const wanted = wantedIn(findings, figures, input);
  const isMore = wanted.columns.length > 0 || wanted.seconds !== undefined;
  return [
    ...[...new Set(codes)].map((code) => step(code)),
    ...(isMore ? [{ code: 'record-so' as const, ...wanted }] : []),
    step('measure-parts'),
  ];
}
