import type { Answers, StepId, VisitAnswers } from '../../../../src/guide/answers.ts';

/** One answer as it was given: `[step, answer]`. The place in the list is its `seq`. */
export type Given = { [Id in StepId]: readonly [Id, Answers[Id]] }[StepId];

/** The record after these answers, in the order in which they were given; a step answered again is changed. */
export function visitOf(history: readonly Given[]): VisitAnswers {
  return Object.fromEntries(history.map(([id, answer], index) => [id, { seq: index + 1, answer }]));
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
