import { minutesOf, minutesOfTry } from '../../src/visit/guide/minutes.ts';
import { isPowerStep } from '../../src/visit/guide/power.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../src/visit/steps/questions.ts';

/** Minutes at the machine and switch-ons of one visit, from the answers that it ends with. */
export function clocked(answers: VisitAnswers): { minutes: number; powerUps: number } {
  const ids = Object.keys(answers) as StepId[];
  const triesOf = (id: StepId) => {
    if (!isPowerStep(id) || answers[id]?.answer.result === 'not-done') return 0;
    return answers[id]?.answer.tries ?? 1;
  };
  const powerUps = ids.reduce((sum, id) => sum + triesOf(id), 0);
  const steps = ids.reduce((sum, id) => sum + minutesOf(id), 0);
  return { minutes: steps + powerUps * minutesOfTry, powerUps };
}
