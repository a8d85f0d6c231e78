import type { Part } from '../../kernel/vocabulary.ts';
import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import {
  damageOpen,
  feedbackGone,
  goneWithoutDevice,
  insulationSettled,
  isolationClears,
  isolationLeavesOpen,
  looksBad,
  type Proof,
  provenBad,
} from './evidence.ts';
import { againstPower, type PowerObjection } from './power.ts';

export interface PartDecision {
  part: Part;
  proofs: Proof[];
}

/** What is still open. */
export type OpenItem =
  | 'feedback-cable-or-device'
  | 'feedback-device-open'
  | 'feedback-contact'
  | 'damage-open'
  | 'motor-damaged'
  | 'cable-damaged'
  | 'feedback-device-untested'
  | 'left-evidence'
  | 'retry-not-done'
  | 'bridge-open'
  | 'insulation-open'
  | 'cable-open'
  | 'motor-open'
  | 'winding-open'
  | 'hidden-in-winding'
  | 'mechanics'
  | 'mechanics-not-checked';

/**
 * `replace`: at least one part is proven bad. `inconclusive`: every check passes but it still trips, so the drive is
 * replaced by exclusion, once a specialist test of the winding has passed too. `no-fault-found`: every check passes and it
 * no longer trips. `mechanical`: every measurement passes and the axis is stiff or its brake drags. `undecided`: something
 * open must be decided first.
 */
export type DecisionKind = 'replace' | 'inconclusive' | 'no-fault-found' | 'mechanical' | 'undecided';

export interface Decision {
  kind: DecisionKind;
  replace: PartDecision[];
  /** Parts that were measured and passed: they stay, and their readings are the baseline. */
  good: Part[];
  open: OpenItem[];
  /** Steps whose readings are kept as the baseline of this axis. */
  baseline: StepId[];
}

/**
 * The decision that complete answers lead to. Only parts with proof are replaced. `record`: all answers, including those
 * that a correction has taken off the way: they prove nothing, but their objections to power are named.
 */
export function decide(visit: VisitAnswers, record: VisitAnswers): Decision {
  const replace: PartDecision[] = provenBad(visit);
  const measuredGood = goodParts(visit).filter(
    (part) => ![...replace, ...provenBad(record)].some((bad) => bad.part === part),
  );
  const baseline = (['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).filter(
    (id) => visit[id] !== undefined,
  );
  const onTheWay = againstPower(visit, 'retry-all');
  const leftBehind = againstPower(record, 'retry-all').filter((objection) => !onTheWay.includes(objection));
  const items: OpenItem[] = [...openItems(visit), ...(leftBehind.length > 0 ? (['left-evidence'] as const) : [])];
  const open = items.filter((item) => !explained(item, replace, visit));
  // A drive that tripped with nothing connected does not count as good because the symptom was corrected afterwards.
  const good = measuredGood.filter((part) => part !== 'drive' || !leftBehind.some(isOfDrive));
  const decision = { replace, good, open, baseline };
  if (replace.length > 0) return { kind: 'replace', ...decision };
  const last = visit['retry-all']?.answer.result;
  if (open.length === 1 && open[0] === 'mechanics') return { kind: 'mechanical', ...decision };
  if (open.length > 0 || last === undefined) return { kind: 'undecided', ...decision };
  if (last === 'no-trip') return { kind: 'no-fault-found', ...decision };
  const byExclusion: PartDecision = { part: 'drive', proofs: ['all-passed-still-trips'] };
  return {
    kind: 'inconclusive',
    ...decision,
    replace: [byExclusion],
    good: good.filter((part) => part !== 'drive'),
    // No measurement of a visit distinguishes this from a fault of the drive under load.
    open: ['hidden-in-winding'],
  };
}

function isOfDrive(objection: PowerObjection): boolean {
  return objection === 'trips-without-feedback' || objection === 'trips-without-motor' || objection === 'bridge-bad';
}

/** A part stays only if it passed every measurement of it and does not look damaged. */
function goodParts(visit: VisitAnswers): Part[] {
  const joined = visit.isolation === undefined && insulationSettled(visit);
  const through = visit.winding?.answer.assessment.verdict;
  const atMotor = visit['winding-motor']?.answer.assessment.verdict;
  const good: Part[] = [];
  if (visit.bridge?.answer.assessment.verdict === 'go' && !looksBad(visit, 'drive')) good.push('drive');
  const motorInsulated = (joined || isolationClears(visit, 'motor')) && !looksBad(visit, 'motor');
  if (motorInsulated && (through === 'go' || atMotor === 'go')) good.push('motor');
  // Bad through the cable but not known to be bad at the motor: a core of the cable may be broken.
  const coreInDoubt = through === 'no-go' && atMotor !== 'no-go';
  const cableInsulated = (joined || isolationClears(visit, 'cable')) && !looksBad(visit, 'motorCable');
  if (cableInsulated && !coreInDoubt) good.push('motor-cable');
  return good;
}

const undecided = (answer: { assessment: { verdict: string } } | undefined) =>
  answer?.assessment.verdict === 'undecided';

function openItems(visit: VisitAnswers): OpenItem[] {
  const open: OpenItem[] = [];
  const atDeviceEnd = visit['retry-device-end']?.answer.result ?? 'not-done';
  if (feedbackGone(visit) && atDeviceEnd === 'not-done') {
    open.push(looksBad(visit, 'feedbackCable') ? 'feedback-device-untested' : 'feedback-cable-or-device');
  }
  if (goneWithoutDevice(visit)) {
    const back = visit['retry-feedback-on']?.answer.result;
    if (back === 'no-trip') open.push('feedback-contact');
    else if (back !== 'trips') open.push('feedback-device-open');
  }
  if (damageOpen(visit)) open.push('damage-open');
  if (looksBad(visit, 'motor')) open.push('motor-damaged');
  if (looksBad(visit, 'motorCable')) open.push('cable-damaged');
  const retries = (['retry-feedback-off', 'retry-leads-off', 'retry-all'] as const).map(
    (id) => visit[id]?.answer.result,
  );
  if (retries.includes('not-done')) open.push('retry-not-done');
  if (undecided(visit.bridge?.answer)) open.push('bridge-open');
  const joinedFails = visit.insulation !== undefined && !insulationSettled(visit);
  if (joinedFails || undecided(visit.isolation?.answer)) open.push('insulation-open');
  if (isolationLeavesOpen(visit, 'cable')) open.push('cable-open');
  if (isolationLeavesOpen(visit, 'motor')) open.push('motor-open');
  if (undecided(visit.winding?.answer) || undecided(visit['winding-motor']?.answer)) open.push('winding-open');
  const mechanics = visit.mechanics?.answer.found;
  if (mechanics === 'stiff' || mechanics === 'brake-drags') open.push('mechanics');
  if (mechanics === 'not-checked') open.push('mechanics-not-checked');
  return open;
}

/** A part that is replaced needs no further test; a retry that was not done matters only while nothing is proven. */
function explained(item: OpenItem, replace: readonly PartDecision[], visit: VisitAnswers): boolean {
  const replaced = (part: Part) => replace.some((one) => one.part === part);
  switch (item) {
    case 'retry-not-done':
      return replace.length > 0;
    case 'bridge-open':
      return replaced('drive');
    case 'cable-open':
    case 'cable-damaged':
      return replaced('motor-cable');
    case 'motor-open':
    case 'motor-damaged':
    case 'winding-open':
      return replaced('motor');
    case 'insulation-open':
      return insulationExplained(replaced, visit);
    case 'feedback-cable-or-device':
    case 'feedback-device-open':
    case 'feedback-contact':
      return replaced('feedback-cable') || replaced('feedback-device');
    default:
      return false;
  }
}

/** A joined reading that did not pass is explained if one of its parts is proven bad and the others are settled. */
function insulationExplained(replaced: (part: Part) => boolean, visit: VisitAnswers): boolean {
  const cable = replaced('motor-cable') || isolationClears(visit, 'cable');
  const motor = replaced('motor') || isolationClears(visit, 'motor');
  return cable && motor && (replaced('motor-cable') || replaced('motor') || replaced('protective-conductor'));
}
