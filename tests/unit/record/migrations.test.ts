import { describe, expect, test } from 'vitest';
import { type Migration, migrate } from '../../../src/record/migrations.ts';
import type { JsonObject } from '../../../src/record/parse-json.ts';
import { readVisit } from '../../../src/record/read-visit.ts';
import { typicalVisit } from './support/typical-visit.ts';

/** An invented version 0, only for these tests: it called the axis `spindle` and had no conditions. */
const fromZero: Migration = ({ spindle, ...rest }) => ({
  ...rest,
  axis: spindle,
  conditions: { airTemperature: '', humidity: '', surroundings: '' },
});

function versionZero(): JsonObject {
  const { axis, conditions: _none, ...rest } = typicalVisit();
  return { ...rest, spindle: axis, version: 0 };
}

describe('a record of an earlier version', () => {
  test('is brought to this version and then fits', () => {
    const { conditions, ...rest } = typicalVisit();
    const empty = { airTemperature: '', humidity: '', surroundings: '' };
    expect(conditions).not.toEqual(empty);
    expect(readVisit(versionZero(), { 0: fromZero })).toEqual({ ok: true, value: { ...rest, conditions: empty } });
  });

  test('is not known without its migration', () => {
    expect(readVisit(versionZero())).toMatchObject({ ok: false, problem: { kind: 'unknown-version' } });
  });

  test('that a migration can’t use does not fit, and says of which version it is', () => {
    const throws: Migration = () => {
      throw new TypeError('no such field');
    };
    expect(readVisit(versionZero(), { 0: throws })).toMatchObject({
      ok: false,
      problem: { kind: 'does-not-fit', where: 'version 0' },
    });
  });

  test('that does not fit after its migration is refused', () => {
    const forgetful: Migration = ({ spindle: _lost, ...rest }) => rest;
    expect(readVisit(versionZero(), { 0: forgetful })).toMatchObject({ ok: false, problem: { where: 'axis' } });
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

  test('stops where a step is missing', () => {
    expect(migrate({ version: 0, path: [] }, 0, 3, { 0: log, 2: log })).toBeUndefined();
  });

  test('leaves what it was given alone', () => {
    const old = Object.freeze({ version: 0, path: Object.freeze([]) as unknown as number[] });
    migrate(old, 0, 3, known);
    expect(old).toEqual({ version: 0, path: [] });
  });
});
