import { expect, test } from 'vitest';
import {
  doneOf,
  type LessonMarks,
  lessonSteps,
  marked,
  progressFile,
  readProgress,
  united,
} from '../../../../src/library/lessons/progress.ts';

const monday = '2026-11-23T08:00:00.000Z';
const friday = '2026-11-27T08:00:00.000Z';
const begun = marked({}, 'six-readings', 'page', true, monday);

const progress = {
  lessons: begun,
  questions: { 'measuring/bridge-check#climbing-row': { '2026-11-23': 'missed' as const } },
};

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
  const other: LessonMarks = { 'six-readings': { page: friday, case: friday }, 'the-moment': { page: friday } };
  const both = { 'six-readings': { page: monday, case: friday }, 'the-moment': { page: friday } };
  const withLessons = (lessons: LessonMarks) => ({ lessons, questions: {} });
  expect(united(withLessons(begun), withLessons(other)).lessons).toEqual(both);
  expect(united(withLessons(other), withLessons(begun)).lessons).toEqual(both);
});

test('a file is read back', () => {
  expect(readProgress(progressFile(progress))).toEqual(progress);
});

test('a file from before there were questions is read', () => {
  const { questions, ...before } = JSON.parse(progressFile(progress));
  expect(questions).toEqual(progress.questions);
  expect(readProgress(JSON.stringify(before))).toEqual({ lessons: begun, questions: {} });
});

test.each([
  'no JSON',
  '[]',
  '{}',
  progressFile(progress).replace('"version": 1', '"version": 2'),
  progressFile(progress).replace('overcurrent-fieldbook-progress', 'overcurrent-fieldbook-visit'),
  progressFile(progress).replace(monday, 'yesterday'),
  progressFile(progress).replace('six-readings', '<b>'),
  progressFile(progress).replace('missed', 'forgotten'),
  progressFile(progress).replace('2026-11-23"', '2026-13-23"'),
  progressFile(progress).replace('#climbing', '/climbing'),
])('%j is no progress', (text) => {
  expect(readProgress(text)).toBeUndefined();
});
