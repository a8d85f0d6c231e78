import { limitValue } from '../../kernel/limits.ts';
import type { InspectedPart, Part } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { brakingState } from './braking.ts';
import { atRest, bentSteady } from './causes.ts';
import { changeWrong } from './change.ts';
import { isolationSuspects } from './convictions.ts';
import {
  damageOpen,
  feedbackGone,
  goneWithoutDevice,
  insulationSettled,
  isolationClears,
  isolationLeavesOpen,
  mayBe,
  measuredHot,
  notLookedAt,
  seenDamaged,
} from './evidence.ts';
import { idleCoreLow, idleCoresKnown } from './idle-cores.ts';
import { fusesOpen, inputOpen } from './input-circuit.ts';
import { bendTestBad } from './power.ts';
import { wantsBending, wantsBraking } from './recording.ts';
import { staysAway, trips } from './tries.ts';

/** What is still open. */
export type OpenItem =
  | 'feedback-cable-or-device'
  | 'feedback-device-open'
  | 'feedback-contact'
  | 'damage-open'
  | 'motor-damaged'
  | 'cable-damaged'
  | 'not-looked-at'
  | 'change-open'
  | 'change-wrong'
  | 'feedback-device-untested'
  | 'left-evidence'
  | 'retry-not-done'
  | 'another-message'
  | 'not-all-taken-off'
  | 'something-taken-off'
  | 'bridge-open'
  | 'input-open'
  | 'fuses-open'
  | 'braking-open'
  | 'bend-test-open'
  | 'idle-cores-open'
  | 'insulation-open'
  | 'cable-open'
  | 'motor-open'
  | 'winding-open'
  | 'measure-hot'
  | 'mechanics'
  | 'axis-held'
  | 'mechanics-not-checked'
  | 'watch';

const undecided = (answer: { assessment: { verdict: string } } | undefined) =>
  answer?.assessment.verdict === 'undecided';

export function openItems(visit: VisitAnswers): OpenItem[] {
  const joinedFails = visit.insulation !== undefined && !insulationSettled(visit);
  const found = visit.mechanics?.answer.found;
  const measured = visit.bridge !== undefined;
  const items: [OpenItem, boolean][] = [
    ...feedbackItems(visit),
    ['damage-open', damageOpen(visit)],
    ['motor-damaged', seenDamaged(visit, 'motor')],
    ['cable-damaged', seenDamaged(visit, 'motorCable')],
    ['not-looked-at', notLookedAt(visit).length > 0],
    ['change-open', visit['after-change']?.answer.found === 'not-compared'],
    ['change-wrong', changeWrong(visit)],
    ['retry-not-done', anyRetry(visit, 'not-done')],
    ['another-message', anyRetry(visit, 'other-message')],
    ...strippedItems(visit),
    ['bridge-open', undecided(visit.bridge?.answer)],
    ['input-open', inputOpen(visit)],
    ['fuses-open', fusesOpen(visit)],
    ['braking-open', wantsBraking(visit) && measured && brakingUnclear(visit)],
    ['bend-test-open', wantsBending(visit) && measured && bendsUnclear(visit)],
    ['idle-cores-open', visit.insulation !== undefined && !idleCoresKnown(visit) && !idleCoreLow(visit)],
    ['insulation-open', joinedFails || undecided(visit.isolation?.answer)],
    ['cable-open', isolationLeavesOpen(visit, 'cable')],
    ['motor-open', isolationLeavesOpen(visit, 'motor')],
    ['winding-open', undecided(visit.winding?.answer) || undecided(visit['winding-motor']?.answer)],
    ['measure-hot', mayBe(visit, 'when-hot') && measured && !measuredHot(visit, limitValue('hot-winding'))],
    ['mechanics', found === 'stiff' || found === 'brake-drags'],
    ['axis-held', found === 'held'],
    ['mechanics-not-checked', found === 'not-checked'],
    ['watch', notOftenEnough(visit)],
  ];
  return items.filter(([, holds]) => holds).map(([item]) => item);
}

function feedbackItems(visit: VisitAnswers): [OpenItem, boolean][] {
  const atDeviceEnd = visit['retry-device-end']?.answer.result ?? 'not-done';
  const untried = feedbackGone(visit) && (atDeviceEnd === 'not-done' || atDeviceEnd === 'other-message');
  const damaged = seenDamaged(visit, 'feedbackCable');
  const back = goneWithoutDevice(visit) ? (visit['retry-feedback-on']?.answer.result ?? 'not-done') : undefined;
  return [
    ['feedback-device-untested', untried && damaged],
    ['feedback-cable-or-device', untried && !damaged],
    ['feedback-contact', back === 'no-trip'],
    ['feedback-device-open', back === 'not-done' || back === 'other-message'],
  ];
}

const retries = [
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-stripped',
  'retry-all',
] as const;

function anyRetry(visit: VisitAnswers, result: 'not-done' | 'other-message'): boolean {
  return retries.some((id) => visit[id]?.answer.result === result);
}

/** It trips without feedback or without motor, and whether the drive does it alone is not known, or it does not. */
function strippedItems(visit: VisitAnswers): [OpenItem, boolean][] {
  const unexplained = trips(visit, 'retry-feedback-off') || trips(visit, 'retry-leads-off');
  const result = visit['retry-stripped']?.answer.result;
  const allOff = visit['strip-drive']?.answer.state === 'all-off';
  return [
    ['not-all-taken-off', unexplained && (!allOff || (result !== 'trips' && result !== 'no-trip'))],
    ['something-taken-off', unexplained && result === 'no-trip'],
  ];
}

/** A core of the motor cable opens or leaks; a core of the other cable says nothing of this one. */
function motorCableBendsBad(visit: VisitAnswers): boolean {
  return bendTestBad(visit) && visit['bend-test']?.answer.core !== 'feedback';
}

function bendsUnclear(visit: VisitAnswers): boolean {
  return !bentSteady(visit) && !motorCableBendsBad(visit);
}

function brakingUnclear(visit: VisitAnswers): boolean {
  const state = brakingState(visit);
  return (
    state === undefined || state.resistor === 'unclear' || (state.resistor === 'good' && state.switch === 'unclear')
  );
}

/** It did not come in the last trial, but was not tried often enough, or not as it trips, to say that it is gone. */
function notOftenEnough(visit: VisitAnswers): boolean {
  if (visit['retry-all']?.answer.result !== 'no-trip') return false;
  const asItTrips = atRest(visit) || visit['retry-all'].answer.asItTrips === true;
  return mayBe(visit, 'now-and-then') || !asItTrips || !staysAway(visit, 'retry-all');
}

const partOf: Record<InspectedPart, Part> = {
  ...{ drive: 'drive', motor: 'motor', motorCable: 'motor-cable', feedbackCable: 'feedback-cable' },
};

/** A part that is replaced needs no further test; a retry that was not done matters only while nothing is proven. */
export function explained(item: OpenItem, replaced: readonly Part[], visit: VisitAnswers): boolean {
  const has = (part: Part) => replaced.includes(part);
  switch (item) {
    case 'retry-not-done':
    case 'another-message':
      return replaced.length > 0;
    case 'not-all-taken-off':
    case 'something-taken-off':
    case 'bridge-open':
    case 'input-open':
      return has('drive') || (item === 'something-taken-off' && has('braking-resistor'));
    case 'braking-open':
      return has('braking-resistor');
    case 'cable-open':
    case 'cable-damaged':
    case 'bend-test-open':
      return has('motor-cable');
    case 'motor-open':
    case 'motor-damaged':
    case 'measure-hot':
      return has('motor');
    case 'not-looked-at':
      return notLookedAt(visit).every((part) => has(partOf[part]));
    case 'winding-open':
      // Bad through the cable and not known at the motor: a core of the cable may be open too.
      return has('motor') && (visit.winding?.answer.assessment.verdict !== 'no-go' || has('motor-cable'));
    case 'insulation-open':
      return insulationExplained(has, visit);
    case 'feedback-cable-or-device':
    case 'feedback-device-open':
    case 'feedback-contact':
      return has('feedback-cable') || has('feedback-device');
    default:
      return false;
  }
}

/** A joined reading that did not pass is explained if one of its parts is bad or suspect and the others are settled. */
function insulationExplained(has: (part: Part) => boolean, visit: VisitAnswers): boolean {
  const suspect = (part: 'cable' | 'motor') => isolationSuspects(visit, part);
  const cable = has('motor-cable') || suspect('cable');
  const motor = has('motor') || suspect('motor');
  const settled = (cable || isolationClears(visit, 'cable')) && (motor || isolationClears(visit, 'motor'));
  return settled && (cable || motor || has('protective-conductor'));
}
