import { expect } from 'vitest';
import type { Verdict } from '../../src/kernel/assessment/assessment.ts';

/** Order of safety: a worse reading may only lower the rank. */
export const rank: Record<Verdict, number> = { 'no-go': 0, undecided: 1, go: 2 };

/** Counts verdicts, so that a property can prove that it met all of them. */
export function tally(): {
  count: Record<Verdict, number>;
  add: (verdict: Verdict) => void;
  share: (v: Verdict) => number;
} {
  const count = { go: 0, 'no-go': 0, undecided: 0 };
  const total = () => count.go + count['no-go'] + count.undecided;
  return { count, add: (verdict) => count[verdict]++, share: (verdict) => count[verdict] / total() };
}

/** A property that rarely meets a verdict proves little about it: each must occur in at least a tenth of the cases. */
export function meetsAllVerdicts({ share }: ReturnType<typeof tally>, least = 0.1) {
  for (const verdict of ['go', 'undecided', 'no-go'] as const) expect(share(verdict), verdict).toBeGreaterThan(least);
}
