import { describe, expect, test } from 'vitest';
import type { JsonObject } from '../../../../src/kernel/link/parse-json.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { evaluateForm } from '../../../../src/visit/evaluate-form.ts';
import { answerStep, newVisit } from '../../../../src/visit/record/change-visit.ts';
import { type Migration, migrate } from '../../../../src/visit/record/migrations.ts';
import { readVisit } from '../../../../src/visit/record/read-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import versionOne from '../../../visits/version-1.json' with { type: 'json' };
import { typicalVisit } from './support/typical-visit.ts';

/** An invented version 0, only for these tests: it called the axis `spindle` and had no conditions. */
const fromZero: Migration = ({ spindle, ...rest }) => ({
  ...rest,
  axis: spindle,
  conditions: { airTemperature: '', humidity: '', surroundings: '' },
});

const same: Migration = (old) => old;

function versionZero(): JsonObject {
  const { axis, conditions: _none, ...rest } = typicalVisit();
  return { ...rest, spindle: axis, version: 0 };
}

describe('a record of an earlier version', () => {
  test('is migrated to this version and then fits', () => {
    const { conditions, ...rest } = typicalVisit();
    const empty = { airTemperature: '', humidity: '', surroundings: '' };
    expect(conditions).not.toEqual(empty);
    expect(readVisit(versionZero(), { 0: fromZero, 1: same })).toEqual({
      ok: true,
      value: { ...rest, conditions: empty },
    });
  });

  test('is not known without its migration', () => {
    expect(readVisit(versionZero())).toMatchObject({ ok: false, problem: { kind: 'unknown-version' } });
  });

  test('that a migration can’t use does not fit, and the problem names its version', () => {
    const throws: Migration = () => {
      throw new TypeError('no such field');
    };
    expect(readVisit(versionZero(), { 0: throws, 1: same })).toMatchObject({
      ok: false,
      problem: { kind: 'does-not-fit', where: 'version 0' },
    });
  });

  test('that does not fit after its migration is refused', () => {
    const forgetful: Migration = ({ spindle: _lost, ...rest }) => rest;
    expect(readVisit(versionZero(), { 0: forgetful, 1: same })).toMatchObject({
      ok: false,
      problem: { where: 'axis' },
    });
  });
});

describe('migrate', () => {
  const log: Migration = (old) => ({ ...old, path: [...(old.path as number[]), old.version as number] });
  const known = { 0: log, 1: log, 2: log };

  test.each([
    [0, 3, [0, 1, 2]],
    [1, 3, [1, 2]],
    [2, 2, []],
  ])('goes from %i to %i step by step', (from, to, path) => {
    expect(migrate({ version: from, path: [] }, from, to, known)).toEqual({ version: to, path });
  });

  test('stops if a migration is missing', () => {
    expect(migrate({ version: 0, path: [] }, 0, 3, { 0: log, 2: log })).toBeUndefined();
  });

  test('does not change its argument', () => {
    const old = Object.freeze({ version: 0, path: Object.freeze([]) as unknown as number[] });
    migrate(old, 0, 3, known);
    expect(old).toEqual({ version: 0, path: [] });
  });
});

describe('a visit of version 1', () => {
  const read = readVisit(versionOne);
  const visit = read.ok ? read.value : newVisit('none-such', '2026-03-22T12:20:00+01:00');
  const { changedAt } = visit;

  test('opens, and all of it belongs to an earlier stretch of work', () => {
    expect(read.ok).toBe(true);
    expect(Object.values(visit.steps).map(({ stretch }) => stretch)).not.toContain(visit.stretch);
  });

  test('keeps the decision of its time, and is asked for what nobody noted then', () => {
    expect(visit.decision?.kind).toBe('no-fault-found');
    expect(evaluate(visit, changedAt).answers.insulation?.answer.assessment.verdict).toBe('undecided');
    expect(evaluate(visit, changedAt).guide.decision).toBeUndefined();
  });

  test.each(['bridge', 'insulation', 'retry-all'] as const)('asks for a new proof before “%s” is done again', (id) => {
    const { [id]: _open, ...steps } = visit.steps;
    const { due } = evaluate({ ...visit, steps }, changedAt).guide;
    // Version 1 did not ask whether another axis of the drive can fall.
    expect(due).toBe('support-axis');
    const symptom = visit.steps.symptom;
    const still = { ...steps, symptom: { ...symptom, form: { ...symptom?.form, gravityLoaded: 'no' } } };
    expect(evaluate({ ...visit, steps: still } as VisitRecord, changedAt).guide.due).toBe('prove-again');
  });

  test('a change of the lockout removes its one reading', () => {
    const bus = { ...visit.steps['lockout-2']?.form, busVoltage: '0.03 V' };
    const changed = answerStep(visit, 'lockout-2', { form: bus }, changedAt);
    expect(evaluateForm('lockout-2', changed.steps['lockout-2']?.form ?? {}).answer).toMatchObject({
      peProved: false,
      supplyVoltage: { kind: 'missing' },
    });
  });
});
