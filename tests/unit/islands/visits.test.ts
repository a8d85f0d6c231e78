import { describe, expect, test } from 'vitest';
import { assessIsolation } from '../../../src/calc/index.ts';
import { judge } from '../../../src/islands/form/calculator-form.ts';
import { readForm } from '../../../src/islands/form/read-form.ts';
import { isolationInput } from '../../../src/islands/isolation/form.ts';
import { anyForm, forms, liftVisit, names, visits } from './visits.ts';

describe.each(visits)('the visit $id', ({ visit }) => {
  test.each(names)('gives the verdict that was stated by hand: %s', (name) => {
    expect(judge(anyForm(name), visit.forms[name])).toMatchObject({ state: 'judged', verdict: visit.expected[name] });
  });

  test.each(names)('names only fields that the form has: %s', (name) => {
    const ids = anyForm(name).fields.map(({ id }) => id);
    expect(Object.keys(visit.forms[name]).filter((id) => !ids.includes(id))).toEqual([]);
  });
});

test('the Lift’s visit proves the motor bad, the cable good, and the readings fit', () => {
  const assessment = assessIsolation(isolationInput(readForm(forms.isolation.fields, liftVisit('isolation'))));
  expect(assessment.parts).toEqual({ cable: 'proven-good', motor: 'proven-bad', protectiveConductor: 'proven-good' });
  expect(assessment.findings.map(({ code }) => code)).toContain('fit');
  expect(assessment.next.map(({ code }) => code)).toEqual(['replace-motor']);
});
