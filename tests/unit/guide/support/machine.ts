import type { LockoutAnswer, StepId } from '../../../../src/guide/answers.ts';
import type { Given } from './visit.ts';

/**
 * The machine as the history of answers leaves it, worked out again from issue 4 and not from the guide: what is
 * dangerous is told from the order of events alone, whatever the guide thinks of its path.
 */
export interface Machine {
  /** Locked out, waited, meter proved and the bus measured low, since the last power. */
  safe: boolean;
  mayFall: boolean;
  supported: boolean;
  /** The feedback connectors of this axis are plugged in at both ends. */
  feedbackIn: boolean;
}

export const touching: ReadonlySet<StepId> = new Set<StepId>([
  'inspect',
  'unplug-feedback',
  'unplug-device-end',
  'plug-feedback',
  'mechanics',
  'disconnect-leads',
  'bridge',
  'insulation',
  'isolation',
  'winding',
  'winding-motor',
  'reconnect',
]);
export const powering: ReadonlySet<StepId> = new Set<StepId>([
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-all',
]);

/** The touch voltage of the regulation (29 CFR 1910.333), typed here once more on purpose: the checker trusts nothing. */
const touchVoltage = 50;

function isSafe({ lockedOut, waited, meterProved, busVoltage }: LockoutAnswer): boolean {
  return lockedOut && waited && meterProved && busVoltage.kind === 'value' && busVoltage.value < touchVoltage;
}

export function machineAfter(history: readonly Given[]): Machine {
  const machine: Machine = { safe: false, mayFall: true, supported: false, feedbackIn: true };
  for (const [id, answer] of history) {
    if (id.startsWith('lockout')) machine.safe = isSafe(answer as LockoutAnswer);
    if (id === 'symptom') machine.mayFall = answer.gravityLoaded !== 'no';
    if (id === 'support-axis') machine.supported = answer.done;
    if ((id === 'unplug-feedback' || id === 'unplug-device-end') && answer.done) machine.feedbackIn = false;
    if (id === 'plug-feedback' && answer.done) machine.feedbackIn = true;
    if ('result' in answer && answer.result !== 'not-done') machine.safe = false;
    // A bus that is found charged later says that the lockout does not hold.
    if (id === 'bridge' && answer.assessment.findings.some(({ severity }) => severity === 'stop')) machine.safe = false;
  }
  return machine;
}
