import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepIds } from '../../../src/visit/steps/ids.ts';
import { isAsked, questions } from '../../../src/visit/steps/questions.ts';
import { waitsOf } from '../../../src/visit/steps/waits.ts';
import { clockFace, secondsLeft, type Wait } from '../../../src/visit/waiting.ts';

const wait = (minutes: number, startedAt = 0): Wait => ({
  id: 'label',
  name: 'A wait',
  after: 'Measure.',
  minutes,
  startedAt,
});

test.each([
  [0, '5:00'],
  [1, '5:00'],
  [1000, '4:59'],
  [299_001, '0:01'],
  [300_000, '0:00'],
  [900_000, '0:00'],
  // The clock was set back: the whole wait again.
  [-60_000, '5:00'],
])('of five minutes, %i ms after the start %s is left', (now, shown) => {
  expect(clockFace(secondsLeft(wait(5), now))).toBe(shown);
});

test('a wait is never over early, whatever the clock does', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.integer(), fc.integer(), (minutes, startedAt, now) => {
      const left = secondsLeft(wait(minutes, startedAt), now);
      expect(left).toBeLessThanOrEqual(minutes * 60);
      if (now - startedAt < minutes * 60_000) expect(left).toBeGreaterThan(0);
    }),
  );
});

test('each lockout, each test, each try with power and the hot resistor have their waits', () => {
  const kinds = Object.fromEntries(stepIds.map((id) => [id, waitsOf(id).map((kind) => kind.id)]));
  expect(kinds).toMatchObject({
    'lockout-1': ['label'],
    'prove-again': ['label'],
    insulation: ['test', 'discharge'],
    isolation: ['test', 'discharge'],
    braking: ['resistor'],
    'retry-all': ['between-tries'],
    bridge: [],
  });
});

test('a wait that has passed answers nothing: no field of a step knows it', () => {
  const fields = stepIds.filter(isAsked).flatMap((id) => questions[id].fields.map((field) => field.id));
  expect(fields.filter((id) => /timer|wait-|minutes/i.test(id))).toEqual([]);
});
