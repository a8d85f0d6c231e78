import type { Answers, BusProofId, RetryAnswer, StepId, VisitAnswers } from './answers.ts';
import {
  feedbackGone,
  insulationSettled,
  isolationLeavesOpen,
  mayBePowered,
  motorBad,
  suspectedAnyway,
  tripsAsAWhole,
} from './evidence.ts';
import { hindered, motorSideSpeaksAgainst } from './power.ts';
import { afterMeasuring, conclude, feedbackFirst, isolationFailed, leadsOffThen } from './routes.ts';

/** Why an answer does not let the visit go on. */
export type Problem =
  | 'indication-contradicts'
  | 'not-locked-out'
  | 'not-waited'
  | 'meter-not-proved'
  | 'pe-not-proved'
  | 'supply-not-measured'
  | 'supply-live'
  | 'output-not-measured'
  | 'output-live'
  | 'bus-not-measured'
  | 'bus-not-discharged'
  | 'not-done'
  | 'power-not-allowed'
  | 'undecided'
  | 'part-open';

interface StepDefinition<Id extends StepId> {
  /** Hands go near conductors: only locked out, waited, and with the bus measured. */
  touches: boolean;
  /** `power`: the drive is switched on. `enable`: the axis is enabled too, so its brake opens. */
  energy: 'none' | 'power' | 'enable';
  /** Earlier answers that this one rests on; changed later, this one must be confirmed. */
  restsOn: readonly StepId[];
  /** Undefined where the answer lets the visit go on. */
  problem: (answer: Answers[Id], visit: VisitAnswers) => Problem | undefined;
  /** `visit`: the answers on the way so far. `record`: all that was ever answered; what it holds against power counts. */
  next: (visit: VisitAnswers, record: VisitAnswers) => PlainStepId | 'decide';
}

/** The steps that the walk puts before others by itself. */
export type InsertedStepId = BusProofId | 'support-axis' | 'support-again' | 'connect-pe';

/** The steps that name what follows them. */
export type PlainStepId = Exclude<StepId, InsertedStepId>;

type Definitions = { [Id in PlainStepId]: StepDefinition<Id> };

export const done = ({ done: isDone }: { done: boolean }): Problem | undefined => (isDone ? undefined : 'not-done');

const retried = ({ powerAllowed, result }: RetryAnswer): Problem | undefined =>
  !powerAllowed && result !== 'not-done' ? 'power-not-allowed' : undefined;

interface Measured {
  assessment: { verdict: string; findings: readonly { severity: string }[] };
  leftOpen: boolean;
}

/** A charged bus is never left open: the lockout that the visit rests on does not hold. */
const measured = ({ assessment, leftOpen }: Measured): Problem | undefined => {
  if (assessment.findings.some(({ severity }) => severity === 'stop')) return 'bus-not-discharged';
  return assessment.verdict === 'undecided' && !leftOpen ? 'undecided' : undefined;
};

/** A bad motor never excuses skipping the cable, nor the other way round: both parts need their proof. */
const bothPartsKnown = (answer: Answers['isolation'], visit: VisitAnswers): Problem | undefined => {
  const open = isolationLeavesOpen(visit, 'cable') || isolationLeavesOpen(visit, 'motor');
  if (!open || answer.leftOpen) return measured(answer);
  // A verdict on one part stands: it is the other one that is asked for.
  return answer.assessment.verdict === 'undecided' ? 'undecided' : 'part-open';
};

/**
 * The steps of a visit and what follows each. Lockout and axis support are not named here: the walk puts them before
 * every step that needs them, so that no path can leave them out.
 */
export const definitions: Definitions = {
  'find-drive': {
    touches: false,
    energy: 'none',
    restsOn: [],
    // A drive can only name an axis that it has.
    problem: ({ observation, axesOnDrive, indicatedAxis }) => {
      if (indicatedAxis === undefined) return observation === 'looked' ? 'indication-contradicts' : undefined;
      return indicatedAxis >= 1 && indicatedAxis <= axesOnDrive ? undefined : 'indication-contradicts';
    },
    next: () => 'symptom',
  },
  symptom: { touches: false, energy: 'none', restsOn: [], problem: () => undefined, next: () => 'inspect' },
  inspect: {
    touches: true,
    energy: 'none',
    restsOn: [],
    problem: ({ reseated }) => (reseated === 'no' ? 'not-done' : undefined),
    next: (visit, record) => {
      const when = visit.symptom?.answer.when;
      // Mechanics that were found bad stay on the way, whatever the symptom is corrected to.
      if (hindered(record) || (when !== 'control-off' && when !== 'on-enable')) return 'mechanics';
      return when === 'control-off' ? feedbackFirst(visit, record) : 'disconnect-leads';
    },
  },
  'unplug-feedback': { touches: true, energy: 'none', restsOn: [], problem: done, next: () => 'retry-feedback-off' },
  'retry-feedback-off': {
    touches: false,
    energy: 'power',
    restsOn: ['unplug-feedback'],
    problem: retried,
    next: (visit) => (feedbackGone(visit) ? 'unplug-device-end' : leadsOffThen('bridge', visit)),
  },
  'unplug-device-end': {
    touches: true,
    energy: 'none',
    restsOn: ['retry-feedback-off'],
    problem: done,
    next: () => 'retry-device-end',
  },
  'retry-device-end': {
    touches: false,
    energy: 'power',
    restsOn: ['unplug-device-end'],
    problem: retried,
    // The feedback explains the trip, but not a motor or cable that looks damaged.
    next: (visit, record) => (motorSideSpeaksAgainst(record) ? leadsOffThen('bridge', visit) : conclude(visit, record)),
  },
  'plug-feedback': {
    touches: true,
    energy: 'none',
    restsOn: ['retry-device-end'],
    problem: done,
    next: () => 'retry-feedback-on',
  },
  'retry-feedback-on': {
    touches: false,
    energy: 'power',
    restsOn: ['plug-feedback'],
    problem: retried,
    next: () => 'decide',
  },
  mechanics: {
    touches: true,
    energy: 'none',
    restsOn: [],
    problem: () => undefined,
    next: (visit, record) =>
      visit.symptom?.answer.when === 'control-off' ? feedbackFirst(visit, record) : 'disconnect-leads',
  },
  'disconnect-leads': {
    touches: true,
    energy: 'none',
    restsOn: [],
    problem: done,
    next: (visit) => {
      const when = visit.symptom?.answer.when;
      if (!mayBePowered(visit)) return 'bridge';
      if (when === 'control-off' && visit['retry-feedback-off'] === undefined) return 'unplug-feedback';
      return when === 'on-enable' ? 'retry-leads-off' : 'bridge';
    },
  },
  'retry-leads-off': {
    touches: false,
    energy: 'enable',
    restsOn: ['disconnect-leads'],
    problem: retried,
    next: () => 'bridge',
  },
  bridge: { touches: true, energy: 'none', restsOn: ['disconnect-leads'], problem: measured, next: () => 'insulation' },
  insulation: {
    touches: true,
    energy: 'none',
    restsOn: ['disconnect-leads'],
    problem: measured,
    next: (visit, record) =>
      suspectedAnyway(visit) || !insulationSettled(visit) || isolationFailed(record) ? 'isolation' : 'winding',
  },
  isolation: {
    touches: true,
    energy: 'none',
    restsOn: ['insulation'],
    problem: bothPartsKnown,
    // A motor that is proven bad needs no further proof; through a bad cable its winding can't be judged.
    next: (visit, record) => {
      const measured = visit.winding !== undefined;
      if (motorBad(visit) || tripsAsAWhole(visit) || measured) return conclude(visit, record);
      return visit.isolation?.answer.assessment.parts.cable === 'proven-bad' ? 'winding-motor' : 'winding';
    },
  },
  winding: {
    touches: true,
    energy: 'none',
    restsOn: ['disconnect-leads'],
    problem: measured,
    next: (visit, record) => {
      const atMotor = record['winding-motor']?.answer.assessment.verdict ?? 'go';
      const doubted = visit.winding?.answer.assessment.verdict === 'no-go' || atMotor !== 'go';
      return doubted ? 'winding-motor' : afterMeasuring(visit, record);
    },
  },
  'winding-motor': {
    touches: true,
    energy: 'none',
    restsOn: ['winding', 'isolation'],
    problem: measured,
    next: (visit, record) => afterMeasuring(visit, record),
  },
  reconnect: {
    touches: true,
    energy: 'none',
    restsOn: ['bridge', 'insulation', 'isolation', 'winding'],
    problem: done,
    next: () => 'retry-all',
  },
  'retry-all': {
    touches: false,
    energy: 'enable',
    restsOn: ['reconnect'],
    problem: retried,
    // Before the drive is blamed by exclusion, cable and motor are proven alone.
    next: (visit) => (tripsAsAWhole(visit) && visit.isolation === undefined ? 'isolation' : 'decide'),
  },
};
