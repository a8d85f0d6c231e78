import { shownTime } from '../../kernel/time/iso-time.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { StepId } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';
import { baselineTexts } from '../words/baseline.ts';
import { decisionHeadline } from '../words/decision.ts';

/** The name of a visit: machine and axis, if they are noted. */
export function visitTitle({ machine, axis }: Pick<VisitRecord, 'machine' | 'axis'>): string {
  const title = [machine, axis]
    .map((part) => part.trim())
    .filter(Boolean)
    .join(', ');
  return title === '' ? 'Visit without a name' : title;
}

/** The progress of a visit in words: last change, number of answered steps, the last of them. */
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

/** The decision, or the step that is due. */
export function visitState({ guide: { decision, due, path, baseline } }: EvaluatedVisit): string {
  if (decision !== undefined) return decisionHeadline(decision);
  if (baseline !== undefined && due === undefined) return `${baselineTexts.headline[baseline]}.`;
  return due === undefined ? '' : `Step ${path.length} is due: ${questions[due].title}.`;
}
