import { describe, expect, test } from 'vitest';
import { visitState } from '../../../../src/visit/app/visit-summary.ts';
import { changedBefore } from '../../../../src/visit/changed-before.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { stepsAhead } from '../../../../src/visit/guide/next-step.ts';
import {
  badInsulation,
  driveOnly,
  locked,
  motorAndCable,
  visitOf,
  withBusAgain,
} from '../../../support/marrow-bay-visits.ts';
import { enterStep } from '../../../support/visit-records.ts';

const later = '2026-03-03T06:50:00+01:00';
const guideOf = (visit: ReturnType<typeof visitOf>) => evaluate(visit, visit.changedAt).guide;

describe('what may follow', () => {
  test('leaves out the steps on the way, and names only one lockout', () => {
    const ahead = stepsAhead(guideOf(visitOf(driveOnly.slice(0, 4))));
    expect(ahead).not.toContain('find-drive');
    expect(ahead).not.toContain('inspect');
    expect(ahead.filter((id) => id.startsWith('lockout'))).toEqual(['lockout-2']);
    expect(ahead).toContain('retry-all');
  });

  test('is empty once there is a decision', () => {
    expect(stepsAhead(guideOf(visitOf(driveOnly)))).toEqual([]);
  });
});

describe('a step to be confirmed names the earlier steps that were changed', () => {
  const visit = visitOf(withBusAgain(motorAndCable));

  test('by number', () => {
    const changed = enterStep(visit, 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(changedBefore(changed, guideOf(changed).path, 'isolation')).toEqual([11]);
  });

  test('a lockout counts for every later step', () => {
    const changed = enterStep(visit, 'lockout-1', { ...locked, busVoltage: '0.01 V' }, later);
    expect(changedBefore(changed, guideOf(changed).path, 'inspect')).toEqual([4]);
  });

  test('a step that it does not rest on is left out', () => {
    const one = enterStep(visit, 'symptom', { when: 'when-hot', gravityLoaded: 'no' }, later);
    const two = enterStep(one, 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(changedBefore(two, guideOf(two).path, 'isolation')).toEqual([11]);
  });

  test('without a change no step is named', () => {
    expect(changedBefore(visit, guideOf(visit).path, 'isolation')).toEqual([]);
  });
});

const stateOf = (visit: ReturnType<typeof visitOf>) => visitState(evaluate(visit, visit.changedAt));

test('the list shows the decision, or the step that is due', () => {
  expect(stateOf(visitOf(driveOnly))).toBe('Replace: complete drive.');
  const begun = visitOf(driveOnly.slice(0, 5));
  expect(stateOf(begun)).toBe('Step 6 is due: Take the motor leads off the drive.');
  expect(stateOf(visitOf([]))).toBe('Step 1 is due: Find the drive and its output.');
});
