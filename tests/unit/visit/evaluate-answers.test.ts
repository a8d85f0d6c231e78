import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { evaluateForm } from '../../../src/visit/evaluate-form.ts';
import { decide } from '../../../src/visit/guide/decision.ts';
import { answerStep } from '../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../src/visit/record/visit-schema.ts';
import { stepIds } from '../../../src/visit/steps/ids.ts';
import type { MeasuredStepId } from '../../../src/visit/steps/questions.ts';
import { liftVisit } from '../calculators/visits.ts';
import { at, typicalVisit } from './record/support/typical-visit.ts';

const visit = typicalVisit();

describe('a whole visit', () => {
  test('leads the guide from what was typed to the decision: drive and motor', () => {
    const state = evaluate(visit, visit.changedAt).guide;
    expect(state.decision).toMatchObject({
      kind: 'replace',
      replace: [{ part: 'drive' }, { part: 'motor' }],
      suspect: [],
    });
  });

  test('keeps the numbers of its answers', () => {
    const answers = evaluate(visit, visit.changedAt).answers;
    for (const id of stepIds) expect(answers[id]?.seq).toBe(visit.steps[id]?.seq);
  });

  test('ignores its snapshots', () => {
    const lie = { verdict: 'go' as const, sentences: ['All is well.'], limits: [] };
    const steps = Object.fromEntries(Object.entries(visit.steps).map(([id, step]) => [id, { ...step, snapshot: lie }]));
    expect(evaluate({ ...visit, steps } as VisitRecord, visit.changedAt).answers).toEqual(
      evaluate(visit, visit.changedAt).answers,
    );
  });

  test('stops at the step whose reading can’t be read', () => {
    const form = { ...visit.steps.bridge?.form, plusU: 'about half' };
    const broken = answerStep(visit, 'bridge', { form }, at(125));
    expect(evaluate(broken, broken.changedAt).answers.bridge).toBeUndefined();
    expect(evaluate(broken, broken.changedAt).guide).toMatchObject({ due: 'bridge', decision: undefined });
  });
});

describe('a calculator’s step', () => {
  const verdict = (id: MeasuredStepId, form: Record<string, string>) =>
    evaluateForm(id, form).answer?.assessment?.verdict;

  test.each([
    ['bridge', liftVisit('bridge'), 'no-go'],
    ['insulation', liftVisit('insulation'), 'no-go'],
    ['isolation', liftVisit('isolation'), 'no-go'],
    ['winding', { UV: '1.82 Ω', VW: '1.83 Ω', WU: '1.82 Ω', leads: 'four' }, 'go'],
    ['winding-motor', { UV: '1.82 Ω', VW: 'OL', WU: '1.82 Ω' }, 'no-go'],
    ['winding', { UV: '1.82 Ω' }, 'undecided'],
  ] as const)('%s %j: %s', (id, form, expected) => {
    expect(verdict(id, form)).toBe(expected);
  });

  test('shows what the accuracy of the instrument leaves open', () => {
    const close = { UV: '1.80 Ω', VW: '1.82 Ω', WU: '1.82 Ω', leads: 'four' };
    expect(verdict('winding', close)).toBe('go');
    expect(verdict('winding', { ...close, accuracyPercent: '5 %' })).toBe('undecided');
  });

  test('that is blank has no answer, unless it is left open: then all readings are missing', () => {
    for (const id of ['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const) {
      expect(evaluateForm(id, {}).answer).toBeUndefined();
      expect(evaluateForm(id, { leftOpen: '' }).answer).toBeUndefined();
      expect(evaluateForm(id, { leftOpen: 'yes' }).answer).toMatchObject({
        leftOpen: true,
        assessment: { verdict: 'undecided' },
      });
    }
  });

  test('that can’t be read has no answer, even if it is left open', () => {
    expect(evaluateForm('winding', { UV: 'one', leftOpen: 'yes' }).answer).toBeUndefined();
    expect(evaluateForm('bridge', { ...liftVisit('bridge'), motorLeads: 'perhaps' }).answer).toBeUndefined();
  });

  test('judges insulation by the limit after a trip, even if the record was edited to another occasion', () => {
    const form = { ...liftVisit('insulation'), U: '20 MΩ', V: '20 MΩ', W: '20 MΩ', windingTemperature: '40 °C' };
    const afterTrip = evaluateForm('insulation', { ...form, occasion: 'after-trip' }).answer;
    expect(evaluateForm('insulation', { ...form, occasion: 'routine' }).answer).toEqual(afterTrip);
    expect(evaluateForm('insulation', { ...form, occasion: '' }).answer).toEqual(afterTrip);
    expect(afterTrip?.assessment.verdict).not.toBe('go');
  });
});

test('a visit with every step left open decides nothing', () => {
  const open = (['bridge', 'insulation', 'isolation', 'winding'] as const).reduce(
    (one, id) => answerStep(one, id, { form: { leftOpen: 'yes' } }, at(1)),
    { ...visit, steps: {} } as VisitRecord,
  );
  const answers = evaluate(open, open.changedAt).answers;
  expect(decide(answers, answers)).toMatchObject({ kind: 'undecided', replace: [], good: [] });
});
