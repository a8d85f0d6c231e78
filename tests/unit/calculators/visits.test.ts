import { describe, expect, test } from 'vitest';
import { isolationInput } from '../../../src/calculators/isolation/form.ts';
import { assessIsolation } from '../../../src/calculators/isolation/rule/assess.ts';
import { readForm } from '../../../src/kernel/form/read-form.ts';
import { anyForm, forms, liftVisit, names, visits } from './visits.ts';

describe.each(visits)('the visit $id', ({ visit }) => {
  const taken = names.filter((name) => visit.forms[name] !== undefined);

  test('has a verdict for each of the three calculators that it fills', () => {
    const judged = taken.map((name) => [name, anyForm(name).judge(visit.forms[name] ?? {})]);
    const stated = taken.map((name) => [name, { state: 'judged', verdict: visit.expected[name] }]);
    expect(judged).toMatchObject(stated);
  });
});

test('the Lift’s visit fills all three', () => {
  expect(names.filter((name) => Object.keys(liftVisit(name)).length === 0)).toEqual([]);
});

test('the Lift’s visit proves the motor bad, the cable good, and the readings fit', () => {
  const assessment = assessIsolation(isolationInput(readForm(forms.isolation.fields, liftVisit('isolation'))));
  expect(assessment.parts).toEqual({ cable: 'proven-good', motor: 'proven-bad', protectiveConductor: 'proven-good' });
  expect(assessment.findings.map(({ code }) => code)).toContain('fit');
  expect(assessment.next.map(({ code }) => code)).toEqual(['replace-motor']);
});
