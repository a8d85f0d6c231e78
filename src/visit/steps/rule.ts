import type { StepId } from './ids.ts';
import type { BusProofId } from './lockout/question.ts';
import type { StepProblem } from './problems.ts';
import type { Answers, VisitAnswers } from './questions.ts';

/** Steps that the walk inserts before others. */
export type InsertedStepId = BusProofId | 'support-axis' | 'support-again' | 'connect-pe';

/** Steps whose rules name the next step. */
export type PlainStepId = Exclude<StepId, InsertedStepId>;

/** The rule of any step. */
export interface Rule<Id extends StepId> {
  /** It proves the drive dead or the axis held, for one stretch of work only. */
  holdsOneStretch?: true;
  /** Undefined if the answer lets the visit continue. */
  problem: (answer: Answers[Id], visit: VisitAnswers) => StepProblem | undefined;
  /**
   * Whether a later answer has undone what this step did. Then it can't be confirmed by a click; it has to be done again.
   */
  undone?: (record: VisitAnswers) => boolean;
}

/** The rule of a step that follows from the answers before it. */
export interface PlainRule<Id extends PlainStepId> extends Rule<Id> {
  /** Hands go near conductors: only after lockout, waiting and a bus measurement. */
  touches: boolean;
  /** `power`: the drive is switched on. `enable`: the axis is enabled too, so its brake opens. */
  energy: 'none' | 'power' | 'enable';
  /** Earlier steps that this one rests on: if one is changed later, this one must be confirmed. */
  restsOn: readonly StepId[];
  /** `visit`: the answers on the way so far. `record`: all answers ever given; their objections to power count. */
  next: (visit: VisitAnswers, record: VisitAnswers) => PlainStepId | 'decide';
}
