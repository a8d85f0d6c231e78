import type { GuideState } from '../guide/next-step.ts';
import { type StepId, stepIds } from '../steps/ids.ts';

/** Steps that may still come, in their usual order. Of the lockouts only the next one: they are alike. */
export function stepsAhead({ path, offPath, decision }: GuideState): StepId[] {
  if (decision !== undefined) return [];
  const listed = new Set<StepId>([...path.map(({ id }) => id), ...offPath]);
  const ahead = stepIds.filter((id) => !listed.has(id));
  const firstLockout = ahead.find(isLockout);
  return ahead.filter((id) => !isLockout(id) || id === firstLockout);
}

const isLockout = (id: StepId) => id.startsWith('lockout');
