import type { TextField } from '../../kernel/form/field.ts';
import { limitRange } from '../../kernel/limits.ts';
import { type Choice, choice, chosen, count, digits, type Form, textOf, tick, ticked } from './fields.ts';
import type { Question } from './question.ts';

/** The steps with power. */
export type PowerStepId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-stripped'
  | 'retry-all';

/**
 * A retry with power. `powerAllowed` is asked each time; without it the retry is `not-done`. `stage`: when the same message
 * came. `tries`: how often it was tried, once if absent; `trips`: how often the same message came. `asItTrips`: tried in the
 * state in which it tripped.
 */
export interface RetryAnswer {
  powerAllowed: boolean;
  result: 'trips' | 'other-message' | 'no-trip' | 'not-done';
  stage?: 'at-power' | 'at-enable' | 'moving';
  tries?: number;
  trips?: number;
  asItTrips?: boolean;
}

const powerAllowed = tick(
  'powerAllowed',
  'I am qualified and permitted to switch on. Covers are shut, and nobody is near the machine.',
);
const resultOf = (noTrip: string) =>
  choice<RetryAnswer['result']>('result', 'What happened?', {
    trips: { label: 'It trips again', hint: 'With the same message, at least once.' },
    'no-trip': { label: 'No trip', hint: noTrip },
    'other-message': {
      label: 'It stops with another message',
      hint: 'It may have stopped before the trip could come. Write it down.',
    },
    'not-done': { label: 'Not done', hint: 'The decision lists it as open.' },
  });
const result = resultOf('In none of the tries.');
const resultControlOff = resultOf('In none of the tries. A message of missing feedback alone is no trip.');
const stage = choice<NonNullable<RetryAnswer['stage']>>('stage', 'If it trips: when did the message come?', {
  'at-power': 'When the power came on',
  'at-enable': 'At the enable, the axis at rest',
  moving: 'While it moved',
});
const tries = digits('tries', 'How often did you try?', 'A number. Empty counts as once.');
const trips = digits('trips', 'How often did the same message come?', 'A number. Empty counts as once, if it trips.');

const asItTrips = tick(
  'asItTrips',
  'I tried it in the state in which it tripped: as warm, at that position, with that motion and load.',
);

/** The question of the steps with power that enable the axis without its motor. */
export const askRetry = retryQuestion(result, [powerAllowed, result, stage, tries, trips]);

/** The question of the trial of the whole axis. */
export const askRetryAll = retryQuestion(result, [powerAllowed, result, stage, tries, trips, asItTrips]);

/** The question of every step with power and the control off: a trip there came when the power came on. */
export const askRetryControlOff = retryQuestion(resultControlOff, [powerAllowed, resultControlOff, tries, trips]);

function retryQuestion(
  happened: Choice<RetryAnswer['result']>,
  fields: Question<RetryAnswer>['fields'],
): Pick<Question<RetryAnswer>, 'danger' | 'fields' | 'read' | 'line'> {
  const asksStage = fields.includes(stage);
  const read = (form: Form): RetryAnswer | undefined => {
    const answer = chosen(form, happened);
    if (answer === undefined) return undefined;
    const at = asksStage ? chosen(form, stage) : 'at-power';
    const [tried, came] = [numberIn(form, tries), numberIn(form, trips, 0)];
    return {
      ...{ powerAllowed: ticked(form, 'powerAllowed'), result: answer },
      ...(answer === 'trips' && at !== undefined && { stage: at }),
      ...(tried !== undefined && { tries: tried }),
      ...(came !== undefined && { trips: came }),
      ...(fields.includes(asItTrips) && ticked(form, asItTrips.id) && { asItTrips: true }),
    };
  };
  return { danger: true, fields, read, line: (form) => lineOf(read(form)) };
}

function numberIn(form: Form, field: TextField, from = limitRange('entry-tries').from): number | undefined {
  return textOf(form, field.id).trim() === ''
    ? undefined
    : count(form, field.id, { ...limitRange('entry-tries'), from });
}

const stageInLine = { 'at-power': 'at power-on', 'at-enable': 'at the enable', moving: 'moving' };

function lineOf(answer: RetryAnswer | undefined): string {
  if (answer === undefined) return '';
  const { result: happened, stage: at, tries: tried = 1, trips: came = 1 } = answer;
  const of = tried === 1 ? '' : `, ${tried} tries`;
  switch (happened) {
    case 'trips':
      return `It trips again${at === undefined ? '' : ` ${stageInLine[at]}`}${tried === 1 ? '' : `, ${came} of ${tried} tries`}`;
    case 'no-trip':
      return `No trip${of}`;
    case 'other-message':
      return `It stops with another message${of}`;
    case 'not-done':
      return 'Not done';
  }
}

export const powerCaution =
  'This step needs power. Covers shut, nobody near the machine, and only if you are qualified and permitted to switch on.';

export const enableCaution =
  'This step needs power and enables the axis. Releasing the stop opens the brake. Covers shut, nobody in reach of any motion, and only if you are qualified and permitted.';

/** For each step that switches on several times. */
export const betweenTries =
  'Between two tries wait as long as the manual asks for between switching off and on: the charging circuit must cool.';

/** For each first enable after work. */
export const lowLimits =
  'Before the enable: write down the limits of torque, speed and following error, then set them low. Put them back at the end.';

export const retryProblems = {
  'power-not-allowed':
    'A result needs power, and you have not confirmed that you may switch on. Confirm it, or choose “not done”.',
  'tries-contradict':
    'The numbers do not fit what happened: it can’t trip more often than you tried, nor trip without one, nor not trip with one. Correct them.',
};

/** Why the answer to a step with power does not suffice. */
export function retryProblem(answer: RetryAnswer): keyof typeof retryProblems | undefined {
  const { powerAllowed: allowed, result: happened, tries: tried = 1, trips: came } = answer;
  if (!allowed && happened !== 'not-done') return 'power-not-allowed';
  if (happened === 'not-done' || came === undefined) return undefined;
  const fits = happened === 'trips' ? came >= 1 && came <= tried : came === 0;
  return fits ? undefined : 'tries-contradict';
}
