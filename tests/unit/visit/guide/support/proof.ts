import type { Part } from '../../../../../src/kernel/vocabulary.ts';
import type { DecisionKind } from '../../../../../src/visit/guide/decision.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import { against } from './against.ts';

/**
 * What the answers on the way prove, worked out independently from the articles. It shares no code with the guide.
 * `record`: all answers, including those that a correction has taken off the way.
 */
export interface Proven {
  bad: Set<Part>;
  /** Passed its own measurements and nothing speaks against it. */
  mayBeGood: Set<Part>;
  passed: boolean;
  kind: DecisionKind;
}

export function proven(visit: VisitAnswers, record: VisitAnswers): Proven {
  const verdict = (id: 'bridge' | 'insulation' | 'isolation' | 'winding' | 'winding-motor') =>
    visit[id]?.answer.assessment.verdict;
  const result = (
    id: 'retry-feedback-off' | 'retry-device-end' | 'retry-feedback-on' | 'retry-leads-off' | 'retry-all',
  ) => visit[id]?.answer.result;
  const seen = visit.inspect?.answer.seen;
  const parts = visit.isolation?.answer.assessment.parts;
  const gone = result('retry-feedback-off') === 'no-trip';
  const insulationPeBroken = visit.insulation?.answer.assessment.findings.some((f) => f.code === 'pe-not-short');

  const evidence: Record<Part, boolean[]> = {
    drive: [
      seen?.drive === 'burnt',
      result('retry-feedback-off') === 'trips',
      result('retry-leads-off') === 'trips',
      verdict('bridge') === 'no-go',
    ],
    motor: [parts?.motor === 'proven-bad', verdict('winding-motor') === 'no-go'],
    'motor-cable': [parts?.cable === 'proven-bad', verdict('winding') === 'no-go' && verdict('winding-motor') === 'go'],
    // A wet cable is dried and inspected again: water proves nothing.
    'feedback-cable': [
      gone && result('retry-device-end') === 'trips',
      seen?.feedbackCable === 'burnt' || seen?.feedbackCable === 'chafed',
    ],
    // Gone without the device can be a contact or the device; back with it proves the device.
    'feedback-device': [gone && result('retry-device-end') === 'no-trip' && result('retry-feedback-on') === 'trips'],
    // If the two differ, the later and closer measurement counts.
    'protective-conductor': [
      parts?.protectiveConductor === 'proven-bad' ||
        (insulationPeBroken === true && parts?.protectiveConductor !== 'proven-good'),
    ],
    'braking-resistor': [],
  };
  const bad = new Set((Object.keys(evidence) as Part[]).filter((part) => evidence[part].some(Boolean)));

  const suspect =
    visit.symptom?.answer.when === 'position-or-cable' ||
    // It trips with the motor on and all has passed: joined readings are not enough any more.
    (result('retry-all') === 'trips' && visit.symptom?.answer.when !== 'control-off') ||
    (seen !== undefined && (seen.motorCable !== 'nothing' || seen.motor !== 'nothing'));
  const good = (status: string | undefined) =>
    status === 'proven-good' || (status === 'not-suspect' && verdict('insulation') === 'go' && !suspect);
  const joinedGood = verdict('insulation') === 'go' && visit.isolation === undefined && !suspect;
  const windingGood = verdict('winding') === 'go' || verdict('winding-motor') === 'go';
  const coreBroken = verdict('winding') === 'no-go' && verdict('winding-motor') !== 'no-go';
  const mayBeGood = new Set<Part>();
  if (verdict('bridge') === 'go') mayBeGood.add('drive');
  if ((joinedGood || good(parts?.motor)) && windingGood) mayBeGood.add('motor');
  if ((joinedGood || good(parts?.cable)) && !coreBroken) mayBeGood.add('motor-cable');
  // A part that looks damaged does not stay, whatever it reads.
  if (seen?.drive !== 'nothing') mayBeGood.delete('drive');
  if (seen?.motor !== 'nothing') mayBeGood.delete('motor');
  if (seen?.motorCable !== 'nothing') mayBeGood.delete('motor-cable');
  for (const part of bad) mayBeGood.delete(part);

  const measured = (['bridge', 'insulation', 'winding'] as const).every((id) => verdict(id) === 'go');
  const separated = suspect ? good(parts?.cable) && good(parts?.motor) : (verdict('isolation') ?? 'go') === 'go';
  const passed = measured && separated && (verdict('isolation') ?? 'go') === 'go' && bad.size === 0;
  const allRetries = !(['retry-feedback-off', 'retry-leads-off', 'retry-all'] as const).some(
    (id) => result(id) === 'not-done',
  );
  const mechanics = visit.mechanics?.answer.found ?? 'free';
  const kind = (): DecisionKind => {
    if (bad.size > 0) return 'replace';
    if (!passed || !allRetries || mechanics === 'not-checked') return 'undecided';
    // Damage that proves nothing is dried or mended before anything is tried.
    if (seen === undefined || Object.values(seen).some((damage) => damage !== 'nothing')) return 'undecided';
    // Evidence that a correction has taken off the way is settled first.
    if (against(record, 'retry-all', true).length > against(visit, 'retry-all', true).length) return 'undecided';
    if (mechanics !== 'free') return 'mechanical';
    if (result('retry-all') === undefined) return 'undecided';
    return result('retry-all') === 'no-trip' ? 'no-fault-found' : 'inconclusive';
  };
  return { bad, mayBeGood, passed, kind: kind() };
}
