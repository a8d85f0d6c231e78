import { type FindingOf, type Verdict, verdictOf } from '../../../kernel/assessment/assessment.ts';
import type { LimitId } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type BalancePayloads, judgeBalance, lessBy } from './balance.ts';
import { type LeadHandling, type LeadPayloads, type Leads, leadsOf } from './leads.ts';
import { judgeContinuity, type OpenPayloads } from './open.ts';
import { type WindingPair, windingPairs } from './pairs.ts';
import { mapPairs, type OddOne, type Pairs } from './phases.ts';

type SetFinding = FindingOf<BalancePayloads & LeadPayloads & OpenPayloads>;

/** What holds for every set of readings of one input. */
export interface SetStatement {
  leads: LeadHandling;
  leadOhms: Reading;
  /** The meter, with one step of its display as the least error. */
  meter: Instrument;
  goodLimit: LimitId;
}

/** Three readings, judged by themselves. */
export interface WindingSet {
  verdict: Verdict;
  findings: SetFinding[];
  open: WindingPair[];
  /** What follows of three finite readings; undefined if one is not. */
  finite?: {
    intervals: Pairs<Interval>;
    leads: Leads;
    /** The readings without leads, as intervals and, if all are plain figures above them, as figures. */
    lines: Pairs<Interval>;
    net?: Pairs<number>;
    /** The pair that is farthest from the mean of the three. */
    odd: OddOne<WindingPair>;
  };
}

/** Whether three readings are alike; continuity first, since nothing else can be said of an open winding. */
export function judgeSet(
  readings: Pairs<Reading>,
  { leads: handling, leadOhms, meter, goodLimit }: SetStatement,
): WindingSet {
  const intervals = mapPairs(readings, (reading) => intervalOf(reading, meter));
  const { findings, open } = judgeContinuity(readings, intervals);
  if (findings.length > 0) return { verdict: verdictOf(findings), findings, open };
  const least = Math.min(...windingPairs.map((pair) => intervals[pair].hi));
  const leads = leadsOf(handling, leadOhms, meter, least);
  const net = netValues(readings, leads.value);
  const balance = judgeBalance({
    intervals,
    leads: leads.interval,
    fourLeads: handling === 'four',
    goodLimit,
    net: net && windingPairs.map((pair) => net[pair]),
  });
  const all: SetFinding[] = [...leads.findings, balance];
  const middle = (leads.interval.lo + leads.interval.hi) / 2;
  const lines = mapPairs(intervals, (line) => lessBy(line, middle));
  const odd = oddPair(mapPairs(intervals, ({ lo, hi }) => (lo + hi) / 2));
  return {
    verdict: verdictOf(all),
    findings: all,
    open,
    finite: { intervals, leads, lines, odd, ...(net && { net }) },
  };
}

function netValues(readings: Pairs<Reading>, leads: number): Pairs<number> | undefined {
  const net = mapPairs(readings, (reading) => (reading.kind === 'value' ? reading.value - leads : Number.NaN));
  return windingPairs.every((pair) => net[pair] > 0) ? net : undefined;
}

/** A low pair speaks less against the winding, so it is named if a high one is no farther off, in any order of the pairs. */
function oddPair(values: Pairs<number>): OddOne<WindingPair> {
  const mean = windingPairs.reduce((sum, pair) => sum + values[pair], 0) / windingPairs.length;
  const low = windingPairs.reduce((least, pair) => (values[pair] < values[least] ? pair : least));
  const high = windingPairs.reduce((most, pair) => (values[pair] > values[most] ? pair : most));
  return values[high] - mean > mean - values[low] ? { name: high, side: 'high' } : { name: low, side: 'low' };
}
