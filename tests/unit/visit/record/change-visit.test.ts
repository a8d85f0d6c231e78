import { expect, test } from 'vitest';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import {
  answerStep,
  changeDetails,
  copyOf,
  newVisit,
  noteDecision,
} from '../../../../src/visit/record/change-visit.ts';
import { readVisit } from '../../../../src/visit/record/read-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import { questions, type VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import { at, failed } from './support/typical-visit.ts';

const fresh = newVisit('visit-0001', at(0));

test('a new visit fits, has no answers and was never saved', () => {
  expect(readVisit(fresh).ok).toBe(true);
  expect(fresh).toMatchObject({ revision: 0, seq: 0, machine: '', steps: {} });
});

test('each answer takes the next number, and so do a correction and a confirmation', () => {
  const one = answerStep(fresh, 'symptom', { form: { when: 'on-enable' } }, at(1));
  const two = answerStep(one, 'reconnect', { form: { done: 'yes' } }, at(2));
  const confirmed = answerStep(two, 'symptom', { form: { when: 'on-enable' } }, at(3));
  expect([one.steps.symptom?.seq, two.steps.reconnect?.seq, confirmed.steps.symptom?.seq]).toEqual([1, 2, 3]);
  expect(confirmed.seq).toBe(3);
});

test('a change does not modify the record before it', () => {
  const before = structuredClone(fresh);
  answerStep(fresh, 'symptom', { form: { when: 'on-enable' } }, at(1));
  changeDetails(fresh, { machine: 'Line 2' }, at(1));
  expect(fresh).toEqual(before);
});

test('each reading has the time when it was typed: kept while its text stays, new when it changes, gone when empty', () => {
  const readings = ['plusU', 'plusV', 'plusW'];
  const typed = { plusU: '482k', plusV: '495k', plusW: '488k', motorLeads: 'off' };
  const first = answerStep(fresh, 'bridge', { form: typed, readings }, at(1));
  const second = answerStep(first, 'bridge', { form: { ...typed, plusV: '496k', plusW: ' ' }, readings }, at(9));
  expect(first.steps.bridge?.readAt).toEqual({ plusU: at(1), plusV: at(1), plusW: at(1) });
  expect(second.steps.bridge?.readAt).toEqual({ plusU: at(1), plusV: at(9) });
});

test('a corrected step does not keep the snapshot of the old readings', () => {
  const judged = answerStep(fresh, 'bridge', { form: { plusU: '3 Ω' }, snapshot: failed }, at(1));
  expect(judged.steps.bridge?.snapshot).toEqual(failed);
  expect(answerStep(judged, 'bridge', { form: { plusU: '482k' } }, at(2)).steps.bridge).not.toHaveProperty('snapshot');
});

test('the decision carries the number that it rests on, so that a later answer shows it out of date', () => {
  const answered = answerStep(fresh, 'symptom', { form: {} }, at(1));
  const none = { sentences: [], replace: [], good: [], open: [], baseline: [] };
  const decided = noteDecision(answered, { kind: 'undecided', ...none }, at(2));
  expect(decided.decision?.seq).toBe(decided.seq);
  expect(answerStep(decided, 'symptom', { form: {} }, at(3)).seq).toBeGreaterThan(decided.decision?.seq ?? 0);
});

test('a copy has its own id and was never saved', () => {
  expect(copyOf({ ...fresh, revision: 7, machine: 'Line 2' }, 'visit-0002')).toMatchObject({
    id: 'visit-0002',
    revision: 0,
    machine: 'Line 2',
  });
});

/** The guide's answers to the steps that are not calculators. */
function answersOf({ steps }: VisitRecord): VisitAnswers {
  const ids = ['find-drive', 'symptom', 'lockout-1', 'inspect', 'disconnect-leads', 'support-axis'] as const;
  return Object.fromEntries(
    ids.flatMap((id) => {
      const step = steps[id];
      const answer = step && questions[id].read(step.form);
      return answer === undefined ? [] : [[id, { seq: step?.seq, answer }]];
    }),
  );
}

test('a clock set back by a year does not make a changed answer look older to the guide', () => {
  const looked = { observation: 'looked', axesOnDrive: '2', indicatedAxis: '1' };
  const lockedOut = {
    ...{ lockedOut: 'yes', waited: 'yes', meterProved: 'yes', peProved: 'yes' },
    ...{ supplyVoltage: '0 V', outputVoltage: '0 V', busVoltage: '0 V' },
  };
  const seen = { seenDrive: 'nothing', seenMotor: 'nothing', seenMotorCable: 'nothing', seenFeedbackCable: 'nothing' };
  let visit = answerStep(fresh, 'find-drive', { form: looked }, at(1));
  visit = answerStep(visit, 'symptom', { form: { when: 'on-enable', gravityLoaded: 'yes' } }, at(2));
  visit = answerStep(visit, 'lockout-1', { form: lockedOut }, at(3));
  visit = answerStep(visit, 'inspect', { form: { reseated: 'yes', ...seen } }, at(4));
  visit = answerStep(visit, 'disconnect-leads', { form: { done: 'yes' } }, at(5));
  visit = answerStep(visit, 'support-axis', { form: { done: 'yes' } }, at(6));
  expect(nextStep(answersOf(visit)).due).toBe('bridge');
  const yearEarlier = at(-525_600);
  const corrected = answerStep(visit, 'lockout-1', { form: lockedOut }, yearEarlier);
  expect(corrected.changedAt < visit.changedAt).toBe(true);
  expect(nextStep(answersOf(corrected))).toMatchObject({
    due: 'inspect',
    path: { 4: { id: 'inspect', status: 'check-again' } },
  });
});

test('the next number is higher even if one was raised by hand', () => {
  const answered = answerStep(fresh, 'symptom', { form: {} }, at(1));
  const edited = { ...answered, steps: { symptom: { ...answered.steps.symptom, seq: 40 } } } as VisitRecord;
  expect(answerStep(edited, 'reconnect', { form: { done: 'yes' } }, at(2)).steps.reconnect?.seq).toBe(41);
});
