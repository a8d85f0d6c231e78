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

/** Without `differences` one of the readings has no figure. `high`: the odd ones read more than the others. */
export interface Disagreement extends OfRail {
  differences?: Differences;
  tolerancePercent: number;
  high: boolean;
}

export interface RailPayloads {
  'rail-incomplete': OfPositions;
  /** `lowestOhms` if a figure was read. */
  'rail-short': OfPositions & { suspects: SwitchPosition[]; lowestOhms?: number };
  'rail-all-short': OfPositions;
  /** `metal`: less than any diode shows, both ways. */
  'rail-short-both-ways': OfRail & { suspects: SwitchPosition[]; metal: boolean };
  'rail-read-forward': OfRail;
  'rail-short-possible': OfPositions;
  'rail-first-contradicts': OfRail;
  'rail-first-odd': OfRail;
  'rail-still-climbing': OfRail;
  'rail-first-replaced': OfRail;
  /** `leaks`: the suspects that read so little that only a leaky switch explains it. */
  'rail-unbalanced': Disagreement & { suspects: SwitchPosition[]; leaks: SwitchPosition[] };
  /** Beyond the tolerance, but not clearly off. */
  'rail-uneven': Disagreement & { odd: SwitchPosition[] };
  'rail-as-sister': Disagreement & { odd: SwitchPosition[] };
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
