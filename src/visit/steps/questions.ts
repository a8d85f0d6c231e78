import { afterChange } from './after-change/question.ts';
import { bendTest } from './bend-test/question.ts';
import { braking } from './braking/question.ts';
import * as feedback from './feedback/question.ts';
import { findDrive } from './find-drive/question.ts';
import { idleCores } from './idle-cores/question.ts';
import type { StepId } from './ids.ts';
import { inspect } from './inspect/question.ts';
import { disconnectLeads, retryLeadsOff } from './leads/question.ts';
import { busAgain, firstLockout, laterLockout, proveAgain } from './lockout/question.ts';
import {
  bridge,
  inputCircuit,
  insulation,
  isolation,
  type MeasuredAnswers,
  winding,
  windingMotor,
} from './measurements/question.ts';
import { mechanics } from './mechanics/question.ts';
import type { Question, StepWords } from './question.ts';
import { recording } from './recording/question.ts';
import { retryStripped, stripDrive } from './strip-drive/question.ts';
import { supportAgain, supportAxis } from './support/question.ts';
import { symptom } from './symptom/question.ts';
import { connectPe, reconnect, retryAll } from './together/question.ts';

/** The question of each step. The types of all answers are derived from it. */
export const questions = {
  'find-drive': findDrive,
  symptom,
  recording,
  'lockout-1': firstLockout,
  'lockout-2': laterLockout,
  'lockout-3': laterLockout,
  'prove-again': proveAgain,
  'bus-again': busAgain,
  inspect,
  'after-change': afterChange,
  'unplug-feedback': feedback.unplugFeedback,
  'retry-feedback-off': feedback.retryFeedbackOff,
  'unplug-device-end': feedback.unplugDeviceEnd,
  'retry-device-end': feedback.retryDeviceEnd,
  'plug-feedback': feedback.plugFeedback,
  'retry-feedback-on': feedback.retryFeedbackOn,
  'disconnect-leads': disconnectLeads,
  'support-axis': supportAxis,
  'support-again': supportAgain,
  mechanics,
  bridge,
  'input-circuit': inputCircuit,
  braking,
  winding,
  'winding-motor': windingMotor,
  'retry-leads-off': retryLeadsOff,
  'strip-drive': stripDrive,
  'retry-stripped': retryStripped,
  'bend-test': bendTest,
  'idle-cores': idleCores,
  insulation,
  isolation,
  'connect-pe': connectPe,
  reconnect,
  'retry-all': retryAll,
} satisfies Record<StepId, StepWords>;

type Questions = typeof questions;

/** Steps whose form is a calculator. */
export type MeasuredStepId = keyof MeasuredAnswers;

/** Steps that ask a few questions. */
export type AskedStepId = Exclude<StepId, MeasuredStepId>;

type AnswerTo<Q> = Q extends Question<infer Answer> ? Answer : never;

/** The guide's answer to each step. */
export type Answers = { [Id in AskedStepId]: AnswerTo<Questions[Id]> } & MeasuredAnswers;

/** `seq` grows with each answer that was given or changed; unlike a clock it can't run backwards. */
export interface Answered<A> {
  seq: number;
  answer: A;
  /**
   * Given in an earlier stretch of work: before a break, on another day or on another device. Findings about parts still
   * count; that the drive is dead and the axis held is no longer known.
   */
  earlier?: boolean;
}

/** The answers of a record, for the guide. */
export type VisitAnswers = { [Id in StepId]?: Answered<Answers[Id]> };

export function isMeasured(id: StepId): id is MeasuredStepId {
  return 'instruments' in questions[id];
}

export function isAsked(id: StepId): id is AskedStepId {
  return !isMeasured(id);
}
