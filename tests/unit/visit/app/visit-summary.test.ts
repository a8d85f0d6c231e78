import { expect, test } from 'vitest';
import { visitProgress } from '../../../../src/visit/app/visit-summary.ts';
import { answerStep, newVisit } from '../../../../src/visit/record/change-visit.ts';
import { at } from '../record/support/typical-visit.ts';

test('the progress of a visit distinguishes two copies of it', () => {
  const begun = newVisit('visit-lift', at(0), { axis: 'Lift' });
  expect(visitProgress(begun)).toBe('changed 2026-03-03, 05:58, 0 steps answered');
  const further = answerStep(
    answerStep(begun, 'mechanics', { form: { found: 'free' } }, at(10)),
    'symptom',
    { form: { when: 'on-enable', gravityLoaded: 'no' } },
    at(12),
  );
  expect(visitProgress(further)).toMatch(/^changed 2026-03-03, 06:10, 2 steps answered, last “.+”$/);
  expect(visitProgress({ ...further, decision: { kind: 'inconclusive' } as never })).toMatch(/decision reached$/);
});
