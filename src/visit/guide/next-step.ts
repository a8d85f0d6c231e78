import { lastIn } from '../../kernel/reading/last-in.ts';
import { type StepId, stepIds } from '../steps/ids.ts';
import type { LockoutId } from '../steps/lockout/question.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { PlainStepId } from '../steps/rule.ts';
import { rules } from '../steps/rules.ts';
import { type Decision, decide } from './decision.ts';
import type { PathStep } from './path.ts';
import { powerOf, powerRefused } from './power.ts';
import { withoutPower } from './routes.ts';
import { Way } from './way.ts';

/** What the guide knows about the machine at a step. The walk continues only as far as this allows. */
export interface Conditions {
  /** The lockout that protects the next steps; undefined while the supply may be on. */
  lockedBy: LockoutId | undefined;
  axisSupported: boolean;
}

/** How a baseline visit stands. `not-sound`: something did not pass, so these readings are no baseline. */
export type BaselineState = 'open' | 'complete' | 'not-sound';

export interface GuideState {
  /** The steps so far, in order; the last one is due unless there is a decision. */
  path: PathStep[];
  /** The step that is due now; undefined if there is a decision. */
  due: StepId | undefined;
  decision: Decision | undefined;
  /** Answered steps that are no longer on the way: kept, marked, not counted. */
  offPath: StepId[];
  conditions: Conditions;
  /** Only in a baseline visit, which has no decision. */
  baseline?: BaselineState;
}

/**
 * The next step of a visit, or its decision, from the record so far. Before any step that touches conductors there is a
 * lockout with a measured bus, and a step with power ends it. Before both, every axis that may fall is supported. No step
 * with power is asked for while anything in the record speaks against it.
 */
export function nextStep(visit: VisitAnswers): GuideState {
  const way = new Way(visit);
  let id: PlainStepId | 'decide' = 'find-drive';
  while (id !== 'decide') {
    const power = powerOf(id);
    if (power !== undefined && powerRefused(visit, power) && !way.stands(id, power)) {
      id = withoutPower[power](way.answers(), visit);
      continue;
    }
    if (!way.prepare(id) || !way.pass(id)) return stateOf(way, undefined);
    // What follows depends only on the answers that are on the way.
    id = rules[id].next(way.answers(), visit);
  }
  return stateOf(way, decide(way.answers(), visit));
}

export function stateOf({ path, visit, lockedBy, axisSupported }: Way, decision: Decision | undefined): GuideState {
  const on = new Set(path.map(({ id }) => id));
  return {
    path,
    due: decision === undefined ? lastIn(path)?.id : undefined,
    decision,
    offPath: (Object.keys(visit) as StepId[]).filter((id) => !on.has(id)),
    conditions: { lockedBy, axisSupported },
  };
}

/** Steps that may still follow, in their usual order. Of the lockouts only the next one, since they are alike. */
export function stepsAhead({ path, offPath, decision, baseline }: GuideState): StepId[] {
  if (decision !== undefined || baseline !== undefined) return [];
  const listed = new Set<StepId>([...path.map(({ id }) => id), ...offPath]);
  // Whether there is a recording to read is known with the moment.
  const asked = path.some(({ id, status }) => id === 'symptom' && status === 'done');
  const ahead = stepIds.filter((id) => !listed.has(id) && (id !== 'recording' || !asked));
  const firstLockout = ahead.find(isLockout);
  return ahead.filter((id) => !isLockout(id) || id === firstLockout);
}

const isLockout = (id: StepId) => id.startsWith('lockout');
