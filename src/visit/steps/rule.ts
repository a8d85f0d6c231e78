import type { StepId } from './ids.ts';
import type { BusProofId } from './lockout/question.ts';
import type { StepProblem } from './problems.ts';
import type { Answers, VisitAnswers } from './questions.ts';

/** The steps that the walk puts before others by itself. */
export type InsertedStepId = BusProofId | 'support-axis' | 'support-again' | 'connect-pe';

/** The steps that name what follows them. */
export type PlainStepId = Exclude<StepId, InsertedStepId>;

/** What holds of any step. */
export interface Rule<Id extends StepId> {
  /** It shows the drive dead or the axis held: what it says holds for one stretch of work. */
  holdsOneStretch?: true;
  /** Undefined where the answer lets the visit go on. */
  problem: (answer: Answers[Id], visit: VisitAnswers) => StepProblem | undefined;
  /**
   * Whether a later answer has undone what this step's answer says was done: then a word does not confirm it, it is done
   * once more.
   */
  undone?: (record: VisitAnswers) => boolean;
}

/** What holds of a step that the walk comes to by the answers before it. */
export interface PlainRule<Id extends PlainStepId> extends Rule<Id> {
  /** Hands go near conductors: only locked out, waited, and with the bus measured. */
  touches: boolean;
  /** `power`: the drive is switched on. `enable`: the axis is enabled too, so its brake opens. */
  energy: 'none' | 'power' | 'enable';
  /** Earlier answers that this one rests on; changed later, this one must be confirmed. */
  restsOn: readonly StepId[];
  /** `visit`: the answers on the way so far. `record`: all that was ever answered; what it holds against power counts. */
  next: (visit: VisitAnswers, record: VisitAnswers) => PlainStepId | 'decide';
}
