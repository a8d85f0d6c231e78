import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { StepProblem } from '../problems.ts';
import type { Rule } from '../rule.ts';
import type { BusAnswer, DeadProofId, LockoutAnswer } from './question.ts';

/** Why this answer does not show that the drive is dead; undefined if it does. Every point must be below the limit. */
export function lockoutProblem(answer: LockoutAnswer): StepProblem | undefined {
  if (!answer.lockedOut) return 'not-locked-out';
  if (!answer.waited) return 'not-waited';
  if (!answer.meterProved) return 'meter-not-proved';
  if (!answer.peProved) return 'pe-not-proved';
  return (
    voltageProblem(answer.supplyVoltage, 'supply-not-measured', 'supply-live') ??
    voltageProblem(answer.outputVoltage, 'output-not-measured', 'output-live') ??
    voltageProblem(answer.busVoltage, 'bus-not-measured', 'bus-not-discharged')
  );
}

export function busProblem({ meterProved, busVoltage }: BusAnswer): StepProblem | undefined {
  if (!meterProved) return 'meter-not-proved';
  return voltageProblem(busVoltage, 'bus-not-measured', 'bus-not-discharged');
}

function voltageProblem(reading: Reading, missing: StepProblem, live: StepProblem): StepProblem | undefined {
  const { code } = judgeDischarge(reading);
  if (code === 'bus-not-measured') return missing;
  return code === 'bus-not-discharged' ? live : undefined;
}

export const lockoutRule: Rule<DeadProofId> = { holdsOneStretch: true, problem: lockoutProblem };

export const busAgainRule: Rule<'bus-again'> = { holdsOneStretch: true, problem: busProblem };
