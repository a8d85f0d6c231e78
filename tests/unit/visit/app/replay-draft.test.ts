import { expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import {
  type Entry,
  locked,
  motorAndCable,
  nothingSeen,
  retried,
  visitOf,
} from '../../../support/marrow-bay-visits.ts';
import { replayDraft } from '../../../support/visit-records.ts';

const at = (time: string) => `2026-03-03T${time}:00+01:00`;

/** Trips on enable, and no axis can fall; the retry without the motor is next. */
const toTheRetry: Entry[] = [
  ...motorAndCable.slice(0, 1),
  ['symptom', { when: 'on-enable', gravityLoaded: 'no' }],
  ['lockout-1', locked],
  ['inspect', nothingSeen],
  ['disconnect-leads', { done: 'yes' }],
];
const visit = visitOf(toTheRetry);

test('a lockout typed before power does not count after it, whichever of the two was begun first', () => {
  const steps = {
    // Begun before the lockout as "not done", changed after it.
    'retry-leads-off': { form: retried('no-trip'), at: at('06:35') },
    'lockout-2': { form: locked, at: at('06:30') },
  };
  const replayed = replayDraft(visit, { count: 20, steps });
  expect(evaluate(replayed, at('06:36')).guide.path.at(-1)).toMatchObject({ id: 'lockout-2' });
});

test('a proof typed before something that another window has saved does not count now', () => {
  const powered = visitOf([...toTheRetry, ['retry-leads-off', retried('no-trip')]]);
  const replayed = replayDraft(powered, { count: 9, steps: { 'lockout-2': { form: locked, at: at('06:22') } } });
  expect(replayed.steps['lockout-2']?.form).toEqual(locked);
  expect(evaluate(replayed, at('06:25')).guide.due).toBe('prove-again');
});

test('what was typed last continues the same stretch of work', () => {
  const replayed = replayDraft(visit, {
    count: 4,
    steps: { 'retry-leads-off': { form: retried('no-trip'), at: at('06:25') } },
  });
  expect(evaluate(replayed, at('06:26')).guide.due).toBe('lockout-2');
  expect(replayed.stretch).toBe(1);
});
