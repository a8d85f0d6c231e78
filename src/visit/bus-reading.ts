import type { EvaluatedVisit } from './evaluate.ts';
import { busReadingFor } from './guide/dead-proofs.ts';

/** The last bus reading if it still holds: its text, and its ISO time. */
export function busReading({ visit, answers }: EvaluatedVisit): { value: string; at: string } | undefined {
  const id = busReadingFor(answers, 'bridge');
  const step = id && visit.steps[id];
  const value = step?.form.busVoltage ?? '';
  return step === undefined || value === '' ? undefined : { value, at: step.readAt.busVoltage ?? step.at };
}
