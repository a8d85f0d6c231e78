import type { VisitAnswers } from '../steps/questions.ts';
import type { PlainStepId } from '../steps/rule.ts';
import { type BaselineState, type GuideState, stateOf } from './next-step.ts';
import { againstPower } from './power.ts';
import { Way } from './way.ts';

/**
 * What is done on a sound axis, in order: all of it dead, with the leads off. The walk puts support and lockout before
 * them as in any visit. The axis is connected again only if every reading passed.
 */
const order: readonly PlainStepId[] = ['inspect', 'disconnect-leads', 'bridge', 'winding', 'idle-cores', 'insulation'];

/** The next step of a baseline visit. It decides about no part, so its state never has a decision. */
export function nextBaselineStep(visit: VisitAnswers): GuideState {
  const way = new Way(visit);
  const state = (baseline: BaselineState): GuideState => {
    const open = stateOf(way, undefined);
    return baseline === 'open' ? { ...open, baseline } : { ...open, due: undefined, baseline };
  };
  for (const id of order) {
    if (!way.prepare(id) || !way.pass(id)) return state('open');
  }
  if (!isSound(visit)) return state('not-sound');
  if (!way.prepare('reconnect') || !way.pass('reconnect')) return state('open');
  return state('complete');
}

/** Whether nothing that was found speaks against power on this axis, on or off the way. */
export function isSound(visit: VisitAnswers): boolean {
  return againstPower(visit, 'retry-all').length === 0;
}
