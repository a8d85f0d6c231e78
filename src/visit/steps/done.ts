import { choice, chosen, type Form } from './fields.ts';
import { lineOf, type Question } from './question.ts';

/** Answer to a step that is a piece of work. */
export interface DoneAnswer {
  done: boolean;
}

const done = choice('done', 'Is it done?', { yes: 'Done', no: 'Not yet' });

/** The question of every such step. */
export const askDone: Pick<Question<DoneAnswer>, 'fields' | 'read' | 'line'> = {
  fields: [done],
  read: (form: Form) => {
    const answer = chosen(form, done);
    return answer && { done: answer === 'yes' };
  },
  line: lineOf([done]),
};

export const doneProblems = { 'not-done': 'Confirm when it is done.' };

export const notDone = ({ done: isDone }: DoneAnswer) => (isDone ? undefined : ('not-done' as const));
