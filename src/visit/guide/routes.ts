import type { VisitAnswers } from '../steps/questions.ts';
import type { PlainStepId } from '../steps/rule.ts';
import {
  damageOpen,
  feedbackGone,
  goneWithoutDevice,
  isolationLeavesOpen,
  mayBePowered,
  provenBad,
  tripsAsAWhole,
} from './evidence.ts';
import { hindered, motorSideSpeaksAgainst, type PowerStepId } from './power.ts';

/** The next step if power is refused at a step: a measurement without power, or the decision. */
export const withoutPower: Record<PowerStepId, (visit: VisitAnswers, record: VisitAnswers) => PlainStepId | 'decide'> =
  {
    'retry-feedback-off': (visit) => leadsOffThen('bridge', visit),
    'retry-device-end': (visit, record) =>
      motorSideSpeaksAgainst(record) || !mayBePowered(record) || record.bridge?.answer.assessment.verdict === 'no-go'
        ? leadsOffThen('bridge', visit)
        : 'decide',
    'retry-feedback-on': () => 'decide',
    'retry-leads-off': () => 'bridge',
    'retry-all': (visit, record) => lastLook(visit, record),
  };

/** If motor or cable speak against power, their leads are taken off before the drive is switched on. */
export function feedbackFirst(visit: VisitAnswers, record: VisitAnswers): PlainStepId {
  return mayBePowered(visit) && !motorSideSpeaksAgainst(record) ? 'unplug-feedback' : 'disconnect-leads';
}

/** The leads are taken off only once: on some ways they are off already. */
export function leadsOffThen(id: PlainStepId, visit: VisitAnswers): PlainStepId {
  return visit['disconnect-leads'] === undefined ? 'disconnect-leads' : id;
}

/** Measured on an earlier way and not passed. One measured after a trip of the whole axis is asked for after that trip. */
export function isolationFailed(record: VisitAnswers): boolean {
  const { isolation } = record;
  const afterTrip = tripsAsAWhole(record) && (record['retry-all']?.seq ?? 0) < (isolation?.seq ?? 0);
  return isolation !== undefined && isolation.answer.assessment.verdict !== 'go' && !afterTrip;
}

/** Everything is connected and powered again only if every measurement passed and nothing speaks against it. */
export function afterMeasuring(visit: VisitAnswers, record: VisitAnswers): PlainStepId | 'decide' {
  const passed = (['bridge', 'insulation', 'winding'] as const).every(
    (id) => visit[id]?.answer.assessment.verdict === 'go',
  );
  const isolation = visit.isolation?.answer.assessment.verdict ?? 'go';
  const separated = !isolationLeavesOpen(visit, 'cable') && !isolationLeavesOpen(visit, 'motor');
  const faulty = provenBad(visit).length > 0 || feedbackGone(visit) || damageOpen(visit) || hindered(visit);
  return passed && isolation === 'go' && separated && !faulty ? 'reconnect' : lastLook(visit, record);
}

/** An isolation that was measured on another way and did not pass is asked for before the decision. */
function lastLook(visit: VisitAnswers, record: VisitAnswers): PlainStepId | 'decide' {
  const isolation = record.isolation?.answer.assessment.verdict ?? 'go';
  return isolation !== 'go' && visit.isolation === undefined ? 'isolation' : conclude(visit, record);
}

/**
 * The last question: a trip that went away without the device must come back with it. It is not asked once the insulation
 * was tested: then the PE core is off the drive, nothing is switched on, and the device stays open.
 */
export function conclude(visit: VisitAnswers, record: VisitAnswers): PlainStepId | 'decide' {
  return goneWithoutDevice(visit) && record.insulation === undefined ? 'plug-feedback' : 'decide';
}
