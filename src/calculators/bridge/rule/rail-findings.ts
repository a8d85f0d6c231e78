import type { FindingOf } from '../../../kernel/assessment/assessment.ts';
import type { Phase } from '../../../kernel/electrics/phases.ts';
import type { LimitId } from '../../../kernel/limits.ts';
import type { Rail, SwitchPosition } from './switch-position.ts';

interface OfRail {
  rail: Rail;
}

/** The readings are the switch positions. */
interface OfPositions extends OfRail {
  readings: SwitchPosition[];
}

/** How far three readings differ: pairwise against the smaller one, and the largest deviation from their mean. */
export interface Differences {
  spreadPercent: number;
  deviationPercent: number;
}

export interface RailPayloads {
  'rail-incomplete': OfPositions;
  /** `lowestOhms` if a figure was read. */
  'rail-short': OfPositions & { suspects: SwitchPosition[]; lowestOhms?: number };
  'rail-all-short': OfRail;
  'rail-short-possible': OfPositions;
  /** Without `differences` one of the readings has no figure. */
  'rail-unbalanced': OfRail & { suspects: SwitchPosition[]; differences?: Differences; tolerancePercent: number };
  /** `shorted`: the terminals with a short on the other rail. */
  'rail-unbalanced-by-short': OfRail & { shorted: Phase[] };
  'rail-balanced': OfRail & { differences: Differences; tolerancePercent: number };
  'rail-open': OfRail;
  'rail-range-too-low': OfRail;
  'rail-range-not-noted': OfRail & { position: SwitchPosition };
  /** `range`: the possible spreads; absent if they have no upper bound. */
  'rail-too-close': OfRail & { range?: { leastPercent: number; mostPercent: number }; tolerancePercent: number };
  /** `usual`: the limit with the usual size. */
  'rail-lower-than-usual': OfRail & { usual: LimitId };
}

export type RailFinding = FindingOf<RailPayloads>;
