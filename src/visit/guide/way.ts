import { type DoneAnswer, notDone } from '../steps/done.ts';
import type { StepId } from '../steps/ids.ts';
import type { LockoutId } from '../steps/lockout/question.ts';
import type { StepProblem } from '../steps/problems.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import type { PowerStepId } from '../steps/retry.ts';
import type { InsertedStepId, PlainStepId } from '../steps/rule.ts';
import { rules } from '../steps/rules.ts';
import {
  busProofProblem,
  chargedSince,
  isBusProof,
  lockoutBroken,
  newestBusReading,
  newestLockout,
  wasPowered,
} from './dead-proofs.ts';
import { Path, type PathStep } from './path.ts';
import { feedbackOutAt, isPowerStep, leadsOnAt, motorSideSpeaksAgainst, peCoreOff } from './power.ts';

/** Steps that are inserted when they are needed: after a break, after something that charges the bus, before power. */
const floating = ['support-again', 'prove-again', 'bus-again', 'connect-pe'] as const satisfies InsertedStepId[];
type FloatingId = (typeof floating)[number];

/** The way through the steps, as far as the answers allow. */
export class Way extends Path {
  lockedBy: LockoutId | undefined;
  axisSupported = false;
  private lastPower: StepId | undefined;
  private powerSteps = 0;

  /** Whether a step with power, or its preparation, was done and need not be asked for again. */
  stands(id: PlainStepId, power: PowerStepId): boolean {
    const done = this.statusOf(id, this.restsOn(id), this.problemOf(id)) === 'done';
    // Nothing was taken off, so nothing is left to do.
    const declined = id === 'strip-drive' && this.visit[id]?.answer.state === 'not-allowed';
    return done && (id === power || declined || this.seqOf(power) > this.seqOf(id));
  }

  /** Adds a step; true if its answer lets the walk continue. */
  pass(id: PlainStepId): boolean {
    if (!this.take(id, this.restsOn(id), this.problemOf(id))) return false;
    if (isPowerStep(id) && wasPowered(this.visit, id)) {
      this.lockedBy = undefined;
      this.lastPower = id;
      this.powerSteps += 1;
    }
    return true;
  }

  /** Inserts before a step what it requires; false if the walk stops there. */
  prepare(id: PlainStepId): boolean {
    const { touches, energy } = rules[id];
    if (!touches && energy === 'none') return true;
    // Before the lockout: lowering a load onto its support may need power.
    if (!this.supported() || (touches && !this.lockedOut())) return false;
    this.placeBefore(id);
    const asked = this.statusOf(id, this.restsOn(id), this.problemOf(id)) !== 'done';
    if (asked && !this.isReady(id, touches)) return false;
    if (id === 'reconnect' && !this.feedbackPlugged()) return false;
    return energy === 'none' || !asked || this.mayGetPower(id);
  }

  private supported(): boolean {
    const gravity = this.visit.symptom?.answer.gravityLoaded;
    const answered = this.visit['support-axis'];
    // Older records did not ask about the other axes. Support is then asked for before the next step, not retroactively.
    const asked = gravity === 'own-no' ? answered !== undefined : gravity !== 'no';
    if (this.axisSupported || !asked) return true;
    this.axisSupported = this.take('support-axis', ['symptom'], answered && notDone(answered.answer));
    return this.axisSupported;
  }

  private lockedOut(): boolean {
    if (this.lockedBy !== undefined) return true;
    const lockout: LockoutId = `lockout-${(this.powerSteps + 1) as 1 | 2 | 3}`;
    this.placeBefore(lockout);
    const problem = busProofProblem(this.visit, lockout);
    const asked = this.statusOf(lockout, [this.lastPower], problem) !== 'done';
    if ((asked && !this.supportHolds()) || !this.take(lockout, [this.lastPower], problem)) return false;
    this.lockedBy = lockout;
    return true;
  }

  /** For a step that is asked for now: whether everything known about the machine is from this stretch of work. */
  private isReady(id: StepId, touches: boolean): boolean {
    if (!this.supportHolds()) return false;
    if (this.lockedBy === undefined) return true;
    const lockout = newestLockout(this.visit, this.lockedBy);
    if (this.visit[lockout]?.earlier) return this.stopAt('prove-again');
    if (!touches) return true;
    const broken = lockoutBroken(this.visit, lockout);
    if (broken !== undefined) return this.lockAgain(this.lockedBy, broken);
    const bus = newestBusReading(this.visit);
    const holds = bus !== undefined && busProofProblem(this.visit, bus) === undefined;
    return holds && !chargedSince(this.visit, bus, id) ? true : this.stopAt('bus-again');
  }

  /** Whether the support was confirmed in this stretch of work. */
  private supportHolds(): boolean {
    if (this.visit.symptom?.answer.gravityLoaded === 'no') return true;
    const first = this.visit['support-axis'];
    if (first === undefined) {
      this.path.push({ id: 'support-axis', status: 'due' });
      return false;
    }
    const again = this.visit['support-again'];
    const newest = again !== undefined && again.seq > first.seq ? again : first;
    return newest.answer.done && !newest.earlier ? true : this.stopAt('support-again');
  }

  private mayGetPower(id: PlainStepId): boolean {
    const leadsMustBeOff = id === 'retry-leads-off' || id === 'retry-stripped';
    const withoutLeads = leadsMustBeOff || motorSideSpeaksAgainst(this.visit);
    if (withoutLeads && leadsOnAt(this.visit, Number.POSITIVE_INFINITY)) {
      return this.isReady('disconnect-leads', true) && this.backTo('disconnect-leads', { status: 'check-again' });
    }
    if (!peCoreOff(this.visit)) return true;
    return this.isReady('connect-pe', true) && this.stopAt('connect-pe');
  }

  /** Whether the feedback is plugged: an axis enabled with its motor but without feedback runs away. */
  private feedbackPlugged(): boolean {
    const plugged = this.visit['plug-feedback'];
    if (feedbackOutAt(this.visit) > this.seqOf('plug-feedback')) {
      if (!this.isReady('plug-feedback', true)) return false;
      this.path.push({ id: 'plug-feedback', status: plugged === undefined ? 'due' : 'check-again' });
      return false;
    }
    return plugged === undefined || this.take('plug-feedback', [this.lockedBy], notDone(plugged.answer));
  }

  /** Inserts earlier floating steps before the first step that was answered after them. */
  private placeBefore(id: StepId): void {
    const own = this.visit[id]?.seq ?? Number.POSITIVE_INFINITY;
    const answered = floating.filter((one) => this.seqOf(one) > 0 && this.seqOf(one) < own && !this.has(one));
    const sound = answered.filter((one) => this.floatingProblem(one) === undefined);
    sound.sort((a, b) => this.seqOf(a) - this.seqOf(b));
    for (const one of sound) this.path.push({ id: one, status: 'done' });
  }

  private stopAt(id: FloatingId): false {
    const before = this.path.findIndex((step) => step.id === id);
    if (before >= 0) this.path.splice(before, 1);
    const problem = this.floatingProblem(id);
    const answered = this.visit[id];
    if (answered === undefined) this.path.push({ id, status: 'due' });
    else if (problem === undefined || answered.earlier) this.path.push({ id, status: 'check-again' });
    else this.path.push({ id, status: 'problem', problem });
    return false;
  }

  private floatingProblem(id: FloatingId): StepProblem | undefined {
    if (isBusProof(id)) return busProofProblem(this.visit, id);
    const answer = this.visit[id]?.answer as DoneAnswer | undefined;
    return answer && notDone(answer);
  }

  /** Goes back to a lockout that does not hold; the steps after it are dropped from the path. */
  private lockAgain(lockout: LockoutId, broken: Pick<PathStep, 'status' | 'problem'>): false {
    this.lockedBy = undefined;
    return this.backTo(lockout, broken);
  }

  private restsOn(id: PlainStepId): (StepId | undefined)[] {
    const { restsOn, touches, energy } = rules[id];
    return [...restsOn, touches ? this.lockedBy : undefined, energy === 'enable' ? 'support-axis' : undefined];
  }

  private problemOf(id: PlainStepId): StepProblem | undefined {
    const answer = this.visit[id]?.answer;
    const problem = rules[id].problem as (given: unknown, all: VisitAnswers) => StepProblem | undefined;
    return answer === undefined ? undefined : problem(answer, this.visit);
  }
}
