import type { Verdict } from '../../src/kernel/assessment/assessment.ts';
import type { Dice } from './dice.ts';

/**
 * Conditions for a go of one calculator, stated without any of its code. They are necessary but not sufficient: a go
 * that they don't allow is a fault, but an allowed one need not be a go.
 */
export interface Subject<Input extends object> {
  name: string;
  /** A set of input: often near the limits, sometimes absurd. */
  make: (dice: Dice) => Input;
  verdict: (input: Input) => Verdict;
  mayGo: (input: Input) => boolean;
  /** Without one thing that a go needs: never go, whatever the rest is. */
  lacking: (input: Input, dice: Dice) => Input;
  /** The same with worse evidence: the verdict never rises. Undefined if no change of this set is certainly worse. */
  worse?: (input: Input, dice: Dice) => Input | undefined;
  /** Without something that a go does not need: a go must stay a go. */
  plain?: (input: Input) => Input;
  /** Fields whose figures may be negative. */
  signed?: readonly string[];
}

/** A copy with one property changed. */
export function having<T extends object, K extends keyof T>(one: T, key: K, value: T[K]): T {
  return { ...one, [key]: value };
}
