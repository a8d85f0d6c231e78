import { expect, test } from 'vitest';
import {
  doneOf,
  lessonSteps,
  marked,
  type Progress,
  progressFile,
  readProgress,
  united,
} from '../../../../src/library/lessons/progress.ts';

const monday = '2026-11-23T08:00:00.000Z';
const friday = '2026-11-27T08:00:00.000Z';
const begun = marked({}, 'six-readings', 'page', true, monday);

test('a mark keeps its first time, and can be taken off', () => {
  expect(marked(begun, 'six-readings', 'page', true, friday)).toEqual(begun);
  expect(doneOf(marked(begun, 'six-readings', 'page', false, friday), 'six-readings', lessonSteps)).toBe(0);
});

test('only the steps that a lesson has are counted', () => {
  const done = marked(begun, 'six-readings', 'figure', true, friday);
  expect(doneOf(done, 'six-readings', lessonSteps)).toBe(2);
  expect(doneOf(done, 'six-readings', ['page', 'questions', 'case'])).toBe(1);
  expect(doneOf(done, 'the-moment', lessonSteps)).toBe(0);
});

test('two devices unite in either order, with the earlier time, and nothing is lost', () => {
  const other: Progress = { 'six-readings': { page: friday, case: friday }, 'the-moment': { page: friday } };
  const both = { 'six-readings': { page: monday, case: friday }, 'the-moment': { page: friday } };
  expect(united(begun, other)).toEqual(both);
  expect(united(other, begun)).toEqual(both);
});

test('a file is read back', () => {
  expect(readProgress(progressFile(begun))).toEqual(begun);
});

test.each([
  'no JSON',
  '[]',
  '{}',
  progressFile(begun).replace('"version": 1', '"version": 2'),
  progressFile(begun).replace('overcurrent-fieldbook-progress', 'overcurrent-fieldbook-visit'),
  progressFile(begun).replace(monday, 'yesterday'),
  progressFile(begun).replace('six-readings', '<b>'),
])('%j is no progress', (text) => {
  expect(readProgress(text)).toBeUndefined();
});
