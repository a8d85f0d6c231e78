import type { VisitAnswers } from '../steps/questions.ts';
import type { PowerStepId } from '../steps/retry.ts';
import type { PlainStepId } from '../steps/rule.ts';
import { brakingBad } from './braking.ts';
import { changeMatters } from './change.ts';
import { isolationConvicts, isolationSuspects } from './convictions.ts';
import {
  damageOpen,
  feedbackGone,
  goneWithoutDevice,
  insulationSettled,
  isolationLeavesOpen,
  mayBePowered,
  pointsAtCableOrMotor,
  tripsAsAWhole,
} from './evidence.ts';
import { idleCoresKnown } from './idle-cores.ts';
import { inputOpen, inputSpeaksAgainst, protectionOpened, wantsInput } from './input-circuit.ts';
import { bendTestBad, hindered, mayEnable, motorSideSpeaksAgainst } from './power.ts';
import { provenBad } from './proofs.ts';
import { recordingSpeaksFor, wantsBending, wantsBraking } from './recording.ts';
import { suspected } from './suspicions.ts';
import { trips } from './tries.ts';

type Next = PlainStepId | 'decide';

/** The next step if power is refused at a step: a measurement without power, or the decision. */
export const withoutPower: Record<PowerStepId, (visit: VisitAnswers, record: VisitAnswers) => Next> = {
  'retry-feedback-off': (visit) => leadsOffThen('bridge', visit),
  'retry-device-end': (visit, record) =>
    motorSideSpeaksAgainst(record) ||
    !mayBePowered(record) ||
    inputSpeaksAgainst(record) ||
    record.bridge?.answer.assessment.verdict === 'no-go'
      ? leadsOffThen('bridge', visit)
      : 'decide',
  'retry-feedback-on': () => 'decide',
  'retry-leads-off': (visit, record) => measureAfter('retry-leads-off', visit, record),
  'retry-stripped': (visit, record) => measureAfter('strip-drive', visit, record),
  'retry-all': (visit, record) => lastLook(visit, record),
};

/**
 * If motor or cable speak against power, their leads are taken off before the drive is switched on. After fuses or a breaker
 * opened, nothing is switched on before everything was measured dead.
 */
export function feedbackFirst(visit: VisitAnswers, record: VisitAnswers): PlainStepId {
  const mayTry = mayBePowered(visit) && !protectionOpened(visit) && !motorSideSpeaksAgainst(record);
  return mayTry ? 'unplug-feedback' : 'disconnect-leads';
}

/** What was changed before the first trip is compared first, before anything is measured or blamed. */
export function afterInspecting(visit: VisitAnswers, record: VisitAnswers): PlainStepId {
  return changeMatters(visit) ? 'after-change' : afterComparing(visit, record);
}

export function afterComparing(visit: VisitAnswers, record: VisitAnswers): PlainStepId {
  const controlOff = visit.symptom?.answer.when === 'control-off';
  return controlOff && !wantsHandTest(visit, record) ? feedbackFirst(visit, record) : 'disconnect-leads';
}

/** The leads are taken off only once: on some ways they are off already. */
export function leadsOffThen(id: PlainStepId, visit: VisitAnswers): PlainStepId {
  return visit['disconnect-leads'] === undefined ? 'disconnect-leads' : id;
}

/** Bad mechanics stay on the way even if the symptom is corrected. */
export function wantsHandTest(visit: VisitAnswers, record: VisitAnswers): boolean {
  const when = visit.symptom?.answer.when;
  if (hindered(record)) return true;
  return when !== 'control-off' && (when !== 'on-enable' || recordingSpeaksFor(visit, 'mechanics'));
}

/** With the leads off, and the axis moved by hand if it was to be. */
export function afterHandTest(visit: VisitAnswers, record: VisitAnswers): Next {
  const feedback = visit.symptom?.answer.when === 'control-off' && visit['retry-feedback-off'] === undefined;
  return feedback && mayBePowered(visit) && !protectionOpened(visit)
    ? 'unplug-feedback'
    : measureAfter(undefined, visit, record);
}

type Measuring =
  | 'bridge'
  | 'input-circuit'
  | 'braking'
  | 'winding'
  | 'winding-motor'
  | 'retry-leads-off'
  | 'strip-drive'
  | 'bend-test'
  | 'idle-cores'
  | 'insulation'
  | 'isolation';

type Wanted = (visit: VisitAnswers, record: VisitAnswers) => boolean;

const always: Wanted = () => true;

/**
 * What is done with the leads off, in order, each with the condition under which it is wanted. The quick measurements come
 * first; nothing is enabled before output stage and winding passed; the insulation comes last, since PE is off from there.
 */
const order: readonly [Measuring, Wanted][] = [
  ['bridge', always],
  ['input-circuit', wantsInput],
  ['braking', (visit, record) => wantsBraking(visit) || brakingBad(record)],
  // In a record of the older order a motor that is bad by its insulation was not measured further.
  ['winding', (_, record) => record.winding !== undefined || !motorKnownBad(record)],
  ['winding-motor', windingDoubted],
  [
    'retry-leads-off',
    (visit, record) => onEnable(visit) && (mayEnable(visit) || record['retry-leads-off'] !== undefined),
  ],
  ['strip-drive', tripsUnexplained],
  ['bend-test', (visit, record) => wantsBending(visit) || bendTestBad(record)],
  // A record of the older order has the insulation without it; then it is asked for before anything is connected.
  ['idle-cores', (_, record) => record['idle-cores'] !== undefined || record.insulation === undefined],
  ['insulation', always],
  ['isolation', (visit, record) => pointsAtCableOrMotor(visit) || !insulationSettled(visit) || isolationFailed(record)],
];

/** The next of the steps that are done with the leads off; after the last one, whether the axis may be tried. */
export function measureAfter(id: Measuring | undefined, visit: VisitAnswers, record: VisitAnswers): Next {
  const steps = orderOf(record);
  const after = steps.slice(steps.findIndex(([step]) => step === id) + 1);
  return after.find(([, wanted]) => wanted(visit, record))?.[0] ?? afterMeasuring(visit, record);
}

/** In a record of the older order the enable without motor came before every measurement. */
function orderOf(record: VisitAnswers): typeof order {
  if (record['retry-leads-off'] === undefined || record.winding !== undefined) return order;
  return [['retry-leads-off', onEnable], ...order.filter(([step]) => step !== 'retry-leads-off')];
}

function onEnable(visit: VisitAnswers): boolean {
  return visit.symptom?.answer.when === 'on-enable';
}

function motorKnownBad(record: VisitAnswers): boolean {
  return isolationConvicts(record, 'motor') || isolationSuspects(record, 'motor');
}

function windingDoubted(visit: VisitAnswers, record: VisitAnswers): boolean {
  const atMotor = record['winding-motor']?.answer.assessment.verdict ?? 'go';
  return visit.winding?.answer.assessment.verdict === 'no-go' || atMotor !== 'go';
}

/** It trips without what the moment points at, so everything else that is connected comes off too. */
function tripsUnexplained(visit: VisitAnswers): boolean {
  const when = visit.symptom?.answer.when;
  if (when === 'control-off') return trips(visit, 'retry-feedback-off');
  return onEnable(visit) && trips(visit, 'retry-leads-off');
}

/** Measured on an earlier way and not passed. One measured after a trip of the whole axis is asked for after that trip. */
function isolationFailed(record: VisitAnswers): boolean {
  const { isolation } = record;
  const afterTrip = tripsAsAWhole(record) && (record['retry-all']?.seq ?? 0) < (isolation?.seq ?? 0);
  return isolation !== undefined && isolation.answer.assessment.verdict !== 'go' && !afterTrip;
}

/** Everything is connected and powered again only if every measurement passed and nothing speaks against it. */
export function afterMeasuring(visit: VisitAnswers, record: VisitAnswers): Next {
  const passed = (['bridge', 'insulation', 'winding'] as const).every(
    (id) => visit[id]?.answer.assessment.verdict === 'go',
  );
  const isolation = visit.isolation?.answer.assessment.verdict ?? 'go';
  const separated = !isolationLeavesOpen(visit, 'cable') && !isolationLeavesOpen(visit, 'motor');
  const suspect = provenBad(visit).length > 0 || suspected(visit).length > 0;
  const input = inputOpen(visit) || inputSpeaksAgainst(visit);
  const faulty = suspect || input || feedbackGone(visit) || damageOpen(visit) || hindered(visit);
  if (!passed || isolation !== 'go' || !separated || faulty) return lastLook(visit, record);
  if (idleCoresKnown(visit)) return 'reconnect';
  if (visit['idle-cores'] !== undefined) return lastLook(visit, record);
  return record['retry-all'] === undefined ? 'idle-cores' : 'reconnect';
}

/** An isolation that was measured on another way and did not pass is asked for before the decision. */
function lastLook(visit: VisitAnswers, record: VisitAnswers): Next {
  const isolation = record.isolation?.answer.assessment.verdict ?? 'go';
  return isolation !== 'go' && visit.isolation === undefined ? 'isolation' : conclude(visit, record);
}

/**
 * The last question: a trip that went away without the device must come back with it. It is not asked once the insulation
 * was tested: then the PE core is off the drive, nothing is switched on, and the device stays open.
 */
export function conclude(visit: VisitAnswers, record: VisitAnswers): Next {
  return goneWithoutDevice(visit) && record.insulation === undefined ? 'plug-feedback' : 'decide';
}
