import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import { corners, deviationFromMean, within } from '../../../kernel/reading/spread.ts';
import { windingPairs } from './pairs.ts';
import type { Pairs } from './phases.ts';

/** `deviationPercent`: the largest deviation from the mean; a bound if the readings are not plain figures. */
export interface BalancePayloads {
  'winding-balanced': { deviationPercent: number; goodPercent: number };
  /** `rangePercent`: highest minus lowest, in percent of the mean; absent if the readings are not plain figures. */
  'winding-unbalanced': { deviationPercent: number; rangePercent?: number; badPercent: number };
  'winding-between-limits': { deviationPercent: number; goodPercent: number; badPercent: number };
  'winding-needs-four-leads': Nothing;
  'winding-too-coarse': { leastPercent: number; mostPercent: number; goodPercent: number };
}

type BalanceFinding = FindingOf<BalancePayloads>;

const finding = findingMaker<BalancePayloads>();

interface Balance {
  /** The interval of each reading, leads included, in Ω. */
  intervals: Pairs<Interval>;
  /** What the leads may have added, alike to each of them, in Ω. */
  leads: Interval;
  /** With two leads the reading includes the contact of the tips. */
  fourLeads: boolean;
  /** The limit that passes: random-wound or form-wound. */
  goodLimit: LimitId;
  /** The three values without leads, if all three are plain figures. */
  net: number[] | undefined;
}

/**
 * Passes up to one published limit, fails above another; undecided between them, and if two leads can't resolve it: both
 * must hold whatever contact the tips may have added.
 */
export function judgeBalance({ intervals, leads, fourLeads, goodLimit, net }: Balance): BalanceFinding {
  const good = limitValue(goodLimit);
  const bad = limitValue('winding-unbalance-bad');
  const limits: LimitId[] = [goodLimit, 'winding-unbalance-bad'];
  const lines = windingPairs.map((pair) => intervals[pair]);
  const { lo: least, hi: most } = overLeads(lines, leads);
  // Hand-held tips count against both: what fails must fail, and what passes must pass, whatever they added.
  const proven = fourLeads ? { lo: least, hi: most } : overLeads(lines.map(withContact), leads);
  const shown = net && { deviationPercent: deviationFromMean(net), rangePercent: rangeOfMean(net) };
  const parts = { readings: [...windingPairs], limits };
  if (proven.lo > bad) {
    return finding('winding-unbalanced', 'fail', { ...parts, deviationPercent: least, ...shown, badPercent: bad });
  }
  const needed = limitValue('winding-four-leads-below');
  const low = !fourLeads && lines.some(({ lo }) => lo - leads.hi < needed);
  // If the leads explain a whole reading, nothing is left to compare with a mean.
  const something = lines.every(({ lo }) => lo > leads.hi);
  const deviationPercent = shown?.deviationPercent ?? most;
  if (within(proven.hi, good) && something && !low) {
    return finding('winding-balanced', 'pass', { ...parts, deviationPercent, goodPercent: good });
  }
  const fewLeads: LimitId = low ? 'winding-four-leads-below' : 'winding-two-lead-contact';
  if (low || least > bad || (!fourLeads && something && within(most, good))) {
    return finding('winding-needs-four-leads', 'undecided', { ...parts, limits: [...limits, fewLeads] });
  }
  if (least > good && within(most, bad)) {
    const between = { ...parts, deviationPercent, goodPercent: good, badPercent: bad };
    return finding('winding-between-limits', 'undecided', between);
  }
  const coarse = { ...parts, leastPercent: least, mostPercent: most, goodPercent: good };
  return finding('winding-too-coarse', 'undecided', coarse);
}

/** Hand-held tips may have added to a reading, or to the zeroing before it. */
function withContact({ lo, hi }: Interval): Interval {
  const contact = limitValue('winding-two-lead-contact');
  return { lo: Math.max(0, lo - contact), hi: hi + contact };
}

/** The leads add the same to all three readings, so the deviation grows with what is subtracted: both ends bound it. */
function overLeads(lines: readonly Interval[], leads: Interval): Interval {
  return {
    lo: deviationInterval(lines.map((line) => lessBy(line, leads.lo))).lo,
    hi: deviationInterval(lines.map((line) => lessBy(line, leads.hi))).hi,
  };
}

export function lessBy({ lo, hi }: Interval, leads: number): Interval {
  return { lo: Math.max(0, lo - leads), hi: Math.max(0, hi - leads) };
}

/** Highest minus lowest, in percent of the mean: one and a half times to twice the deviation. */
function rangeOfMean(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return mean === 0 ? 0 : ((Math.max(...values) - Math.min(...values)) / mean) * 100;
}

/** Least and greatest deviation from the mean, in percent, that values in three finite intervals can have. */
export function deviationInterval(intervals: readonly Interval[]): Interval {
  const ends = intervals.flatMap(({ lo, hi }) => [lo, hi]);
  // Least with all values as close to one value as their intervals allow; greatest at a corner.
  const nearest = ends.map((target) => intervals.map(({ lo, hi }) => Math.min(Math.max(target, lo), hi)));
  return {
    lo: Math.min(...nearest.map(deviationFromMean)),
    hi: Math.max(...corners(intervals).map(deviationFromMean)),
  };
}
