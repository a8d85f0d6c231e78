import { describe, expect, test } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { wayAhead } from '../../../../src/visit/guide/ahead.ts';
import { minutesOf, minutesOfTry } from '../../../../src/visit/guide/minutes.ts';
import { driveOnly, motorAndCable, visitOf } from '../../../support/marrow-bay-visits.ts';
import { looked } from './support/answers.ts';
import { visitOf as visitOfAnswers } from './support/visit.ts';

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

describe('the steps that are left after the moment of the trip is known', () => {
  const at = (when: Symptom | 'unknown', gravityLoaded: 'no' | 'yes' = 'no', often = {}) =>
    wayAhead(visitOfAnswers([looked(), ['symptom', { when, gravityLoaded, ...often }]]));
  const leadsOff = 'lockout-1 inspect disconnect-leads';
  const byHand = `${leadsOff} mechanics bridge bus-again`;
  const end = 'reconnect retry-all';

  test.each<[Symptom | 'unknown', string, minutes: number]>([
    [
      'control-off',
      'lockout-1 inspect unplug-feedback retry-feedback-off lockout-2 unplug-device-end retry-device-end lockout-3 plug-feedback retry-feedback-on',
      76,
    ],
    ['on-enable', `${leadsOff} bridge bus-again winding retry-leads-off lockout-2 idle-cores insulation ${end}`, 101],
    ['on-acceleration', `${byHand} winding idle-cores insulation ${end}`, 94],
    // The bus is measured after the output stage and once more after the braking circuit.
    ['on-braking', `${byHand} braking bus-again winding idle-cores insulation ${end}`, 106],
    ['position-or-cable', `${byHand} winding bend-test idle-cores insulation isolation ${end}`, 149],
    ['when-hot', `${byHand} winding idle-cores insulation ${end}`, 94],
    ['now-and-then', `${byHand} winding idle-cores insulation ${end}`, 94],
    ['unknown', `${byHand} braking bus-again winding bend-test idle-cores insulation isolation ${end}`, 161],
  ])('%s: %s', (when, steps, minutes) => {
    expect(at(when)?.steps.join(' ')).toBe(steps);
    expect(at(when)?.minutes).toBe(minutes);
  });

  test('a support comes first, and each step with power takes as many tries as its trip needs', () => {
    expect(at('on-enable', 'yes')?.steps[0]).toBe('support-axis');
    // 10 min for the support, and two more tries of 4 min at each of two steps with power.
    expect(at('on-enable', 'yes', { came: 5, of: 5 })?.minutes).toBe(101 + 10 + 2 * 2 * 4);
  });
});
