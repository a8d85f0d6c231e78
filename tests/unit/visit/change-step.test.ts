import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { readVisit } from '../../../src/visit/record/read-visit.ts';
import { withoutSnapshots } from '../../../src/visit/record/share.ts';
import {
  badInsulation,
  driveOnly,
  motorAndCable,
  soundInsulation,
  visitOf,
  withBusAgain,
} from '../../support/marrow-bay-visits.ts';
import { completed, confirmStep, enterStep } from '../../support/visit-records.ts';

const later = '2026-03-03T06:58:00+01:00';
const visit = visitOf(withBusAgain(motorAndCable));
const seq = (of: typeof visit, id: 'insulation' | 'isolation') => of.steps[id]?.seq ?? 0;
const stateOf = (of: typeof visit) => evaluate(of, of.changedAt).guide;

describe('a step that is entered', () => {
  test('takes the next number', () => {
    expect(Object.values(visit.steps).map((step) => step?.seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(visit.seq).toBe(12);
  });

  test('with the same form leaves the visit as it is', () => {
    expect(enterStep(visit, 'insulation', { ...badInsulation }, later)).toBe(visit);
    expect(enterStep(visit, 'insulation', { ...badInsulation, ambient: '' }, later)).toBe(visit);
  });

  test('with another answer takes a new number, and later steps that rest on it must be confirmed', () => {
    const changed = enterStep(visit, 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(seq(changed, 'insulation')).toBe(13);
    expect(stateOf(changed)).toMatchObject({ due: 'isolation', decision: undefined });
    expect(stateOf(changed).path.at(-1)).toEqual({ id: 'isolation', status: 'check-again' });
  });

  test('in another spelling keeps its number: later steps still hold', () => {
    const respelt = enterStep(visit, 'insulation', { ...badInsulation, U: '1,1 MΩ' }, later);
    expect(respelt.steps.insulation?.form.U).toBe('1,1 MΩ');
    expect(seq(respelt, 'insulation')).toBe(seq(visit, 'insulation'));
    expect(respelt.seq).toBe(visit.seq);
    expect(stateOf(respelt).decision?.kind).toBe('replace');
  });

  test('with only a new remark keeps its number', () => {
    const form = { ...visit.steps.inspect?.form, remark: 'Photograph 12.' };
    const remarked = enterStep(visit, 'inspect', form, later);
    expect(remarked.steps.inspect).toMatchObject({ seq: visit.steps.inspect?.seq, form: { remark: 'Photograph 12.' } });
  });

  test('keeps the time of an unchanged reading, and gives a changed one a new time', () => {
    const before = visit.steps.insulation?.readAt ?? {};
    const changed = enterStep(visit, 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(changed.steps.insulation?.readAt).toEqual({ ...before, U: later });
    expect(Object.keys(before)).toContain('windingTemperature');
    expect(Object.keys(before)).not.toContain('occasion');
  });
});

test('a step that is confirmed takes a new number and changes nothing else', () => {
  const changed = enterStep(visit, 'insulation', { ...badInsulation, U: '1.4M' }, later);
  const confirmed = confirmStep(changed, 'isolation', later);
  expect(seq(confirmed, 'isolation')).toBe(14);
  expect(confirmed.steps.isolation?.form).toEqual(visit.steps.isolation?.form);
  expect(stateOf(confirmed).decision?.replace.map(({ part }) => part)).toEqual(['motor', 'motor-cable']);
});

test('a step that was never answered can’t be confirmed', () => {
  expect(confirmStep(visit, 'winding-motor', later)).toBe(visit);
});

describe('the decision', () => {
  test('is stored in the record in the sentences of the screen', () => {
    expect(visit.decision).toMatchObject({ kind: 'replace', seq: 12, good: ['drive'] });
    expect(visit.decision?.sentences[0]).toBe('Replace: motor and motor cable.');
  });

  test('is removed when it no longer holds, and returns', () => {
    const open = enterStep(visit, 'insulation', { ...soundInsulation, U: '1.4M' }, later);
    expect(open.decision).toBeUndefined();
    expect(confirmStep(open, 'isolation', later).decision?.kind).toBe('replace');
  });
});

test.each([
  ['drive only', visitOf(driveOnly)],
  ['motor with its cable', visit],
])('a visit from a link is completed to what the sender had: %s', (_name, sent) => {
  const got = completed(withoutSnapshots(sent), sent.decision?.at ?? later);
  expect(got).toEqual(sent);
  expect(readVisit(got)).toEqual({ ok: true, value: got });
});
