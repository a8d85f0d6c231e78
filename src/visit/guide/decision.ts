import type { Cause, Part } from '../../kernel/vocabulary.ts';
import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { possibleCauses } from './causes.ts';
import { type Excluded, excludedParts, measuredAsItTrips, passedParts } from './good-parts.ts';
import { explained, type OpenItem, openItems } from './open-items.ts';
import { againstPower, type PowerObjection } from './power.ts';
import { type Proof, provenBad } from './proofs.ts';
import { type PartSuspicion, suspected } from './suspicions.ts';

export interface PartDecision {
  part: Part;
  proofs: Proof[];
}

/**
 * `replace`: at least one part is proven bad. `inconclusive`: every check passes but it still trips, so these measurements do
 * not find the cause, and no part is named. `no-fault-found`: every check passes and it no longer trips, in enough tries.
 * `mechanical`: every measurement passes and the axis is stiff or its brake drags. `undecided`: something open or suspect
 * must be decided first.
 */
export type DecisionKind = 'replace' | 'inconclusive' | 'no-fault-found' | 'mechanical' | 'undecided';

export interface Decision {
  kind: DecisionKind;
  replace: PartDecision[];
  /** Parts that something speaks against, without proof: they are not replaced. */
  suspect: PartSuspicion[];
  /** Parts that readings of this visit exclude as the cause. */
  excluded: Excluded[];
  /** Families of causes that no reading excludes, the likely ones first; empty if a part is proven bad. */
  possible: Cause[];
  /** Parts that passed in the state in which it trips: they stay, and their readings are the baseline. */
  good: Part[];
  open: OpenItem[];
  /** Something that the change before the first trip had left wrong was put right. */
  corrected?: true;
  /** Steps whose readings are kept as the baseline of this axis. */
  baseline: StepId[];
}

/**
 * The decision that complete answers lead to. Only parts with proof are replaced. `record`: all answers, including those
 * that a correction has taken off the way: they prove nothing, but their objections to power are named.
 */
export function decide(visit: VisitAnswers, record: VisitAnswers): Decision {
  const replace: PartDecision[] = provenBad(visit);
  const replaced = replace.map(({ part }) => part);
  const suspect = suspected(visit);
  const onTheWay = againstPower(visit, 'retry-all');
  const leftBehind = againstPower(record, 'retry-all').filter((objection) => !onTheWay.includes(objection));
  const items: OpenItem[] = [...openItems(visit), ...(leftBehind.length > 0 ? (['left-evidence'] as const) : [])];
  const open = items.filter((item) => !explained(item, replaced, visit));
  const kind = kindOf(visit, { replace, suspect, open });
  const bad = [...replaced, ...suspect.map(({ part }) => part), ...provenBad(record).map(({ part }) => part)];
  const good = goodParts(visit, kind).filter(
    (part) => !bad.includes(part) && !(part === 'drive' && leftBehind.some(isOfDrive)),
  );
  return {
    ...{ kind, replace, suspect },
    excluded: excludedParts(visit, good).filter(({ part }) => !bad.includes(part)),
    possible: kind === 'replace' ? [] : possibleCauses(visit),
    ...{ good, open },
    ...(visit['after-change']?.answer.found === 'corrected' && { corrected: true as const }),
    baseline: (['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const).filter(
      (id) => visit[id] !== undefined,
    ),
  };
}

function kindOf(visit: VisitAnswers, found: Pick<Decision, 'replace' | 'suspect' | 'open'>): DecisionKind {
  const { replace, suspect, open } = found;
  if (replace.length > 0) return 'replace';
  if (suspect.length > 0) return 'undecided';
  if (open.length === 1 && open[0] === 'mechanics') return 'mechanical';
  const last = visit['retry-all']?.answer.result;
  if (open.length > 0 || last === undefined) return 'undecided';
  return last === 'no-trip' ? 'no-fault-found' : 'inconclusive';
}

/**
 * What passed is good only if something else explains the trip, or the trip stays away: otherwise it passed at rest what fails
 * under load.
 */
function goodParts(visit: VisitAnswers, kind: DecisionKind): Part[] {
  if (kind !== 'replace' && kind !== 'no-fault-found' && kind !== 'mechanical') return [];
  return passedParts(visit).filter((part) => measuredAsItTrips(visit, part));
}

function isOfDrive(objection: PowerObjection): boolean {
  return ['trips-without-feedback', 'trips-without-motor', 'trips-stripped', 'bridge-bad', 'input-not-sound'].includes(
    objection,
  );
}
