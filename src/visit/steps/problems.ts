import { doneProblems } from './done.ts';
import { findDriveProblems } from './find-drive/question.ts';
import { lockoutProblems } from './lockout/question.ts';
import { measuredProblems } from './measurements/question.ts';
import { retryProblems } from './retry.ts';

/** Why an answer does not let the visit continue, and what to do. */
export const problemTexts = {
  ...findDriveProblems,
  ...lockoutProblems,
  ...doneProblems,
  ...retryProblems,
  ...measuredProblems,
};

export type StepProblem = keyof typeof problemTexts;
