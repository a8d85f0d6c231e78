import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../../src/kernel/vocabulary.ts';
import { possibleCauses } from '../../../../src/visit/guide/causes.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { SymptomAnswer } from '../../../../src/visit/steps/symptom/question.ts';
import { decisionHeadline } from '../../../../src/visit/words/decision.ts';
import {
  bridgeIs,
  busAgain,
  compared,
  done,
  idle,
  insulationIs,
  lockout,
  looked,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

// Own conditions, no source: what was changed is compared before a part is measured or blamed.

const stateOf = (history: Given[]) => nextStep(visitOf(history));
const changed = (more: Partial<SymptomAnswer> = {}): Given =>
  trips('on-enable', 'no', { came: 5, of: 5, changed: 'something', ...more });
const begun = (symptom: Given): Given[] => [looked(), symptom, lockout(1), seen()];
const measured: Given[] = [
  ...[done('disconnect-leads'), bridgeIs(bridges.good), busAgain(), windingIs(windings.alike)],
  ...[retry('retry-leads-off', 'no-trip'), lockout(2), idle(), insulationIs(insulations.good)],
];

describe('the comparison after a change', () => {
  it.each<[what: string, symptom: Given, due: string]>([
    ['something was changed', changed(), 'after-change'],
    ['nothing was changed', trips('on-enable', 'no', { changed: 'nothing' }), 'disconnect-leads'],
    ['nobody knows', trips('on-enable', 'no', { changed: 'unknown' }), 'disconnect-leads'],
    ['it was not asked', trips('on-enable', 'no'), 'disconnect-leads'],
    ['with the control off', trips('control-off', 'no', { changed: 'something' }), 'unplug-feedback'],
  ])('comes before anything is measured: %s', (_, symptom, due) => {
    expect(stateOf(begun(symptom)).due).toBe(due);
  });

  it.each<[found: Parameters<typeof compared>[0], due: string | undefined, kind: string | undefined]>([
    ['same', 'reconnect', undefined],
    ['corrected', 'reconnect', undefined],
    ['not-compared', 'reconnect', undefined],
    // The motor is not enabled with it.
    ['wrong', undefined, 'undecided'],
  ])('%s, and everything passes', (found, due, kind) => {
    const { due: next, decision } = stateOf([...begun(changed()), compared(found), ...measured]);
    expect([next, decision?.kind]).toEqual([due, kind]);
  });
});

describe('the decision after a change', () => {
  const ends = (found: Parameters<typeof compared>[0]) =>
    stateOf([
      ...[...begun(changed()), compared(found), ...measured],
      ...[done('reconnect'), retry('retry-all', 'no-trip')],
    ]).decision;

  it('says that something was put right, if it then stays away', () => {
    const decision = ends('corrected');
    expect(decision).toMatchObject({ kind: 'no-fault-found', corrected: true, replace: [] });
    expect(decision && decisionHeadline(decision)).toMatch(/^Put right: what the change had left wrong/);
  });

  it('is no fault found, if all was as it should be', () => {
    const decision = ends('same');
    expect(decision).toMatchObject({ kind: 'no-fault-found' });
    expect(decision).not.toHaveProperty('corrected');
  });

  it('stays open, if nobody compared it', () => {
    expect(ends('not-compared')).toMatchObject({ kind: 'undecided', open: ['change-open'] });
  });
});

describe('what a change makes likely', () => {
  const first = (...given: Given[]): Cause[] => possibleCauses(visitOf(given)).slice(0, 2);
  it.each<[what: string, given: Given[], causes: Cause[]]>([
    ['a motor', [changed({ changedThing: 'motor' })], ['commutation', 'tuning']],
    ['an encoder', [changed({ changedThing: 'feedback' })], ['commutation', 'feedback-signal']],
    ['a drive', [changed({ changedThing: 'drive' })], ['tuning', 'commutation']],
    ['a cable', [changed({ changedThing: 'cable' })], ['commutation', 'contact']],
    ['parameters', [changed({ changedThing: 'parameters' })], ['tuning', 'commutation']],
    ['a tool', [changed({ changedThing: 'load' })], ['load', 'tuning']],
    ['something', [changed()], ['commutation', 'tuning']],
    ['compared, and as it should be', [changed(), compared('same')], ['output-stage', 'cable-insulation']],
    [
      'with the control off',
      [trips('control-off', 'no', { changed: 'something' })],
      ['feedback-supply', 'drive-control'],
    ],
    ['nothing', [trips('on-enable')], ['output-stage', 'cable-insulation']],
  ])('%s', (_, given, causes) => {
    expect(first(...given)).toEqual(causes);
  });
});
