import type { LockoutId, StepId, VisitAnswers } from './answers.ts';
import { type Decision, decide } from './decision.ts';
import { definitions, lockoutRule, type PlainStepId, type Problem, supportRule } from './steps.ts';

/**
 * One step on the way of this visit. `done`; `due`: unanswered; `problem`: answered, but the answer does not let the
 * visit go on; `check-again`: answered before something that it rests on was changed.
 */
export interface PathStep {
  id: StepId;
  status: 'done' | 'due' | 'problem' | 'check-again';
  problem?: Problem;
}

type LockoutBroken = Pick<PathStep, 'status' | 'problem'>;

/** What the guide assumes of the machine at a step. The walk only ever goes on as these allow. */
export interface Conditions {
  /** The lockout that holds now, answered and found good; undefined while the supply may be on. */
  lockedBy: LockoutId | undefined;
  axisSupported: boolean;
}

export interface GuideState {
  /** The steps so far, in order; the last one is due unless there is a decision. */
  path: PathStep[];
  /** The step that is due now, or undefined where the decision stands. */
  due: StepId | undefined;
  decision: Decision | undefined;
  /** Answered steps that are no longer on the way: kept, marked, not counted. */
  offPath: StepId[];
  conditions: Conditions;
}

/**
 * The next step of a visit, or its decision, from the record so far. Before any step that touches conductors stands a
 * lockout with a measured bus, and a step with power ends it; before both stands the support of an axis that may fall.
 */
export function nextStep(visit: VisitAnswers): GuideState {
  const path: PathStep[] = [];
  const conditions: Conditions = { lockedBy: undefined, axisSupported: false };
  let lastPower: StepId | undefined;
  let powerSteps = 0;

  /** Adds a step; true where its answer lets the walk go on. */
  const take = (id: StepId, restsOn: readonly (StepId | undefined)[], problem: Problem | undefined): boolean => {
    const answered = visit[id];
    // An answer that this way did not pass before changes nothing that was built on it.
    const before = restsOn.filter((other) => path.some((step) => step.id === other));
    const status = statusOf(visit, id, before, problem);
    path.push(answered && problem ? { id, status, problem } : { id, status });
    return status === 'done';
  };
  const stopped = (due: StepId): GuideState => ({
    path,
    due,
    decision: undefined,
    offPath: offPath(visit, path),
    conditions,
  });
  /** Back to a lockout that does not hold: what stands after it is for later. */
  const lockAgain = (lockout: LockoutId, broken: LockoutBroken): GuideState => {
    path.length = path.findIndex(({ id }) => id === lockout);
    path.push({ id: lockout, ...broken });
    conditions.lockedBy = undefined;
    return stopped(lockout);
  };

  let id: PlainStepId | 'decide' = 'find-drive';
  while (id !== 'decide') {
    const definition: (typeof definitions)[PlainStepId] = definitions[id];
    // Before the lockout: to bring a load to rest on its support may need power.
    if ((definition.touches || definition.energy !== 'none') && !conditions.axisSupported && gravityLoaded(visit)) {
      const answer = visit['support-axis']?.answer;
      if (!take('support-axis', ['symptom'], answer && supportRule.problem(answer))) return stopped('support-axis');
      conditions.axisSupported = true;
    }
    if (definition.touches && conditions.lockedBy === undefined) {
      const lockout: LockoutId = `lockout-${(powerSteps + 1) as 1 | 2 | 3}`;
      const answer = visit[lockout]?.answer;
      if (!take(lockout, [lastPower], answer && lockoutRule.problem(answer))) return stopped(lockout);
      conditions.lockedBy = lockout;
    }
    if (id === 'reconnect' && feedbackUnplugged(visit)) {
      const status = visit['plug-feedback'] === undefined ? 'due' : 'check-again';
      path.push({ id: 'plug-feedback', status });
      return stopped('plug-feedback');
    }
    if (id === 'reconnect' && visit['plug-feedback'] !== undefined) {
      if (!take('plug-feedback', [conditions.lockedBy], problemOf(visit, 'plug-feedback')))
        return stopped('plug-feedback');
    }
    const restsOn = [
      ...definition.restsOn,
      definition.touches ? conditions.lockedBy : undefined,
      supportFor(definition.energy),
    ];
    if (!take(id, restsOn, problemOf(visit, id))) {
      const { lockedBy } = conditions;
      const broken = definition.touches && lockedBy ? brokenSince(visit, lockedBy) : undefined;
      return lockedBy && broken ? lockAgain(lockedBy, broken) : stopped(id);
    }
    if (definition.energy !== 'none' && wasPowered(visit, id)) {
      conditions.lockedBy = undefined;
      lastPower = id;
      powerSteps += 1;
    }
    // What follows depends on the answers on the way alone, not on those that it has left behind.
    id = definition.next(onPath(visit, path));
  }
  return { path, due: undefined, decision: decide(onPath(visit, path)), offPath: offPath(visit, path), conditions };
}

function problemOf(visit: VisitAnswers, id: PlainStepId): Problem | undefined {
  const answer = visit[id]?.answer;
  const problem = definitions[id].problem as (given: unknown, all: VisitAnswers) => Problem | undefined;
  return answer === undefined ? undefined : problem(answer, visit);
}

function supportFor(energy: 'none' | 'power' | 'enable'): StepId | undefined {
  return energy === 'enable' ? 'support-axis' : undefined;
}

function statusOf(
  visit: VisitAnswers,
  id: StepId,
  restsOn: readonly (StepId | undefined)[],
  problem: Problem | undefined,
): PathStep['status'] {
  const answered = visit[id];
  if (answered === undefined) return 'due';
  if (problem !== undefined) return 'problem';
  const changedLater = restsOn.some((other) => other !== undefined && (visit[other]?.seq ?? 0) > answered.seq);
  return changedLater ? 'check-again' : 'done';
}

/**
 * Whether the feedback was unplugged and not plugged in since, on this way or on one that a correction has left: an axis
 * that is enabled with its motor and without its feedback runs away.
 */
function feedbackUnplugged(visit: VisitAnswers): boolean {
  const unplugged = (['unplug-feedback', 'unplug-device-end'] as const).flatMap((id) => {
    const answered = visit[id];
    return answered?.answer.done ? [answered.seq] : [];
  });
  return Math.max(0, ...unplugged) > (visit['plug-feedback']?.seq ?? 0);
}

/** An axis of which nobody knows whether it can fall is treated as one that can. */
function gravityLoaded(visit: VisitAnswers): boolean {
  return visit.symptom?.answer.gravityLoaded !== 'no';
}

/** A retry that was not done leaves the lockout in place. */
function wasPowered(visit: VisitAnswers, id: StepId): boolean {
  const answer = visit[id]?.answer;
  return answer !== undefined && 'result' in answer && answer.result !== 'not-done';
}

/**
 * Hands go near conductors only under the newest lockout: not after a later step with power, even one that a
 * correction has taken off the way, nor after a later reading or a later lockout that found the bus charged.
 */
function brokenSince(visit: VisitAnswers, lockout: LockoutId): LockoutBroken | undefined {
  const since = visit[lockout]?.seq ?? 0;
  const later = (Object.keys(visit) as StepId[]).filter((id) => (visit[id]?.seq ?? 0) > since);
  if (later.includes('bridge') && busFoundCharged(visit)) return { status: 'problem', problem: 'bus-not-discharged' };
  const undone = later.some((id) => wasPowered(visit, id) || lockoutFailed(visit, id));
  return undone ? { status: 'check-again' } : undefined;
}

function lockoutFailed(visit: VisitAnswers, id: StepId): boolean {
  if (id !== 'lockout-1' && id !== 'lockout-2' && id !== 'lockout-3') return false;
  const answer = visit[id]?.answer;
  return answer !== undefined && lockoutRule.problem(answer) !== undefined;
}

function busFoundCharged(visit: VisitAnswers): boolean {
  return visit.bridge?.answer.assessment.findings.some(({ severity }) => severity === 'stop') === true;
}

function offPath(visit: VisitAnswers, path: readonly PathStep[]): StepId[] {
  const on = new Set(path.map(({ id }) => id));
  return (Object.keys(visit) as StepId[]).filter((id) => !on.has(id));
}

function onPath(visit: VisitAnswers, path: readonly PathStep[]): VisitAnswers {
  const on = new Set<string>(path.map(({ id }) => id));
  return Object.fromEntries(Object.entries(visit).filter(([id]) => on.has(id)));
}
