import type { InspectedPart, Part } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';

/** What proves a part bad. Each has one sentence in `words/decision.ts`. */
export type Proof =
  | 'trips-without-feedback'
  | 'trips-without-motor'
  | 'bridge-bad'
  | 'drive-burnt'
  | 'all-passed-still-trips'
  | 'isolation-bad'
  | 'winding-bad-at-motor'
  | 'winding-good-without-cable'
  | 'pe-broken'
  | 'trip-follows-feedback-cable'
  | 'trip-gone-without-device'
  | 'feedback-cable-damaged';

/** A burnt drive is never switched on again, not even for a trial; a wet or chafed one not before that is mended. */
export function mayBePowered(visit: VisitAnswers): boolean {
  return visit.inspect?.answer.seen.drive === 'nothing';
}

/** Damage of drive or feedback cable that proves no part bad but must be dried or mended before the axis is tried. */
export function damageOpen(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen;
  return seen?.drive === 'wet' || seen?.drive === 'chafed' || seen?.feedbackCable === 'wet';
}

/** Whether this part shows damage of any kind. Then it gets no voltage, whatever it measures. */
export function looksBad(visit: VisitAnswers, part: InspectedPart): boolean {
  return (visit.inspect?.answer.seen[part] ?? 'nothing') !== 'nothing';
}

function driveProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (visit.inspect?.answer.seen.drive === 'burnt') proofs.push('drive-burnt');
  if (visit.symptom?.answer.when === 'control-off' && visit['retry-feedback-off']?.answer.result === 'trips') {
    proofs.push('trips-without-feedback');
  }
  if (visit.symptom?.answer.when === 'on-enable' && visit['retry-leads-off']?.answer.result === 'trips') {
    proofs.push('trips-without-motor');
  }
  if (visit.bridge?.answer.assessment.verdict === 'no-go') proofs.push('bridge-bad');
  return proofs;
}

function motorProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (visit.isolation?.answer.assessment.parts.motor === 'proven-bad') proofs.push('isolation-bad');
  if (visit['winding-motor']?.answer.assessment.verdict === 'no-go') proofs.push('winding-bad-at-motor');
  return proofs;
}

export function motorBad(visit: VisitAnswers): boolean {
  return motorProofs(visit).length > 0;
}

function cableProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (visit.isolation?.answer.assessment.parts.cable === 'proven-bad') proofs.push('isolation-bad');
  const through = visit.winding?.answer.assessment.verdict;
  if (through === 'no-go' && visit['winding-motor']?.answer.assessment.verdict === 'go') {
    proofs.push('winding-good-without-cable');
  }
  return proofs;
}

/** The trip goes away with the feedback unplugged: cable or device is bad, and the second retry shows which. */
export function feedbackGone(visit: VisitAnswers): boolean {
  return visit['retry-feedback-off']?.answer.result === 'no-trip';
}

function feedbackCableProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  const seen = visit.inspect?.answer.seen.feedbackCable;
  // Water proves nothing: a wet cable is dried and inspected again.
  if (seen === 'burnt' || seen === 'chafed') proofs.push('feedback-cable-damaged');
  if (feedbackGone(visit) && visit['retry-device-end']?.answer.result === 'trips') {
    proofs.push('trip-follows-feedback-cable');
  }
  return proofs;
}

/** The trip is gone with the device unplugged. That alone proves nothing: unplugging may have cured a contact. */
export function goneWithoutDevice(visit: VisitAnswers): boolean {
  return feedbackGone(visit) && visit['retry-device-end']?.answer.result === 'no-trip';
}

/** The trip is gone without the device and back with it. */
function feedbackDeviceProofs(visit: VisitAnswers): Proof[] {
  const back = goneWithoutDevice(visit) && visit['retry-feedback-on']?.answer.result === 'trips';
  return back ? ['trip-gone-without-device'] : [];
}

/** The later and closer measurement counts: if the isolation finds PE sound, the insulation test had a bad contact. */
export function peProofs(visit: VisitAnswers): Proof[] {
  const separate = visit.isolation?.answer.assessment.parts.protectiveConductor;
  const together = visit.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-not-short') === true;
  return separate === 'proven-bad' || (together && separate !== 'proven-good') ? ['pe-broken'] : [];
}

/** Every part that is proven bad, with its proofs. */
export function provenBad(visit: VisitAnswers): { part: Part; proofs: Proof[] }[] {
  const all: { part: Part; proofs: Proof[] }[] = [
    { part: 'drive', proofs: driveProofs(visit) },
    { part: 'motor', proofs: motorProofs(visit) },
    { part: 'motor-cable', proofs: cableProofs(visit) },
    { part: 'feedback-cable', proofs: feedbackCableProofs(visit) },
    { part: 'feedback-device', proofs: feedbackDeviceProofs(visit) },
    { part: 'protective-conductor', proofs: peProofs(visit) },
  ];
  return all.filter(({ proofs }) => proofs.length > 0);
}

/** Motor or cable looks damaged. */
export function looksDamaged(visit: VisitAnswers): boolean {
  return looksBad(visit, 'motor') || looksBad(visit, 'motorCable');
}

/**
 * The symptom, visible damage, or a trip although everything passed points at cable or motor. Then a good joined reading
 * is not enough: it can't show a leak from core to core.
 */
export function pointsAtCableOrMotor(visit: VisitAnswers): boolean {
  return visit.symptom?.answer.when === 'position-or-cable' || looksDamaged(visit) || tripsAsAWhole(visit);
}

/** Everything passed and is connected again, and it trips with the motor on it. */
export function tripsAsAWhole(visit: VisitAnswers): boolean {
  return visit['retry-all']?.answer.result === 'trips' && visit.symptom?.answer.when !== 'control-off';
}

export function insulationSettled(visit: VisitAnswers): boolean {
  return visit.insulation?.answer.assessment.verdict === 'go';
}

/** Whether the isolation clears this part: by its own readings, or by joined ones if nothing speaks against them. */
export function isolationClears(visit: VisitAnswers, part: 'cable' | 'motor'): boolean {
  const status = visit.isolation?.answer.assessment.parts[part];
  if (status === 'not-suspect') return insulationSettled(visit) && !pointsAtCableOrMotor(visit);
  return status === 'proven-good';
}

/** Neither proven bad nor cleared. */
export function isolationLeavesOpen(visit: VisitAnswers, part: 'cable' | 'motor'): boolean {
  const status = visit.isolation?.answer.assessment.parts[part];
  if (status === 'not-suspect') return pointsAtCableOrMotor(visit);
  return status === 'not-tested' || status === 'undecided';
}
