import type { Part } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { brakingState } from './braking.ts';
import { bridgeConvicts, isolationSuspects, windingConvicts } from './convictions.ts';
import { cableOrJoint, feedbackCableRuined, feedbackGone, goneWithoutDevice, peSpeaksAgainst } from './evidence.ts';
import { idleCoreLow } from './idle-cores.ts';
import { inputSuspects } from './input-circuit.ts';
import { provenBad } from './proofs.ts';
import { trips } from './tries.ts';

/** What speaks against a part and does not prove it. Each has one sentence with what would prove it. */
export type Suspicion =
  | 'drive-burnt'
  | 'bridge-not-confirmed'
  | 'input-not-confirmed'
  | 'trips-without-feedback'
  | 'trips-without-motor'
  | 'trips-stripped'
  | 'braking-switch-low'
  | 'isolation-suspect'
  | 'winding-not-confirmed'
  | 'cable-or-joint'
  | 'bent-once'
  | 'idle-core-low'
  | 'gone-without-feedback'
  | 'follows-feedback-cable'
  | 'gone-without-device'
  | 'feedback-cable-damaged'
  | 'pe-read-once'
  | 'braking-resistor-read-once';

export interface PartSuspicion {
  part: Part;
  reasons: Suspicion[];
}

const rules: readonly [Part, Suspicion, (visit: VisitAnswers) => boolean][] = [
  ['drive', 'drive-burnt', (visit) => visit.inspect?.answer.seen.drive === 'burnt'],
  ['drive', 'bridge-not-confirmed', (visit) => verdictOf(visit, 'bridge') === 'no-go' && !bridgeConvicts(visit)],
  ['drive', 'input-not-confirmed', inputSuspects],
  ['drive', 'trips-without-feedback', (visit) => trips(visit, 'retry-feedback-off')],
  ['drive', 'trips-without-motor', (visit) => trips(visit, 'retry-leads-off')],
  ['drive', 'trips-stripped', (visit) => trips(visit, 'retry-stripped')],
  ['drive', 'braking-switch-low', (visit) => brakingState(visit)?.switch === 'low'],
  ['motor', 'isolation-suspect', (visit) => isolationSuspects(visit, 'motor')],
  [
    'motor',
    'winding-not-confirmed',
    (visit) => verdictOf(visit, 'winding-motor') === 'no-go' && !windingConvicts(visit),
  ],
  ['motor', 'idle-core-low', idleCoreLow],
  ['motor-cable', 'isolation-suspect', (visit) => isolationSuspects(visit, 'cable')],
  ['motor-cable', 'cable-or-joint', cableOrJoint],
  ['motor-cable', 'idle-core-low', idleCoreLow],
  ['motor-cable', 'bent-once', (visit) => bent(visit) && visit['bend-test']?.answer.core !== 'feedback'],
  ['feedback-cable', 'bent-once', (visit) => bent(visit) && visit['bend-test']?.answer.core === 'feedback'],
  ['feedback-cable', 'feedback-cable-damaged', feedbackCableRuined],
  ['feedback-cable', 'gone-without-feedback', (visit) => feedbackGone(visit) && !goneWithoutDevice(visit)],
  ['feedback-cable', 'follows-feedback-cable', (visit) => feedbackGone(visit) && trips(visit, 'retry-device-end')],
  ['feedback-device', 'gone-without-feedback', (visit) => feedbackGone(visit) && !trips(visit, 'retry-device-end')],
  ['feedback-device', 'gone-without-device', goneWithoutDevice],
  ['protective-conductor', 'pe-read-once', peSpeaksAgainst],
  ['braking-resistor', 'braking-resistor-read-once', (visit) => brakingState(visit)?.resistor === 'bad'],
];

/** Every part that something speaks against and nothing proves bad, with the reasons. */
export function suspected(visit: VisitAnswers): PartSuspicion[] {
  const proven = new Set(provenBad(visit).map(({ part }) => part));
  const found = new Map<Part, Suspicion[]>();
  for (const [part, reason, holds] of rules) {
    if (proven.has(part) || !holds(visit)) continue;
    if (part === 'feedback-device' && deviceCleared(visit)) continue;
    found.set(part, [...(found.get(part) ?? []), reason]);
  }
  return [...found].map(([part, reasons]) => ({ part, reasons }));
}

/** The trip did not come back with everything plugged in, so a contact was it or the cause has passed; or the cable is bad. */
function deviceCleared(visit: VisitAnswers): boolean {
  const contact = goneWithoutDevice(visit) && visit['retry-feedback-on']?.answer.result === 'no-trip';
  return contact || provenBad(visit).some(({ part }) => part === 'feedback-cable');
}

function verdictOf(visit: VisitAnswers, id: 'bridge' | 'winding-motor'): string | undefined {
  return visit[id]?.answer.assessment.verdict;
}

function bent(visit: VisitAnswers): boolean {
  const result = visit['bend-test']?.answer.result;
  return result === 'opens' || result === 'leaks';
}
