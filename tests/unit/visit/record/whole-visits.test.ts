import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { exportVisit } from '../../../../src/visit/record/export-visit.ts';
import { readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { completed } from '../../../support/visit-records.ts';
import { complete, halfDone, versionOne } from '../../../visits/whole.ts';

// If a limit, rule or sentence was changed on purpose, `node tests/visits/refresh.ts` writes today's texts into the two
// files of the current version.

test('the files have the versions in their names, and each says that it is invented', () => {
  const versions = [versionOne, halfDone, complete].map(({ text }) => JSON.parse(text).version);
  expect(versions).toEqual([1, 2, 2]);
  for (const { visit } of [versionOne, halfDone, complete]) {
    expect(visit.site).toBe('Marrow Bay Glassworks');
    expect(visit.notes).toMatch(/^Invented: /);
  }
});

describe.each([halfDone, complete])('the visit $name', ({ visit }) => {
  test('keeps the verdicts, sentences, limits and parts that its readings give today', () => {
    expect(Object.values(visit.steps).filter((step) => step?.snapshot).length).toBeGreaterThan(0);
    expect(evaluate(visit, visit.changedAt).differs).toEqual([]);
  });

  test('keeps everything computed from it, including the decision with its sentences', () => {
    expect(completed(visit, visit.changedAt)).toEqual(visit);
  });

  test('keeps every field when it is written and read again', () => {
    expect(readVisitText(exportVisit(visit).text)).toEqual({ ok: true, value: { visit, photographs: [] } });
  });
});

test('the visit of version 1 keeps the verdicts and limits of today; its sentences are those of its time', () => {
  const differing = evaluate(versionOne.visit, versionOne.visit.changedAt).differs;
  expect(Object.keys(versionOne.visit.steps)).toHaveLength(11);
  // Nobody noted where the idle cores were in its insulation test.
  const otherwise = differing.filter(({ differs }) => differs.some((what) => what !== 'sentences'));
  expect(otherwise.map(({ step }) => step)).toEqual(['insulation']);
});
