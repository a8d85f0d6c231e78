import { isPowerStep } from '../../src/visit/guide/power.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../src/visit/steps/questions.ts';

/** How long a step takes, in minutes: project judgement. A retry counts once for each try. */
const minutesOf: Partial<Record<StepId, number>> = {
  'support-axis': 10,
  'lockout-1': 12,
  'lockout-2': 12,
  'lockout-3': 12,
  'bus-again': 2,
  inspect: 12,
  'unplug-feedback': 3,
  'unplug-device-end': 5,
  'plug-feedback': 5,
  'disconnect-leads': 6,
  mechanics: 10,
  bridge: 5,
  braking: 10,
  winding: 4,
  'winding-motor': 8,
  'strip-drive': 15,
  'bend-test': 25,
  'idle-cores': 3,
  insulation: 16,
  isolation: 30,
  'connect-pe': 3,
  reconnect: 10,
  'retry-all': 10,
};
/** Other steps. */
const short = 1;
/** A try with power, waiting for the charging circuit included. */
const tryMinutes = 4;

/** Minutes at the machine and switch-ons of one visit, from the answers that it ends with. */
export function clocked(answers: VisitAnswers): { minutes: number; powerUps: number } {
  const ids = Object.keys(answers) as StepId[];
  const triesOf = (id: StepId) => {
    if (!isPowerStep(id) || answers[id]?.answer.result === 'not-done') return 0;
    return answers[id]?.answer.tries ?? 1;
  };
  const powerUps = ids.reduce((sum, id) => sum + triesOf(id), 0);
  const steps = ids.reduce((sum, id) => sum + (minutesOf[id] ?? short), 0);
  return { minutes: steps + powerUps * tryMinutes, powerUps };
}
