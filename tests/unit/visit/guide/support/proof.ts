import type { Part } from '../../../../../src/kernel/vocabulary.ts';
import type { DecisionKind } from '../../../../../src/visit/guide/decision.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import { against, bends, brakingCircuit, idleCores } from './against.ts';

/**
 * What the answers on the way prove, worked out independently from the rules of proof. It shares no code with the guide.
 * `record`: all answers, including those that a correction has taken off the way.
 */
export interface Proven {
  bad: Set<Part>;
  /** Something speaks against it, and it is not proven. */
  suspect: Set<Part>;
  /** Passed its own measurements, nothing speaks against it, and it was measured in the state in which it trips. */
  mayBeGood: Set<Part>;
  passed: boolean;
  kind: DecisionKind;
}

/** A reading against a part. Readings of the same observation do not add up. */
interface Against {
  part: Part;
  /** What was observed; two of them prove the part. */
  observations: string[];
}

/**
 * How often it must be tried: a trip that comes at most in 65 of 100 tries stays away by chance in at most 5 of 100 series.
 * One trip in one start is not known to come every time: a start without it is added.
 */
export function triesFor({ symptom }: VisitAnswers): number | undefined {
  const { came, of } = symptom?.answer ?? {};
  if (came === undefined || of === undefined || came < 1 || came > of) return undefined;
  const stays = 1 - Math.min(came / (of + 1), 0.65);
  let needed = 1;
  while (stays ** needed > 0.05) needed += 1;
  return needed;
}

type RetryId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-stripped'
  | 'retry-all';

export function proven(visit: VisitAnswers, record: VisitAnswers): Proven {
  const verdict = (id: 'bridge' | 'input-circuit' | 'insulation' | 'isolation' | 'winding' | 'winding-motor') =>
    visit[id]?.answer.assessment.verdict;
  const retry = (id: RetryId): RetryAnswer | undefined => visit[id]?.answer;
  const needed = triesFor(visit) ?? Number.POSITIVE_INFINITY;
  const trips = (id: RetryId) => retry(id)?.result === 'trips';
  const gone = (id: RetryId) => retry(id)?.result === 'no-trip';
  const surelyGone = (id: RetryId) => gone(id) && (retry(id)?.tries ?? 1) >= needed;
  const when = visit.symptom?.answer.when;
  const stage = when === 'control-off' ? 'at-power' : when === 'on-enable' ? 'at-enable' : 'moving';
  const surelyTrips = (id: RetryId) => {
    const { tries = 1, trips: came = 1, stage: at } = retry(id) ?? {};
    return trips(id) && came >= tries && tries >= needed && at === stage;
  };
  const seen = visit.inspect?.answer.seen;
  const parts = visit.isolation?.answer.assessment.parts;
  const says = (id: 'bridge' | 'winding' | 'winding-motor', what: 'drive' | 'cause' | 'joint') =>
    (visit[id]?.answer.assessment as unknown as Record<string, string> | undefined)?.[what];
  const finds = (id: 'insulation', code: string) =>
    visit[id]?.answer.assessment.findings.some((finding) => finding.code === code) === true;
  const braking = brakingCircuit(visit);
  const input = visit['input-circuit']?.answer.assessment;
  // A fuse that is open is not the drive.
  const inputFails = input?.findings.some(({ severity, code }) => severity === 'fail' && code !== 'fuse-open') === true;
  const inputTwice = inputFails && input.next.some(({ code }) => code === 'replace-drive');
  const opened = visit.symptom?.answer.protection === 'opened';
  const inputSound = (verdict('input-circuit') ?? (opened ? 'undecided' : 'go')) === 'go';
  const bent = visit['bend-test']?.answer;
  const bendBad = bends(visit) === 'bad';
  const bentPart: Part = bent?.core === 'feedback' ? 'feedback-cable' : 'motor-cable';
  const cableSeen = seen?.feedbackCable === 'burnt' || seen?.feedbackCable === 'chafed';
  const peOnce = finds('insulation', 'pe-not-short') && parts?.protectiveConductor !== 'proven-good';
  const cableOrJoint = verdict('winding') === 'no-go' && verdict('winding-motor') === 'go';
  const windingAtMotor = verdict('winding-motor') === 'no-go';
  const isWinding = says('winding-motor', 'cause') === 'winding';
  const twice = (holds: boolean, what: string) => (holds ? [what, `${what}, again`] : []);
  const once = (holds: boolean, what: string) => (holds ? [what] : []);
  const part = (of: Part, ...observations: string[][]): Against => ({ part: of, observations: observations.flat() });

  // What is measured twice within one step counts as two; a series of tries counts as two when it is long enough.
  const readings: Against[] = [
    part('drive', once(seen?.drive === 'burnt', 'eye'), once(verdict('bridge') === 'no-go', 'bridge')),
    part('drive', twice(verdict('bridge') === 'no-go' && says('bridge', 'drive') === 'convicted', 'bridge')),
    part('drive', inputTwice ? twice(true, 'input') : once(inputFails, 'input')),
    part('drive', twice(visit['strip-drive']?.answer.state === 'all-off' && surelyTrips('retry-stripped'), 'series')),
    part('drive', once(trips('retry-feedback-off') || trips('retry-leads-off') || trips('retry-stripped'), 'tries')),
    part('drive', once(braking === 'switch' || lowSwitch(visit), 'switch of the braking resistor')),
    part('motor', twice(parts?.motor === 'proven-bad', 'isolation')),
    part('motor', once(parts?.motor === 'suspect', 'isolation')),
    part('motor', once(windingAtMotor, 'winding at the motor')),
    part('motor', twice(windingAtMotor && isWinding, 'winding')),
    part('motor', once(idleCores(visit) === 'touches', 'idle core')),
    part('motor-cable', twice(parts?.cable === 'proven-bad', 'isolation')),
    part('motor-cable', once(parts?.cable === 'suspect', 'isolation')),
    part(
      'motor-cable',
      once(cableOrJoint, 'winding'),
      once(cableOrJoint && says('winding', 'cause') === 'winding' && says('winding', 'joint') === 'good', 'joint'),
    ),
    part('motor-cable', once(idleCores(visit) === 'touches', 'idle core')),
    part(bentPart, bent?.again ? twice(bendBad, 'bend test') : once(bendBad, 'bend test')),
    // Water proves nothing: a wet cable is dried and looked at again.
    part(
      'feedback-cable',
      once(cableSeen, 'eye'),
      // Gone with the cable plugged and the device off too: then the device is the one.
      once(cableSeen && surelyGone('retry-feedback-off') && !gone('retry-device-end'), 'tries without it'),
    ),
    part('feedback-cable', once(gone('retry-feedback-off') && !gone('retry-device-end'), 'a try')),
    part('feedback-cable', twice(surelyGone('retry-feedback-off') && surelyTrips('retry-device-end'), 'series')),
    part('feedback-device', once(gone('retry-feedback-off') && !trips('retry-device-end'), 'a try')),
    part(
      'feedback-device',
      twice(
        surelyGone('retry-feedback-off') && surelyGone('retry-device-end') && surelyTrips('retry-feedback-on'),
        'series',
      ),
    ),
    part(
      'protective-conductor',
      once(peOnce || parts?.protectiveConductor === 'suspect', 'joined'),
      twice(parts?.protectiveConductor === 'proven-bad', 'PE'),
    ),
    part(
      'braking-resistor',
      visit.braking?.answer.again ? twice(braking === 'bad', 'resistor') : once(braking === 'bad', 'resistor'),
    ),
  ];
  // Each line is one chain of evidence: only within it do observations add up.
  const bad = new Set(readings.filter(({ observations }) => new Set(observations).size >= 2).map((one) => one.part));
  const feedbackProven = bad.has('feedback-cable') || bad.has('feedback-device');
  const mended = gone('retry-feedback-off') && gone('retry-device-end') && gone('retry-feedback-on');
  const lifted = (of: Part) =>
    (of === 'feedback-device' && (mended || feedbackProven)) ||
    (of === 'feedback-cable' &&
      !cableSeen &&
      !(bendBad && bentPart === 'feedback-cable') &&
      (mended || feedbackProven));
  const suspect = new Set(
    readings
      .filter(({ part: of, observations }) => observations.length > 0 && !bad.has(of) && !lifted(of))
      .map((one) => one.part),
  );

  const points =
    when === 'position-or-cable' ||
    cableOrJoint ||
    // It trips with the motor on and all has passed: joined readings are not enough any more.
    (trips('retry-all') && when !== 'control-off') ||
    (seen !== undefined && (seen.motorCable !== 'nothing' || seen.motor !== 'nothing'));
  const good = (status: string | undefined) =>
    status === 'proven-good' || (status === 'not-suspect' && verdict('insulation') === 'go' && !points);
  const joinedGood = verdict('insulation') === 'go' && visit.isolation === undefined && !points;
  const windingGood = verdict('winding') === 'go' || verdict('winding-motor') === 'go';
  const coreBroken = verdict('winding') === 'no-go' && verdict('winding-motor') !== 'no-go';
  const hot = (visit.insulation?.answer.celsius ?? Number.NEGATIVE_INFINITY) >= 40;

  const measured = inputSound && (['bridge', 'insulation', 'winding'] as const).every((id) => verdict(id) === 'go');
  const separated = points ? good(parts?.cable) && good(parts?.motor) : (verdict('isolation') ?? 'go') === 'go';
  const isolated = separated && (verdict('isolation') ?? 'go') === 'go';
  const passed = measured && isolated && bad.size === 0 && suspect.size === 0 && idleCores(visit) === 'free';
  const found = visit.mechanics?.answer.found ?? 'free';
  const felt = found === 'free' || found === 'free-without-leads';
  const hindered = found === 'stiff' || found === 'brake-drags';
  const said = (result: RetryAnswer['result']) =>
    (
      [
        'retry-feedback-off',
        'retry-device-end',
        'retry-feedback-on',
        'retry-leads-off',
        'retry-stripped',
        'retry-all',
      ] as const
    ).some((id) => retry(id)?.result === result);
  const spoken = visit.recording?.answer.speaksFor ?? [];
  // What each moment and a recording ask for, beyond good readings cold and at rest.
  const asItTrips =
    (when !== 'when-hot' || hot) &&
    (!(when === 'position-or-cable' || spoken.includes('open-core')) || bends(visit) === 'steady') &&
    (!(when === 'on-braking' || spoken.includes('supply-braking')) || brakingCircuit(visit) === 'sound');
  const kind = (): DecisionKind => {
    if (bad.size > 0) return 'replace';
    if (suspect.size > 0 || !passed || !asItTrips) return 'undecided';
    const change = visit['after-change']?.answer.found ?? 'same';
    if (change === 'wrong' || change === 'not-compared') return 'undecided';
    if (said('not-done') || said('other-message') || !(felt || hindered)) return 'undecided';
    // Damage that proves nothing is dried or mended before anything is tried.
    if (seen === undefined || Object.values(seen).some((damage) => damage !== 'nothing')) return 'undecided';
    // Evidence that a correction has taken off the way is settled first.
    if (against(record, 'retry-all', true).length > against(visit, 'retry-all', true).length) return 'undecided';
    const inItsState = when === 'control-off' || when === 'on-enable' || retry('retry-all')?.asItTrips === true;
    const sure = when !== 'now-and-then' && inItsState && surelyGone('retry-all');
    if (gone('retry-all') && !sure) return 'undecided';
    if (hindered) return 'mechanical';
    if (retry('retry-all') === undefined) return 'undecided';
    return gone('retry-all') ? 'no-fault-found' : 'inconclusive';
  };

  const mayBeGood = new Set<Part>();
  // What passes at rest is good only when something else explains the trip, or when it stays away.
  if (['replace', 'no-fault-found', 'mechanical'].includes(kind())) {
    if (inputSound && verdict('bridge') === 'go' && seen?.drive === 'nothing') mayBeGood.add('drive');
    const motor = (joinedGood || good(parts?.motor)) && windingGood && seen?.motor === 'nothing';
    if (motor && (when !== 'when-hot' || hot)) mayBeGood.add('motor');
    const cable = (joinedGood || good(parts?.cable)) && !coreBroken && seen?.motorCable === 'nothing';
    if (cable && (!(when === 'position-or-cable' || spoken.includes('open-core')) || bends(visit) === 'steady'))
      mayBeGood.add('motor-cable');
  }
  for (const one of [...bad, ...suspect]) mayBeGood.delete(one);
  return { bad, suspect, mayBeGood, passed, kind: kind() };
}

/** A switch that reads a short beside a resistor that is bad too. */
function lowSwitch(visit: VisitAnswers): boolean {
  const answer = visit.braking?.answer;
  if (answer?.fitted !== 'external' || answer.toBus.kind !== 'value') return false;
  return answer.toBus.value <= 1e3;
}

/** The steps with power, for the rules. */
export type PowerStep = Extract<StepId, RetryId>;
