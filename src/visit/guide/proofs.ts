import type { Part } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { brakingState } from './braking.ts';
import { bridgeConvicts, isolationConvicts, jointExcluded, windingConvicts } from './convictions.ts';
import { cableOrJoint, feedbackCableRuined, goneWithoutDevice, peBroken } from './evidence.ts';
import { inputConvicts } from './input-circuit.ts';
import { staysAway, tripsEveryTime } from './tries.ts';

/** What proves a part bad: at least two readings against it that do not rest on each other. */
export type Proof =
  | 'trips-with-all-off'
  | 'bridge-bad'
  | 'input-shorted'
  | 'drive-burnt'
  | 'isolation-bad'
  | 'winding-bad-at-motor'
  | 'winding-good-without-cable'
  | 'opens-when-bent'
  | 'pe-broken'
  | 'trip-follows-feedback-cable'
  | 'trip-gone-without-device'
  | 'feedback-cable-damaged'
  | 'braking-resistor-bad';

/** Each proof with its part, and when it holds. */
const rules: readonly [Part, Proof, (visit: VisitAnswers) => boolean][] = [
  // Seen burnt, and its readings fail.
  ['drive', 'drive-burnt', (visit) => seen(visit).drive === 'burnt' && verdictOf(visit, 'bridge') === 'no-go'],
  ['drive', 'trips-with-all-off', tripsWithAllOff],
  ['drive', 'bridge-bad', bridgeConvicts],
  ['drive', 'input-shorted', inputConvicts],
  ['motor', 'isolation-bad', (visit) => isolationConvicts(visit, 'motor')],
  ['motor', 'winding-bad-at-motor', windingConvicts],
  ['motor-cable', 'isolation-bad', (visit) => isolationConvicts(visit, 'cable')],
  ['motor-cable', 'winding-good-without-cable', (visit) => cableOrJoint(visit) && jointExcluded(visit)],
  ['motor-cable', 'opens-when-bent', (visit) => bentTwice(visit) && visit['bend-test']?.answer.core !== 'feedback'],
  ['feedback-cable', 'opens-when-bent', (visit) => bentTwice(visit) && visit['bend-test']?.answer.core === 'feedback'],
  ['feedback-cable', 'feedback-cable-damaged', tripGoneWithoutDamaged],
  ['feedback-cable', 'trip-follows-feedback-cable', tripFollowsCable],
  ['feedback-device', 'trip-gone-without-device', tripFollowsDevice],
  ['protective-conductor', 'pe-broken', (visit) => peBroken(visit, 'isolation')],
  ['braking-resistor', 'braking-resistor-bad', brakingResistorBad],
];

const parts: readonly Part[] = [
  'drive',
  'motor',
  'motor-cable',
  'feedback-cable',
  'feedback-device',
  'protective-conductor',
  'braking-resistor',
];

/** Every part that is proven bad, with its proofs. */
export function provenBad(visit: VisitAnswers): { part: Part; proofs: Proof[] }[] {
  return parts
    .map((part) => ({
      part,
      proofs: rules.filter(([of, , holds]) => of === part && holds(visit)).map(([, proof]) => proof),
    }))
    .filter(({ proofs }) => proofs.length > 0);
}

function seen(visit: VisitAnswers) {
  return { ...visit.inspect?.answer.seen };
}

function verdictOf(visit: VisitAnswers, id: 'bridge'): string | undefined {
  return visit[id]?.answer.assessment.verdict;
}

/** Nothing was left on the drive, and the same message came every time at the same stage. */
function tripsWithAllOff(visit: VisitAnswers): boolean {
  return visit['strip-drive']?.answer.state === 'all-off' && tripsEveryTime(visit, 'retry-stripped');
}

function bentTwice(visit: VisitAnswers): boolean {
  const answer = visit['bend-test']?.answer;
  return (answer?.result === 'opens' || answer?.result === 'leaks') && answer.again;
}

/**
 * Seen damaged, and the trip stays away without it; not if it stayed away with the cable plugged and the device off: then
 * the device is the one. Water proves nothing: a wet cable is dried.
 */
function tripGoneWithoutDamaged(visit: VisitAnswers): boolean {
  return feedbackCableRuined(visit) && staysAway(visit, 'retry-feedback-off') && !goneWithoutDevice(visit);
}

function tripFollowsCable(visit: VisitAnswers): boolean {
  return staysAway(visit, 'retry-feedback-off') && tripsEveryTime(visit, 'retry-device-end');
}

/** The trip is gone without the device and back with it. */
function tripFollowsDevice(visit: VisitAnswers): boolean {
  const gone = staysAway(visit, 'retry-feedback-off') && staysAway(visit, 'retry-device-end');
  return gone && tripsEveryTime(visit, 'retry-feedback-on');
}

function brakingResistorBad(visit: VisitAnswers): boolean {
  const state = brakingState(visit);
  return state?.resistor === 'bad' && state.readTwice;
}
