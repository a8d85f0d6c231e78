import type { StepId } from '../steps/ids.ts';
import type { StepProblem } from '../steps/problems.ts';
import type { VisitAnswers } from '../steps/questions.ts';

/**
 * One step on the way of this visit. `done`; `due`: unanswered; `problem`: the answer does not let the visit continue;
 * `check-again`: answered before something that it rests on was changed, or in an earlier stretch of work.
 */
export interface PathStep {
  id: StepId;
  status: 'done' | 'due' | 'problem' | 'check-again';
  problem?: StepProblem;
}

/** The steps that a visit has passed, in order, each with the status of its answer. */
export class Path {
  readonly path: PathStep[] = [];
  readonly visit: VisitAnswers;

  constructor(visit: VisitAnswers) {
    this.visit = visit;
  }

  /** The answers on the way so far. */
  answers(): VisitAnswers {
    return Object.fromEntries(this.path.map(({ id }) => [id, this.visit[id]]).filter(([, answer]) => answer));
  }

  protected backTo(id: StepId, step: Pick<PathStep, 'status' | 'problem'>): false {
    const at = this.path.findIndex((one) => one.id === id);
    if (at >= 0) this.path.length = at;
    this.path.push({ id, ...step });
    return false;
  }

  protected take(id: StepId, restsOn: readonly (StepId | undefined)[], problem: StepProblem | undefined): boolean {
    const status = this.statusOf(id, restsOn, problem);
    this.path.push(problem ? { id, status, problem } : { id, status });
    return status === 'done';
  }

  /** A later change of a step counts only if that step is on the path before this one. */
  protected statusOf(id: StepId, restsOn: readonly (StepId | undefined)[], problem?: StepProblem): PathStep['status'] {
    const answered = this.visit[id];
    if (answered === undefined) return 'due';
    if (problem !== undefined) return 'problem';
    const changedLater = restsOn.some((other) => other && this.has(other) && this.seqOf(other) > answered.seq);
    return changedLater ? 'check-again' : 'done';
  }

  protected has(id: StepId): boolean {
    return this.path.some((step) => step.id === id);
  }

  protected seqOf(id: StepId): number {
    return this.visit[id]?.seq ?? 0;
  }
}
