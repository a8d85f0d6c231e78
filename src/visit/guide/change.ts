import type { Cause } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { ChangedThing } from '../steps/symptom/question.ts';

/**
 * A part or a parameter was changed before the first trip, and it trips with the control on. With the control off neither
 * phase order nor offset nor tuning counts.
 */
export function changeMatters(visit: VisitAnswers): boolean {
  const { changed, when } = visit.symptom?.answer ?? {};
  return changed === 'something' && when !== 'control-off';
}

/** Something differs from the state before the change and is not put right yet. */
export function changeWrong(visit: VisitAnswers): boolean {
  return visit['after-change']?.answer.found === 'wrong';
}

/** What a change most often leaves wrong, the most frequent first. Common practice, no source. */
const leftWrong: Record<ChangedThing, readonly Cause[]> = {
  motor: ['commutation', 'tuning', 'contact'],
  feedback: ['commutation', 'feedback-signal', 'contact'],
  drive: ['tuning', 'commutation', 'contact'],
  cable: ['commutation', 'contact', 'idle-core'],
  parameters: ['tuning', 'commutation'],
  load: ['load', 'tuning'],
};

/** The families of causes that follow from what was changed; none if the comparison found all as it should be. */
export function causesOfChange(visit: VisitAnswers): readonly Cause[] {
  if (!changeMatters(visit) || visit['after-change']?.answer.found === 'same') return [];
  const thing = visit.symptom?.answer.changedThing;
  return thing === undefined ? ['commutation', 'tuning'] : leftWrong[thing];
}
