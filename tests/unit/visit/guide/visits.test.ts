import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import { visitOf } from '../../../support/marrow-bay-visits.ts';
import { nothingProven } from '../../../visits/nothing-proven.ts';
import { partReplaced } from '../../../visits/part-replaced.ts';
import { partsReplaced } from '../../../visits/parts-replaced.ts';
import type { Expected } from '../../../visits/row.ts';
import { complete, halfDone, versionOne } from '../../../visits/whole.ts';

const rows = Object.entries({ ...partReplaced, ...partsReplaced, ...nothingProven });
const visits: [name: string, expected: Expected, visit: VisitRecord][] = [
  ...rows.map(([name, { typed, ...expected }]) => [name, expected, visitOf(typed)] as const),
  ...[versionOne, halfDone, complete].map(({ name, expected, visit }) => [name, expected, visit] as const),
].map((visit) => [...visit]);

it('there are at least 25 complete visits', () => {
  expect(visits.filter(([, { decision }]) => decision !== undefined).length).toBeGreaterThanOrEqual(25);
});

describe.each(visits)('%s', (_name, expected, visit) => {
  const { why } = expected;
  const state = evaluate(visit, visit.changedAt).guide;

  it(`${expected.decision ?? `due: ${expected.due}`}`, () => {
    expect(state.due, why).toBe(expected.due);
    expect(state.decision?.kind, why).toBe(expected.decision);
    expect(state.offPath, why).toEqual(expected.offPath ?? []);
    const { replace = [], good = [], open = [] } = state.decision ?? {};
    expect(Object.fromEntries(replace.map(({ part, proofs }) => [part, proofs])), why).toEqual(expected.replace ?? {});
    const suspect = state.decision?.suspect ?? [];
    expect(Object.fromEntries(suspect.map(({ part, reasons }) => [part, reasons])), why).toEqual(
      expected.suspect ?? {},
    );
    expect([...good].sort(), why).toEqual([...(expected.stay ?? [])].sort());
    expect([...open].sort(), why).toEqual([...(expected.open ?? [])].sort());
    expect(visit.decision?.kind).toBe(expected.stored ?? expected.decision);
  });

  it('every form that was filled in can be read, and each was answered when it was due', () => {
    expect(Object.keys(evaluate(visit, visit.changedAt).answers).sort()).toEqual(Object.keys(visit.steps).sort());
    expect(state.path.filter(({ status }) => status === 'check-again' || status === 'problem')).toEqual([]);
  });
});
