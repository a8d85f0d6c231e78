import type { EvaluatedVisit } from './evaluate.ts';
import { busReadingFor } from './guide/dead-proofs.ts';
import type { StepRecord } from './record/visit-schema.ts';
import { busPoints, highestOf } from './steps/lockout/points.ts';

/** The last bus reading if it still holds: its text, and its ISO time. */
export function busReading({ visit, answers }: EvaluatedVisit): { value: string; at: string } | undefined {
  const id = busReadingFor(answers, 'bridge');
  return busTyped(id && visit.steps[id]);
}

/** The highest reading of the bus in a step, and when it was typed. */
export function busTyped(step: StepRecord | undefined): { value: string; at: string } | undefined {
  const highest = step && highestOf(step.form, busPoints);
  return step && highest && { value: highest.text, at: step.readAt[highest.id] ?? step.at };
}
