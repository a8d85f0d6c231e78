import type { StepId, VisitAnswers } from './answers.ts';
import { cableProofs, driveProofs, motorProofs, type Part, type Proof } from './evidence.ts';

export interface PartDecision {
  part: Part;
  proofs: Proof[];
}

/** What is still open, and what would decide it. */
export type OpenItem =
  | 'feedback-cable-or-device'
  | 'retry-not-done'
  | 'bridge-open'
  | 'insulation-open'
  | 'cable-open'
  | 'motor-open'
  | 'winding-open'
  | 'mechanics'
  | 'mechanics-not-checked';

/**
 * `replace`: at least one part is proven bad. `inconclusive`: every check passes and the trip goes on, so the drive is
 * replaced by exclusion. `no-fault-found`: every check passes and the trip stays away. `mechanical`: every electrical
 * check passes and the axis is stiff or its brake drags. `undecided`: something open must be decided first.
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

/** The decision that complete answers lead to. Only parts with proof are replaced. */
export function decide(visit: VisitAnswers): Decision {
  const replace = [
    { part: 'drive' as const, proofs: driveProofs(visit) },
    { part: 'motor' as const, proofs: motorProofs(visit) },
    { part: 'motor-cable' as const, proofs: cableProofs(visit) },
    ...feedbackParts(visit),
    { part: 'protective-conductor' as const, proofs: peProofs(visit) },
  ].filter(({ proofs }) => proofs.length > 0);
  const good = goodParts(visit).filter((part) => !replace.some((bad) => bad.part === part));
  const baseline = (['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).filter(
    (id) => visit[id] !== undefined,
  );
  const open = openItems(visit).filter((item) => !explained(item, replace));
  const decision = { replace, good, open, baseline };
  if (replace.length > 0) return { kind: 'replace', ...decision };
  const last = visit['retry-all']?.answer.result;
  if (open.includes('mechanics')) return { kind: 'mechanical', ...decision };
  if (open.length > 0 || last === undefined) return { kind: 'undecided', ...decision };
  if (last === 'no-trip') return { kind: 'no-fault-found', ...decision };
  const byExclusion: PartDecision = { part: 'drive', proofs: ['all-passed-still-trips'] };
  return { kind: 'inconclusive', ...decision, replace: [byExclusion], good: good.filter((part) => part !== 'drive') };
}

function feedbackParts(visit: VisitAnswers): PartDecision[] {
  const cable: Proof[] =
    visit.inspect?.answer.seen.feedbackCable === 'nothing' || !visit.inspect ? [] : ['feedback-cable-damaged'];
  const device: Proof[] = [];
  if (visit['retry-feedback-off']?.answer.result === 'no-trip') {
    const separated = visit['retry-device-end']?.answer.result;
    if (separated === 'trips') cable.push('trip-follows-feedback-cable');
    if (separated === 'no-trip') device.push('trip-gone-without-device');
  }
  return [
    { part: 'feedback-cable', proofs: cable },
    { part: 'feedback-device', proofs: device },
  ];
}

function peProofs(visit: VisitAnswers): Proof[] {
  const fromIsolation = visit.isolation?.answer.assessment.parts.protectiveConductor === 'proven-bad';
  const fromInsulation =
    visit.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-not-short') === true;
  return fromIsolation || fromInsulation ? ['pe-broken'] : [];
}

function goodParts(visit: VisitAnswers): Part[] {
  const parts = visit.isolation?.answer.assessment.parts;
  const joinedGood = visit.insulation?.answer.assessment.verdict === 'go' && parts === undefined;
  const good: Part[] = [];
  if (visit.bridge?.answer.assessment.verdict === 'go') good.push('drive');
  if (joinedGood || isGood(parts?.motor)) good.push('motor');
  if (joinedGood || isGood(parts?.cable)) good.push('motor-cable');
  return good;
}

function isGood(status: string | undefined): boolean {
  return status === 'proven-good' || status === 'not-suspect';
}

const undecided = (answer: { assessment: { verdict: string } } | undefined) =>
  answer?.assessment.verdict === 'undecided';

function openItems(visit: VisitAnswers): OpenItem[] {
  const open: OpenItem[] = [];
  const feedbackGone = visit['retry-feedback-off']?.answer.result === 'no-trip';
  if (feedbackGone && visit['retry-device-end']?.answer.result === 'not-done') open.push('feedback-cable-or-device');
  const retries = (['retry-feedback-off', 'retry-leads-off', 'retry-all'] as const).map(
    (id) => visit[id]?.answer.result,
  );
  if (retries.includes('not-done')) open.push('retry-not-done');
  if (undecided(visit.bridge?.answer)) open.push('bridge-open');
  const parts = visit.isolation?.answer.assessment.parts;
  if (undecided(visit.insulation?.answer) && !(isGood(parts?.cable) && isGood(parts?.motor)))
    open.push('insulation-open');
  if (parts?.cable === 'not-tested' || parts?.cable === 'undecided') open.push('cable-open');
  if (parts?.motor === 'not-tested' || parts?.motor === 'undecided') open.push('motor-open');
  if (undecided(visit.winding?.answer) || undecided(visit['winding-motor']?.answer)) open.push('winding-open');
  const mechanics = visit.mechanics?.answer.found;
  if (mechanics === 'stiff' || mechanics === 'brake-drags') open.push('mechanics');
  if (mechanics === 'not-checked') open.push('mechanics-not-checked');
  return open;
}

/** A part that is replaced needs no further test of itself; a retry that was not done matters only while nothing is proven. */
function explained(item: OpenItem, replace: readonly PartDecision[]): boolean {
  const replaced = (part: Part) => replace.some((one) => one.part === part);
  switch (item) {
    case 'retry-not-done':
      return replace.length > 0;
    case 'bridge-open':
      return replaced('drive');
    case 'cable-open':
      return replaced('motor-cable');
    case 'motor-open':
    case 'winding-open':
      return replaced('motor');
    case 'insulation-open':
      return replaced('motor') && replaced('motor-cable');
    case 'feedback-cable-or-device':
      return replaced('feedback-cable') || replaced('feedback-device');
    default:
      return false;
  }
}
