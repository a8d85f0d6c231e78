import { singleFaults } from '../../src/practice/simulator/faults.ts';
import type { Outcome } from './outcome.ts';

/** All visits to one fault, or to one combination. */
export interface Row {
  fault: string;
  label: string;
  combination: boolean;
  hidden: Outcome['hidden'];
  visits: number;
  /** Decision with its parts, and how often. */
  decisions: Map<string, number>;
  /** Every bad part proven, and no other. */
  exact: number;
  overCalled: number;
  missed: number;
  /** No part proven, and the record says what is open or that the drive is named by exclusion only. */
  notTold: number;
  meanSteps: number;
  meanMinutes: number;
  meanPowerUps: number;
  unsafe: string[];
}

export function summarise(fault: string, outcomes: readonly Outcome[]): Row {
  const decisions = new Map<string, number>();
  for (const { kind, named } of outcomes) {
    const words = named.length === 0 ? kind : `${kind} ${named.join(' + ')}`;
    decisions.set(words, (decisions.get(words) ?? 0) + 1);
  }
  const count = (holds: (outcome: Outcome) => boolean) => outcomes.filter(holds).length;
  return {
    fault,
    label: outcomes[0]?.label ?? fault,
    combination: singleFaults.every(({ id }) => id !== fault),
    hidden: outcomes[0]?.hidden,
    visits: outcomes.length,
    decisions,
    exact: count(({ exact }) => exact),
    overCalled: count(({ overCalled }) => overCalled.length > 0),
    missed: count(({ missed }) => missed.length > 0),
    notTold: count(({ exact, kind }) => !exact && (kind === 'undecided' || kind === 'inconclusive')),
    meanSteps: outcomes.reduce((sum, { steps }) => sum + steps, 0) / outcomes.length,
    meanMinutes: outcomes.reduce((sum, { minutes }) => sum + minutes, 0) / outcomes.length,
    meanPowerUps: outcomes.reduce((sum, { powerUps }) => sum + powerUps, 0) / outcomes.length,
    unsafe: outcomes.flatMap(({ unsafe, seed }) => unsafe.map((what) => `${what} (seed ${seed})`)),
  };
}
