import type { Damage, InspectedPart, Symptom } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';

/** A burnt drive is never switched on again, not even for a trial; a wet or chafed one not before that is mended. */
export function mayBePowered(visit: VisitAnswers): boolean {
  return visit.inspect?.answer.seen.drive === 'nothing';
}

/** Damage of drive or feedback cable that proves no part bad but must be dried or mended before the axis is tried. */
export function damageOpen(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen;
  return mendable(seen?.drive, ['burnt']) || mendable(seen?.feedbackCable, ['burnt', 'chafed']);
}

function mendable(damage: Damage | undefined, beyond: readonly Damage[]): boolean {
  return damage !== undefined && damage !== 'nothing' && damage !== 'unseen' && !beyond.includes(damage);
}

/** Parts that nobody could look at. */
export function notLookedAt(visit: VisitAnswers): InspectedPart[] {
  const seen = Object.entries({ ...visit.inspect?.answer.seen });
  return seen.flatMap(([part, damage]) => (damage === 'unseen' ? [part as InspectedPart] : []));
}

/** Whether this part is seen damaged. */
export function seenDamaged(visit: VisitAnswers, part: InspectedPart): boolean {
  return looksBad(visit, part) && !notLookedAt(visit).includes(part);
}

/** Seen so damaged that water or a contact does not explain it. */
export function feedbackCableRuined(visit: VisitAnswers): boolean {
  const damage = visit.inspect?.answer.seen.feedbackCable;
  return damage === 'burnt' || damage === 'chafed';
}

/** Whether it tripped at this moment, or may have because nobody saw it. */
export function mayBe(visit: VisitAnswers, moment: Symptom): boolean {
  const when = visit.symptom?.answer.when;
  return when === moment || when === 'unknown';
}

/** Whether this part is not known to look sound. Then it gets no voltage, whatever it measures. */
export function looksBad(visit: VisitAnswers, part: InspectedPart): boolean {
  return (visit.inspect?.answer.seen[part] ?? 'nothing') !== 'nothing';
}

/** The trip goes away with the feedback unplugged: cable or device is suspect, and the second retry shows which. */
export function feedbackGone(visit: VisitAnswers): boolean {
  return visit['retry-feedback-off']?.answer.result === 'no-trip';
}

/** The trip is gone with the device unplugged. That alone proves nothing: unplugging may have cured a contact. */
export function goneWithoutDevice(visit: VisitAnswers): boolean {
  return feedbackGone(visit) && visit['retry-device-end']?.answer.result === 'no-trip';
}

/** Bad through the cable and good at the motor: the cable, or the joint between them. */
export function cableOrJoint(visit: VisitAnswers): boolean {
  const through = visit.winding?.answer.assessment.verdict;
  return through === 'no-go' && visit['winding-motor']?.answer.assessment.verdict === 'go';
}

/** Motor or cable is not known to look sound. */
export function looksDamaged(visit: VisitAnswers): boolean {
  return looksBad(visit, 'motor') || looksBad(visit, 'motorCable');
}

/**
 * The symptom, visible damage, a winding that is bad only through the cable, or a trip although everything passed points at
 * cable or motor. Then a good joined reading is not enough: it can't show a leak from core to core.
 */
export function pointsAtCableOrMotor(visit: VisitAnswers): boolean {
  return mayBe(visit, 'position-or-cable') || looksDamaged(visit) || cableOrJoint(visit) || tripsAsAWhole(visit);
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

/** Neither bad nor cleared. A part that is suspect is known: it fails the after-trip limit. */
export function isolationLeavesOpen(visit: VisitAnswers, part: 'cable' | 'motor'): boolean {
  const status = visit.isolation?.answer.assessment.parts[part];
  if (status === 'not-suspect') return pointsAtCableOrMotor(visit);
  return status === 'not-tested' || status === 'undecided';
}

/**
 * PE, by the readings of one step: the insulation reads it once, the isolation says `proven-bad` only after a second reading.
 */
export function peBroken(visit: VisitAnswers, step: 'insulation' | 'isolation'): boolean {
  if (step === 'isolation') return visit.isolation?.answer.assessment.parts.protectiveConductor === 'proven-bad';
  return visit.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-not-short') === true;
}

/** Broken by at least one reading, and no later and closer one finds it sound. */
export function peSpeaksAgainst(visit: VisitAnswers): boolean {
  const separate = visit.isolation?.answer.assessment.parts.protectiveConductor;
  const bad = separate === 'proven-bad' || separate === 'suspect';
  return bad || (peBroken(visit, 'insulation') && separate !== 'proven-good');
}

/** The insulation was measured with the winding hot, as the trip needs it. */
export function measuredHot(visit: VisitAnswers, least: number): boolean {
  const celsius = visit.insulation?.answer.celsius;
  return celsius !== undefined && celsius >= least;
}
