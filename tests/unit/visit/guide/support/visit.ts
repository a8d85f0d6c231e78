import type { GuideState } from '../../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { Answers, VisitAnswers } from '../../../../../src/visit/steps/questions.ts';

/** One answer as it was given: `[step, answer]`. The place in the list is its `seq`. */
export type Given = { [Id in StepId]: readonly [Id, Answers[Id]] }[StepId];

/**
 * The record after these answers, in the order in which they were given; a step answered again is changed. The first
 * `breakAt` of them were given in an earlier stretch of work.
 */
export function visitOf(history: readonly Given[], breakAt = 0): VisitAnswers {
  return Object.fromEntries(
    history.map(([id, answer], index) => [
      id,
      { seq: index + 1, answer, ...(index < breakAt && { earlier: true as const }) },
    ]),
  );
}

/**
 * Each answer as it stands now, in the order of its last change: what a record knows of the past. A retry that is
 * taken back to "not done" counts as never made; nobody can tell it from a slip of the finger.
 */
export function standing(history: readonly Given[]): Given[] {
  return history.filter((_, index) => isLast(history, index));
}

/** How many of the standing answers were among the first `breakAt`. */
export function standingBefore(history: readonly Given[], breakAt: number): number {
  return history.slice(0, breakAt).filter((_, index) => isLast(history, index)).length;
}

function isLast(history: readonly Given[], index: number): boolean {
  return history.findLastIndex(([id]) => id === history[index]?.[0]) === index;
}

/** The answers on the way: those that count for a decision. */
export function onPath({ path }: GuideState, visit: VisitAnswers): VisitAnswers {
  const ids = new Set<string>(path.map(({ id }) => id));
  return Object.fromEntries(Object.entries(visit).filter(([id]) => ids.has(id)));
}

/** A history in words, to be read in the message of a test that fails. */
export function words(history: readonly Given[]): string {
  const line = ([id, answer]: Given) => {
    if (!('assessment' in answer)) return `${id} ${JSON.stringify(answer)}`;
    const parts = 'parts' in answer.assessment ? JSON.stringify(answer.assessment.parts) : '';
    return `${id} ${answer.assessment.verdict}${answer.leftOpen ? ', left open' : ''} ${parts}`;
  };
  return history.map((given) => `\n  ${line(given)}`).join('');
}
