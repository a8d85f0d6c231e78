import type { VisitAnswers } from './answers.ts';

/** Parts that a visit can prove bad. */
export type Part = 'drive' | 'motor' | 'motor-cable' | 'feedback-cable' | 'feedback-device' | 'protective-conductor';

/** What proves a part bad, or good; each has one sentence in the texts. */
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

/** A burnt drive is not switched on again, not even for a trial. */
export function mayBePowered(visit: VisitAnswers): boolean {
  return visit.inspect?.answer.seen.drive !== 'burnt';
}

export function driveProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (!mayBePowered(visit)) proofs.push('drive-burnt');
  if (visit.symptom?.answer.when === 'control-off' && visit['retry-feedback-off']?.answer.result === 'trips') {
    proofs.push('trips-without-feedback');
  }
  if (visit.symptom?.answer.when === 'on-enable' && visit['retry-leads-off']?.answer.result === 'trips') {
    proofs.push('trips-without-motor');
  }
  if (visit.bridge?.answer.assessment.verdict === 'no-go') proofs.push('bridge-bad');
  return proofs;
}

export function driveBad(visit: VisitAnswers): boolean {
  return driveProofs(visit).length > 0;
}

export function motorProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (visit.isolation?.answer.assessment.parts.motor === 'proven-bad') proofs.push('isolation-bad');
  if (visit['winding-motor']?.answer.assessment.verdict === 'no-go') proofs.push('winding-bad-at-motor');
  return proofs;
}

export function motorBad(visit: VisitAnswers): boolean {
  return motorProofs(visit).length > 0;
}

export function cableProofs(visit: VisitAnswers): Proof[] {
  const proofs: Proof[] = [];
  if (visit.isolation?.answer.assessment.parts.cable === 'proven-bad') proofs.push('isolation-bad');
  const through = visit.winding?.answer.assessment.verdict;
  if (through === 'no-go' && visit['winding-motor']?.answer.assessment.verdict === 'go') {
    proofs.push('winding-good-without-cable');
  }
  return proofs;
}

/** The symptom or what was seen points at the cable, so that a good joined reading is not enough. */
export function cableSuspect(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen.motorCable ?? 'nothing';
  return visit.symptom?.answer.when === 'position-or-cable' || seen !== 'nothing';
}

export function insulationSettled(visit: VisitAnswers): boolean {
  return visit.insulation?.answer.assessment.verdict === 'go';
}
