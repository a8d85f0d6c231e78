import { judgeDischarge } from '../calc/index.ts';
import type { Answers, LockoutId, RetryAnswer, StepId, VisitAnswers } from './answers.ts';
import {
  damageOpen,
  feedbackGone,
  goneWithoutDevice,
  insulationSettled,
  isolationLeavesOpen,
  looksDamaged,
  mayBePowered,
  motorBad,
  provenBad,
  suspectedAnyway,
  tripsAsAWhole,
} from './evidence.ts';

/** Why an answer does not let the visit go on. */
export type Problem =
  | 'indication-contradicts'
  | 'not-locked-out'
  | 'not-waited'
  | 'meter-not-proved'
  | 'bus-not-measured'
  | 'bus-not-discharged'
  | 'not-done'
  | 'power-not-allowed'
  | 'undecided';

interface StepDefinition<Id extends StepId> {
  /** Hands go near conductors: only locked out, waited, and with the bus measured. */
  touches: boolean;
  /** `power`: the drive is switched on. `enable`: the axis is enabled too, so its brake opens. */
  energy: 'none' | 'power' | 'enable';
  /** Earlier answers that this one rests on; changed later, this one must be confirmed. */
  restsOn: readonly StepId[];
  /** Undefined where the answer lets the visit go on. */
  problem: (answer: Answers[Id], visit: VisitAnswers) => Problem | undefined;
  next: (visit: VisitAnswers) => PlainStepId | 'decide';
}

/** The steps that name what follows them; lockout and support are put in between by the walk. */
export type PlainStepId = Exclude<StepId, LockoutId | 'support-axis'>;

type Definitions = { [Id in PlainStepId]: StepDefinition<Id> };

const done = ({ done: isDone }: { done: boolean }): Problem | undefined => (isDone ? undefined : 'not-done');

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
  return open && !answer.leftOpen ? 'undecided' : measured(answer);
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
    next: (visit) => {
      const when = visit.symptom?.answer.when;
      // A motor or cable that looks damaged is off the drive before the drive is switched on.
      if (when === 'control-off' && mayBePowered(visit) && !looksDamaged(visit)) return 'unplug-feedback';
      return when === 'control-off' || when === 'on-enable' ? 'disconnect-leads' : 'mechanics';
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
    next: (visit) => (looksDamaged(visit) ? leadsOffThen('bridge', visit) : conclude(visit)),
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
  mechanics: { touches: true, energy: 'none', restsOn: [], problem: () => undefined, next: () => 'disconnect-leads' },
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
    next: (visit) => (suspectedAnyway(visit) || !insulationSettled(visit) ? 'isolation' : 'winding'),
  },
  isolation: {
    touches: true,
    energy: 'none',
    restsOn: ['insulation'],
    problem: bothPartsKnown,
    // A motor that is proven bad needs no further proof; through a bad cable its winding can't be judged.
    next: (visit) => {
      if (motorBad(visit) || tripsAsAWhole(visit)) return conclude(visit);
      return visit.isolation?.answer.assessment.parts.cable === 'proven-bad' ? 'winding-motor' : 'winding';
    },
  },
  winding: {
    touches: true,
    energy: 'none',
    restsOn: ['disconnect-leads'],
    problem: measured,
    next: (visit) => (visit.winding?.answer.assessment.verdict === 'no-go' ? 'winding-motor' : afterMeasuring(visit)),
  },
  'winding-motor': {
    touches: true,
    energy: 'none',
    restsOn: ['winding', 'isolation'],
    problem: measured,
    next: (visit) => afterMeasuring(visit),
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

/** The leads come off once: on some ways they are off already. */
function leadsOffThen(id: PlainStepId, visit: VisitAnswers): PlainStepId {
  return visit['disconnect-leads'] === undefined ? 'disconnect-leads' : id;
}

/** Everything is put together and powered again only if every measurement passed and nothing speaks against it. */
function afterMeasuring(visit: VisitAnswers): PlainStepId | 'decide' {
  const passed = (['bridge', 'insulation', 'winding'] as const).every(
    (id) => visit[id]?.answer.assessment.verdict === 'go',
  );
  const isolation = visit.isolation?.answer.assessment.verdict ?? 'go';
  const separated = !isolationLeavesOpen(visit, 'cable') && !isolationLeavesOpen(visit, 'motor');
  const faulty = provenBad(visit).length > 0 || feedbackGone(visit) || damageOpen(visit) || hindered(visit);
  return passed && isolation === 'go' && separated && !faulty ? 'reconnect' : conclude(visit);
}

/**
 * Last of all: a trip that went away without the device must come back with it. Not once the insulation was tested:
 * then the PE core is off the drive, and nothing is switched on; the device stays open.
 */
function conclude(visit: VisitAnswers): PlainStepId | 'decide' {
  return goneWithoutDevice(visit) && visit.insulation === undefined ? 'plug-feedback' : 'decide';
}

/** A stiff axis is mended before it is tried: a trip of it would tell nothing. */
function hindered(visit: VisitAnswers): boolean {
  const mechanics = visit.mechanics?.answer.found;
  return mechanics === 'stiff' || mechanics === 'brake-drags';
}

export const lockoutRule = {
  problem: (answer: Answers['lockout-1']): Problem | undefined => {
    if (!answer.lockedOut) return 'not-locked-out';
    if (!answer.waited) return 'not-waited';
    if (!answer.meterProved) return 'meter-not-proved';
    const { code } = judgeDischarge(answer.busVoltage);
    return code === 'bus-not-measured' || code === 'bus-not-discharged' ? code : undefined;
  },
};

export const supportRule = { problem: done };
