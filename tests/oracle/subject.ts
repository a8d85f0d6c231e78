import type { Verdict } from '../../src/kernel/assessment/assessment.ts';
import type { Dice } from './dice.ts';

/**
 * What is said of one calculator without any of its code: when a go may be given at all. It says what a go needs, not
 * all that it needs, so a go that it does not allow is a fault, and one that it allows may still be none.
 */
export interface Subject<Input extends object> {
  name: string;
  /** A set of input: often near the limits, now and then absurd. */
  make: (dice: Dice) => Input;
  verdict: (input: Input) => Verdict;
  mayGo: (input: Input) => boolean;
  /** Without one thing that a go needs: never go, whatever the rest says. */
  lacking: (input: Input, dice: Dice) => Input;
  /** The same with worse evidence: the verdict never rises. Undefined where no change of this set is surely worse. */
  worse?: (input: Input, dice: Dice) => Input | undefined;
  /** Without what a go does not need: a go stays one, so that it never rested on it. */
  plain?: (input: Input) => Input;
  /** Fields of which figures may be negative. */
  signed?: readonly string[];
}

/** A copy with one property changed. */
export function having<T extends object, K extends keyof T>(one: T, key: K, value: T[K]): T {
  return { ...one, [key]: value };
}
