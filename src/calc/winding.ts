import { type Assessment, type Finding, finding, type Step, step, verdictOf } from './assessment.ts';
import { type Instrument, type Interval, intervalOf } from './interval.ts';
import { type LimitId, limitValue } from './limits.ts';
import type { Reading } from './reading.ts';
import { deviationFromMean, within } from './spread.ts';

export type WindingPair = 'UV' | 'VW' | 'WU';

export const windingPairs: readonly WindingPair[] = ['UV', 'VW', 'WU'];

/** Line-to-line resistances in Ω, leads zeroed; `instrument` describes the meter. */
export interface WindingInput {
  readings: Record<WindingPair, Reading>;
  instrument?: Instrument;
}

export type WindingCode =
  | 'winding-incomplete'
  | 'winding-open'
  | 'winding-range-not-noted'
  | 'winding-balanced'
  | 'winding-unbalanced'
  | 'winding-between-limits'
  | 'winding-too-coarse'
  | 'winding-passed'
  | 'winding-failed';

export type WindingStepCode =
  | 'measure-pairs'
  | 'note-winding-range'
  | 'use-milliohm-meter'
  | 'measure-at-motor'
  | 'ask-for-surge-test';

export type WindingAssessment = Assessment<WindingCode, WindingStepCode>;

/**
 * Whether the three windings are alike: the largest deviation from the mean passes up to one published limit, fails
 * above another, and decides nothing between. An open winding fails. One step of the display always counts as error,
 * because servo windings read fractions of an ohm and a multimeter shows few digits of it.
 */
export function assessWinding({ readings, instrument = {} }: WindingInput): WindingAssessment {
  const present = windingPairs.filter((pair) => readings[pair].kind !== 'missing');
  const absent = windingPairs.filter((pair) => readings[pair].kind === 'missing');
  const findings: Finding<WindingCode>[] = [];
  if (absent.length > 0) findings.push(finding('winding-incomplete', 'undecided', { readings: [...absent] }));
  const intervals = new Map(present.map((pair) => [pair, coarse(readings[pair], instrument)] as const));
  const open = present.filter((pair) => isOpen(readings[pair], intervals.get(pair)));
  if (open.length > 0) {
    findings.push(finding('winding-open', 'fail', { readings: [...open], limits: ['winding-open'] }));
  }
  const unnoted = present.filter(
    (pair) => !open.includes(pair) && intervals.get(pair)?.hi === Number.POSITIVE_INFINITY,
  );
  if (unnoted.length > 0) findings.push(finding('winding-range-not-noted', 'undecided', { readings: [...unnoted] }));
  if (open.length === 0 && unnoted.length === 0 && absent.length === 0) {
    findings.push(judgeBalance(readings, [...intervals.values()]));
  }
  return conclude(findings);
}

function coarse(reading: Reading, instrument: Instrument): Interval {
  return intervalOf(reading, { ...instrument, counts: Math.max(1, instrument.counts ?? 0) });
}

/** OL between two terminals of a winding of a few ohms is an open circuit on any range. */
function isOpen(reading: Reading, interval: Interval | undefined): boolean {
  if (reading.kind === 'over' && reading.atLeast === undefined) return true;
  return interval !== undefined && interval.lo > limitValue('winding-open');
}

function judgeBalance(readings: WindingInput['readings'], intervals: Interval[]): Finding<WindingCode> {
  const good = limitValue('winding-unbalance-good');
  const bad = limitValue('winding-unbalance-bad');
  const limits: LimitId[] = ['winding-unbalance-good', 'winding-unbalance-bad'];
  const { lo: least, hi: most } = deviationInterval(intervals);
  const values = windingPairs.flatMap((pair) => {
    const reading = readings[pair];
    return reading.kind === 'value' ? [reading.value] : [];
  });
  const shown = values.length === 3 ? { deviation: deviationFromMean(values) } : {};
  const parts = { readings: [...windingPairs], limits, numbers: { ...shown, least, most, good, bad } };
  if (within(most, good)) return finding('winding-balanced', 'pass', parts);
  if (least > bad) return finding('winding-unbalanced', 'fail', parts);
  const sharp = least > good && within(most, bad);
  return finding(sharp ? 'winding-between-limits' : 'winding-too-coarse', 'undecided', parts);
}

/** Least and greatest deviation from the mean, in percent, that values in three finite intervals can have. */
export function deviationInterval(intervals: readonly Interval[]): Interval {
  const ends = intervals.flatMap(({ lo, hi }) => [lo, hi]);
  // Least where all are drawn as near to one value as their intervals let them; greatest at a corner.
  const nearest = ends.map((target) => intervals.map(({ lo, hi }) => Math.min(Math.max(target, lo), hi)));
  const corners = intervals.reduce<number[][]>(
    (sets, { lo, hi }) =>
      sets.flatMap((set) => [
        [...set, lo],
        [...set, hi],
      ]),
    [[]],
  );
  return {
    lo: Math.min(...nearest.map(deviationFromMean)),
    hi: Math.max(...corners.map(deviationFromMean)),
  };
}

const stepAfter: Partial<Record<WindingCode, WindingStepCode[]>> = {
  'winding-incomplete': ['measure-pairs'],
  'winding-range-not-noted': ['note-winding-range'],
  'winding-too-coarse': ['use-milliohm-meter'],
  'winding-between-limits': ['ask-for-surge-test'],
  'winding-failed': ['measure-at-motor'],
};

function conclude(findings: Finding<WindingCode>[]): WindingAssessment {
  const verdict = verdictOf(findings);
  const summary: Finding<WindingCode>[] = [];
  if (verdict === 'go') summary.push(finding('winding-passed', 'note'));
  if (verdict === 'no-go') summary.push(finding('winding-failed', 'note'));
  const all = [...findings, ...summary];
  const codes = all.flatMap(({ code }) => stepAfter[code] ?? []);
  return { verdict, findings: all, next: [...new Set(codes)].map((code): Step<WindingStepCode> => step(code)) };
}
