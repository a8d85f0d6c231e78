import { brakingProblems } from './braking/question.ts';
import { doneProblems } from './done.ts';
import { findDriveProblems } from './find-drive/question.ts';
import { idleCoresProblems } from './idle-cores/question.ts';
import { lockoutProblems } from './lockout/question.ts';
import { measuredProblems } from './measurements/question.ts';
import { retryProblems } from './retry.ts';
import { symptomProblems } from './symptom/question.ts';

/** Why an answer does not let the visit continue, and what to do. */
export const problemTexts = {
  ...findDriveProblems,
  ...lockoutProblems,
  ...doneProblems,
  ...retryProblems,
  ...measuredProblems,
  ...symptomProblems,
  ...idleCoresProblems,
  ...brakingProblems,
};

export type StepProblem = keyof typeof problemTexts;
