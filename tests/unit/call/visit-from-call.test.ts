import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { callFields, readCall } from '../../../src/call/form.ts';
import { visitFromCall } from '../../../src/call/visit-from-call.ts';
import { fieldId } from '../../../src/kernel/link/schema-parts.ts';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { readVisit } from '../../../src/visit/record/read-visit.ts';
import { questions } from '../../../src/visit/steps/questions.ts';
import { anyCallForm } from './any-call.ts';

const called = '2026-03-03T05:50:00+01:00';
const arrived = '2026-03-03T08:10:00+01:00';
const begin = (form: Record<string, string>) => visitFromCall(form, 'marrow-bay-call', arrived, called);

/** Invented, like everything of Marrow Bay. */
const lift = {
  machine: 'Marrow Bay line 2 (invented)',
  axis: 'Lift',
  message: 'OVERCURRENT, AXIS 3',
  when: 'on-enable',
  gravityLoaded: 'yes',
  came: '3',
  of: '3',
  beforeMotorChanged: 'yes',
  seenCableDamaged: 'yes',
  seenWords: 'at the last clamp',
  triedLeadsOff: 'trips',
  resets: '4',
  caller: 'Ines, night shift',
};

test('the visit has the names, the message, and what was said as notes', () => {
  const visit = begin(lift);
  expect(visit).toMatchObject({
    machine: lift.machine,
    axis: 'Lift',
    controllerMessage: lift.message,
    createdAt: arrived,
  });
  expect(visit.notes).toBe(
    [
      'Reported on the phone, 2026-03-03, 05:50, not measured.',
      'By: Ines, night shift.',
      'Before: the motor was exchanged before.',
      'Seen: the motor cable is damaged, at the last clamp.',
      'Tried: it is said to trip without the motor too, reset and started 4 times.',
    ].join('\n'),
  );
  expect(visit.reported).toEqual({
    at: called,
    steps: {
      symptom: {
        when: 'on-enable',
        gravityLoaded: 'yes',
        came: '3',
        of: '3',
        changed: 'motor',
      },
    },
  });
});

test('what was reported is an answer of the symptom step once it is confirmed, and not before', () => {
  const visit = begin(lift);
  const now = evaluate(visit, arrived);
  expect(visit.steps).toEqual({});
  expect(now.answers).toEqual({});
  expect(now.guide.due).toBe('find-drive');
  expect(questions.symptom.read(visit.reported?.steps.symptom ?? {})).toEqual({
    ...{ when: 'on-enable', gravityLoaded: 'yes', came: 3, of: 3, changed: 'something', changedThing: 'motor' },
  });
});

test('a moment that nobody saw is reported as such', () => {
  expect(begin({ when: 'unknown' }).reported?.steps.symptom).toEqual({ when: 'unknown' });
});

test('that it came once is reported, unless the numbers say otherwise', () => {
  const reported = (form: Record<string, string>) => begin({ when: 'on-enable', again: 'once', ...form }).reported;
  expect(reported({})?.steps.symptom).toMatchObject({ once: 'yes' });
  expect(reported({ came: '1', of: '1' })?.steps.symptom).toMatchObject({ once: 'yes' });
  expect(reported({ came: '1', of: '6' })?.steps.symptom).not.toHaveProperty('once');
});

describe('every answer of the call is in the visit', () => {
  const answers = callFields.flatMap((field): [string, string][] => {
    if (field.kind === 'tick') return [[field.id, 'yes']];
    if (field.kind !== 'choice') return [[field.id, '3']];
    const said = field.options.filter(
      ({ value }) => value !== 'not-tried' && (value !== 'unknown' || field.id === 'when'),
    );
    return said.map(({ value }): [string, string] => [field.id, value]);
  });
  test.each(answers)('%s: %s', (id, value) => {
    expect(begin({ [id]: value })).not.toEqual(begin({}));
  });
});

describe('any call', () => {
  test('gives a visit that can be read, without an answer, a reading or a decision', () => {
    fc.assert(
      fc.property(anyCallForm, (form) => {
        const visit = begin(form);
        expect(readVisit(JSON.parse(JSON.stringify(visit)))).toEqual({ ok: true, value: visit });
        expect(evaluate(visit, arrived).answers).toEqual({});
        expect(visit).not.toHaveProperty('decision');
      }),
    );
  });

  test('reads any text without failing, as not said', () => {
    const texts = fc.record(Object.fromEntries(callFields.map(({ id }) => [id, fc.string()])));
    fc.assert(
      fc.property(texts, (form) => {
        expect(readCall(form).moment).toBeUndefined();
      }),
    );
  });
});

test('the ids of all fields can be stored', () => {
  expect(callFields.filter(({ id }) => !fieldId.safeParse(id).success)).toEqual([]);
  expect(new Set(callFields.map(({ id }) => id)).size).toBe(callFields.length);
});
