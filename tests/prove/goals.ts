import type { Cause } from '../../src/kernel/vocabulary.ts';
import type { Fault } from '../../src/practice/simulator/fault-types.ts';
import type { OpenItem } from '../../src/visit/guide/open-items.ts';
import type { Outcome } from './outcome.ts';
import { summarise } from './summary.ts';

/** What the decision must leave open or possible, so that a person learns which test would decide. */
const testNamed: Record<Exclude<Fault['hidden'], undefined | 'watch'>, (OpenItem | Cause)[]> = {
  'surge-test': ['winding-open', 'winding-turns'],
  'phase-to-phase-test': ['winding-turns'],
  'drive-load-test': ['drive-control'],
  'dry-and-repeat': ['insulation-open', 'moisture'],
};

/** A reading so near its limit that two of it do not decide leaves a visit undecided, as it should. */
const toldShare = 0.99;

/** The missed goals of these visits to one fault, in words; empty if all are met. */
export function missedGoals(fault: string, outcomes: readonly Outcome[]): string[] {
  const { visits, exact, overCalled, missed, unsafe, combination, hidden, label } = summarise(fault, outcomes);
  const goals: [sentence: string, holds: boolean][] = [
    ['no unsafe step', unsafe.length === 0],
    ['no sound part proven bad', overCalled === 0],
    ['named exactly', hidden !== undefined || exact >= toldShare * visits],
    ['no part missed in a combination', !combination || missed <= (1 - toldShare) * visits],
    ['what can not be told ends undecided and names the test', outcomes.every(honest)],
    ['a healthy axis loses nothing', fault !== 'nuisance' || outcomes.every(({ named }) => named.length === 0)],
  ];
  return goals.filter(([, holds]) => !holds).map(([sentence]) => `${label}: ${sentence}`);
}

function honest({ hidden, exact, kind, open, possible }: Outcome): boolean {
  if (hidden === undefined || exact) return true;
  // A fault that does not show during the trial is not found, and nothing is replaced; the advice is to come back.
  if (hidden === 'watch') return kind === 'no-fault-found' || kind === 'inconclusive' || kind === 'undecided';
  if (kind !== 'undecided' && kind !== 'inconclusive') return false;
  return testNamed[hidden].some((item) => [...open, ...possible].some((one) => one === item));
}
