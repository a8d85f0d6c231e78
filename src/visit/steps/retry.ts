import { choice, chosen, type Form, tick, ticked } from './fields.ts';
import { lineOf, type Question } from './question.ts';

/** A retry with power. `powerAllowed` is asked each time; without it the retry is `not-done`. */
export interface RetryAnswer {
  powerAllowed: boolean;
  result: 'trips' | 'no-trip' | 'not-done';
}

const powerAllowed = tick(
  'powerAllowed',
  'I am qualified and permitted to switch on. Covers are shut, and nobody is near the machine.',
);
const result = choice<RetryAnswer['result']>('result', 'What happened?', {
  trips: 'It trips again',
  'no-trip': 'No trip',
  'not-done': { label: 'Not done', hint: 'The decision lists it as open.' },
});
const fields = [powerAllowed, result];

/** The question of every step with power. */
export const askRetry: Pick<Question<RetryAnswer>, 'danger' | 'fields' | 'read' | 'line'> = {
  danger: true,
  fields,
  read: (form: Form) => {
    const answer = chosen(form, result);
    return answer && { powerAllowed: ticked(form, 'powerAllowed'), result: answer };
  },
  line: lineOf(fields),
};

export const powerCaution =
  'This step needs power. Covers shut, nobody near the machine, and only if you are qualified and permitted to switch on.';

export const enableCaution =
  'This step needs power and enables the axis. Releasing the stop opens the brake. Covers shut, nobody in reach of any motion, and only if you are qualified and permitted.';

export const retryProblems = {
  'power-not-allowed':
    'A result needs power, and you have not confirmed that you may switch on. Confirm it, or choose “not done”.',
};

export const retriedWithoutPermit = ({ powerAllowed: allowed, result: answer }: RetryAnswer) =>
  !allowed && answer !== 'not-done' ? ('power-not-allowed' as const) : undefined;
