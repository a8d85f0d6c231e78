import type { StepId } from '../steps/ids.ts';
import type { BusProofId, DeadProofId } from '../steps/lockout/question.ts';
import { busProblem, lockoutProblem } from '../steps/lockout/rule.ts';
import type { StepProblem } from '../steps/problems.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { PathStep } from './path.ts';
import { isPowerStep, leadsOnAt } from './power.ts';

const lockouts = ['lockout-1', 'lockout-2', 'lockout-3', 'prove-again'] as const satisfies DeadProofId[];

export function isDeadProof(id: StepId): id is DeadProofId {
  return (lockouts as readonly StepId[]).includes(id);
}

export function isBusProof(id: StepId): id is BusProofId {
  return id === 'bus-again' || isDeadProof(id);
}

/** The problem of this record's answer to a step that measures the bus. */
export function busProofProblem(visit: VisitAnswers, id: BusProofId): StepProblem | undefined {
  const bus = visit['bus-again'];
  if (id === 'bus-again') return bus && busProblem(bus.answer);
  const lockout = visit[id];
  return lockout && lockoutProblem(lockout.answer);
}

/** The newest lockout that shows the drive dead: `base`, or the one that was repeated after a break. */
export function newestLockout(visit: VisitAnswers, base: DeadProofId): DeadProofId {
  const again = visit['prove-again'];
  const holds = again !== undefined && lockoutProblem(again.answer) === undefined;
  return holds && again.seq > (visit[base]?.seq ?? 0) ? 'prove-again' : base;
}

/** The newest reading of the bus in the record, good or bad. */
export function newestBusReading(visit: VisitAnswers): BusProofId | undefined {
  const readings = ([...lockouts, 'bus-again'] as const).filter((id) => visit[id] !== undefined);
  return readings.reduce<BusProofId | undefined>(
    (newest, id) => (newest === undefined || seqOf(visit, id) > seqOf(visit, newest) ? id : newest),
    undefined,
  );
}

/**
 * Whether the bus can have been charged since it was last measured: by power, by an axis that was moved by hand with
 * its leads on, or by an instrument's own voltage. `before`: the step that asks; its own answer does not count.
 */
export function chargedSince(visit: VisitAnswers, reading: BusProofId, before?: StepId): boolean {
  const since = seqOf(visit, reading);
  const later = (id: StepId) => id !== before && seqOf(visit, id) > since;
  const found = visit.mechanics?.answer.found;
  const moved = later('mechanics') && found !== 'not-checked' && found !== 'held';
  if (moved && leadsOnAt(visit, seqOf(visit, 'mechanics'))) return true;
  if (later('bridge') || later('input-circuit') || later('braking')) return true;
  const tester = (['insulation', 'isolation'] as const).some((id) => later(id) && leadsOnAt(visit, seqOf(visit, id)));
  return tester || (Object.keys(visit) as StepId[]).some((id) => later(id) && wasPowered(visit, id));
}

/**
 * Conductors may be touched only under the newest lockout: not after a later step with power, even one that a correction
 * has taken off the way, nor after a later reading or a later lockout that found the bus charged.
 */
export function lockoutBroken(
  visit: VisitAnswers,
  lockout: DeadProofId,
): Pick<PathStep, 'status' | 'problem'> | undefined {
  const since = seqOf(visit, lockout);
  const later = (Object.keys(visit) as StepId[]).filter((id) => seqOf(visit, id) > since);
  if (later.some((one) => busFoundCharged(visit, one))) return { status: 'problem', problem: 'bus-not-discharged' };
  const failed = (id: StepId) => isDeadProof(id) && busProofProblem(visit, id) !== undefined;
  return later.some((id) => wasPowered(visit, id) || failed(id)) ? { status: 'check-again' } : undefined;
}

function busFoundCharged(visit: VisitAnswers, id: StepId): boolean {
  if (id !== 'bridge' && id !== 'input-circuit') return false;
  return visit[id]?.answer.assessment.findings.some(({ severity }) => severity === 'stop') === true;
}

/** A retry that was not done leaves the lockout in place. */
export function wasPowered(visit: VisitAnswers, id: StepId): boolean {
  return isPowerStep(id) && visit[id] !== undefined && visit[id]?.answer.result !== 'not-done';
}

/** The bus reading that still holds for this step: good, from this stretch of work, and the bus was not charged since. */
export function busReadingFor(visit: VisitAnswers, step: StepId): BusProofId | undefined {
  const id = newestBusReading(visit);
  if (id === undefined || visit[id]?.earlier || busProofProblem(visit, id) !== undefined) return undefined;
  return chargedSince(visit, id, step) ? undefined : id;
}

function seqOf(visit: VisitAnswers, id: StepId): number {
  return visit[id]?.seq ?? 0;
}
