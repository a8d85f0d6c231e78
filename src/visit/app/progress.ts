import { shownTime } from '../../kernel/time/iso-time.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';

/** How far a visit has come, in words: when it was last changed, how many steps are answered, which one last. */
export function visitProgress({ changedAt, steps, decision }: VisitRecord): string {
  const answered = Object.entries(steps).flatMap(([id, step]) => (step ? [{ id: id as StepId, seq: step.seq }] : []));
  const last = answered.sort((a, b) => b.seq - a.seq)[0];
  const count = `${answered.length} ${answered.length === 1 ? 'step' : 'steps'} answered`;
  return [
    `changed ${shownTime(changedAt)}`,
    count,
    ...(last === undefined ? [] : [`last “${questions[last.id].title}”`]),
    ...(decision === undefined ? [] : ['decision reached']),
  ].join(', ');
}
