import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { busVoltage } from './bus.ts';
import { currentSum } from './current-sum.ts';
import type {
  Branch,
  TripTraceAssessment,
  TripTraceFinding,
  TripTraceInput,
  TripTracePayloads,
  TripTraceStepCode,
} from './input.ts';
import { load } from './load.ts';
import { openPhase } from './open-phase.ts';
import { ordinaryCurrents } from './ordinary-currents.ts';
import { oscillation } from './oscillation.ts';
import { rotation, speedJump } from './rotation.ts';
import { slope } from './slope.ts';

const finding = findingMaker<TripTracePayloads>();

/**
 * What a trace of the trip points to. Every rule is physics and stands alone: it speaks for something, against something, or
 * makes no statement. The verdict is always undecided: a trace proves no part good or bad.
 */
export function assessTripTrace(input: TripTraceInput): TripTraceAssessment {
  const { figures } = input;
  if (figures === undefined) {
    const findings: TripTraceFinding[] = [finding('file-missing', 'undecided')];
    return { verdict: 'undecided', findings, next: steps(findings), points: [] };
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
  const points = pointsOf(ruled);
  return { verdict: verdictOf(findings), findings, next: steps(findings), points, figures };
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
function pointsOf(findings: readonly TripTraceFinding[]): Branch[] {
  const first = findings.find((one) => one.severity === 'undecided' && pointsTo[one.code] !== undefined);
  if (first === undefined) return [];
  const branches = pointsTo[first.code] ?? [];
  // A motor with an open core makes no torque either.
  const coresCarry = findings.some(({ code }) => code === 'zero-against');
  const noTorque = first.code === 'motion-stalled' || first.code === 'motion-lost';
  if (noTorque && !coresCarry) return [...branches, 'open-core'];
  // Nothing in the file excludes the supply then.
  if (first.code === 'ordinary-for' && first.supply === 'unknown') return [...branches, 'supply-braking'];
  return [...branches];
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

function steps(findings: readonly TripTraceFinding[]): Step<TripTraceStepCode>[] {
  if (findings.some(({ code }) => code === 'file-missing')) return [step('open-the-file')];
  const points = pointsOf(findings);
  const silent = (why: string) => findings.some((one) => 'why' in one && one.why === why);
  const codes: TripTraceStepCode[] = ['look-at-moment', ...points.flatMap((branch) => stepsFor[branch])];
  if (silent('no-inductance')) codes.push('state-inductance');
  if (silent('level-unknown')) codes.push('state-level');
  if (points.length === 0 && silent('coarse')) codes.push('record-faster');
  codes.push('measure-parts');
  return [...new Set(codes)].map((code) => step(code));
}
