import { expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { wayAhead } from '../../../../src/visit/guide/ahead.ts';
import { minutesOf, minutesOfTry } from '../../../../src/visit/guide/minutes.ts';
import { driveOnly, motorAndCable, visitOf } from '../../../support/marrow-bay-visits.ts';

// The minutes of each step are project judgement (content/field/minutes.json).

const now = '2026-03-03T08:00:00+01:00';
const answersOf = (entries: Parameters<typeof visitOf>[0]) => evaluate(visitOf(entries), now).answers;

test('from the start: the whole way on which everything passes, each step once', () => {
  const ahead = wayAhead({});
  expect(ahead?.steps[0]).toBe('find-drive');
  expect(ahead?.steps).toEqual(expect.arrayContaining(['lockout-1', 'bridge', 'winding', 'insulation', 'retry-all']));
  expect(new Set(ahead?.steps).size).toBe(ahead?.steps.length);
});

test('the minutes are those of the steps, and of one try for each with power', () => {
  const { steps = [], minutes = 0 } = wayAhead({}) ?? {};
  const tries = steps.filter((id) => id.startsWith('retry-')).length;
  expect(tries).toBeGreaterThan(0);
  expect(minutes).toBe(steps.reduce((sum, id) => sum + minutesOf(id), 0) + tries * minutesOfTry);
});

test('it grows shorter with each answer of a visit on which everything passes, and begins with the step that is due', () => {
  const sound = motorAndCable.slice(0, 9);
  let before = Number.POSITIVE_INFINITY;
  for (let taken = 2; taken <= sound.length; taken++) {
    const { guide, answers } = evaluate(visitOf(sound.slice(0, taken)), now);
    const ahead = wayAhead(answers);
    expect(ahead?.steps[0]).toBe(guide.due);
    expect(ahead?.minutes).toBeLessThan(before);
    before = ahead?.minutes ?? 0;
  }
});

test('with a decision nothing is ahead', () => {
  const entries = driveOnly.filter(([id]) => id !== 'retry-leads-off' && id !== 'lockout-2');
  const { guide, answers } = evaluate(visitOf(entries), now);
  const ahead = wayAhead(answers);
  if (guide.decision !== undefined) expect(ahead).toBeUndefined();
  else expect(ahead?.steps[0]).toBe(guide.due);
});

test('a bad output stage leaves no step with power on the way ahead', () => {
  const stage = driveOnly.filter(([id]) => id !== 'retry-leads-off' && id !== 'lockout-2').slice(0, 7);
  const ahead = wayAhead(answersOf(stage));
  expect(ahead?.steps.filter((id) => id.startsWith('retry-') || id === 'reconnect')).toEqual([]);
});
