import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import type { CorrectedRow, TrendFinding, TrendPayloads } from './input.ts';
import { daysPerYear, fitTrend, lineAt, type Meeting, meetingOf, percentPerYear, type TrendFit } from './line-fit.ts';
import { newestRows } from './rows.ts';
import { median } from './theil-sen.ts';

const finding = findingMaker<TrendPayloads>();

const usedHere: LimitId[] = ['trend-confidence', 'trend-horizon'];

interface Outlook {
  findings: TrendFinding[];
  fit?: TrendFit;
}

/** What the line through the values says about the time until the minimum (Ω). `rows` in order of time. */
export function outlookOf(rows: readonly CorrectedRow[], minimum: number): Outlook {
  const values = rows.filter(({ kind }) => kind === 'value');
  const fit = fitTrend(values);
  if (fit === undefined) {
    return {
      findings: [finding('trend-too-few', 'undecided', { limits: usedHere, count: values.length })],
    };
  }
  const meeting = meetingOf(fit, lastValue(values), minimum);
  // The next yearly reading is due a year after the newest row, which may be a bound and newer than any value.
  const nextReading = horizonAfter(lastIn(rows)?.day ?? fit.lastDay);
  return {
    fit,
    findings: [...changeFindings(fit), ...meetingFindings(fit, meeting, nextReading), ...boundFindings(rows, fit)],
  };
}

/** The day until which a go looks ahead. */
export function horizonAfter(lastDay: number): number {
  return lastDay + limitValue('trend-horizon') * daysPerYear;
}

/** If there are several readings on the last day, the lowest counts. */
function lastValue(values: readonly CorrectedRow[]): number {
  return Math.min(...newestRows(values).map(({ corrected }) => corrected));
}

function changeFindings({ slope, range, count }: TrendFit): TrendFinding[] {
  const change = finding('trend-change', 'note', {
    limits: ['trend-confidence'],
    count,
    changePercent: percentPerYear(slope),
    leastPercent: percentPerYear(range.lo),
    mostPercent: percentPerYear(range.hi),
  });
  return range.lo < 0 && range.hi > 0 ? [change, finding('trend-direction-unknown', 'note')] : [change];
}

function meetingFindings(fit: TrendFit, { earliest, latest }: Meeting, nextReading: number): TrendFinding[] {
  const years = (fit.lastDay - fit.firstDay) / daysPerYear;
  const needed = (nextReading - fit.lastDay) / daysPerYear;
  // A line predicts no further than its record is long.
  const reach = fit.lastDay + (fit.lastDay - fit.firstDay);
  const meets = {
    limits: usedHere,
    reachDay: reach,
    ...(earliest <= reach && { earliestDay: earliest }),
    ...(latest <= reach && { latestDay: latest }),
  };
  if (earliest <= fit.lastDay) return [finding('trend-meets-now', 'undecided', { limits: usedHere })];
  if (earliest <= nextReading) return [finding('trend-meets-within', 'undecided', meets)];
  if (years < needed) {
    return [finding('trend-too-short', 'undecided', { limits: usedHere, years, neededYears: needed })];
  }
  return [
    finding(earliest <= reach ? 'trend-meets-later' : 'trend-not-within', 'pass', meets),
    finding('trend-holds-until', 'note', {
      limits: ['trend-horizon'],
      day: horizonAfter(fit.lastDay),
      years: limitValue('trend-horizon'),
    }),
  ];
}

/**
 * Over-range readings are lower bounds: not part of the line, but they can contradict it. One above the median of the
 * later values hides a fall of unknown size; one after all values is compared with the line. A lower last value removes
 * neither contradiction, as it would if each were compared with a line that the lower value tilts.
 */
function boundFindings(rows: readonly CorrectedRow[], fit: TrendFit): TrendFinding[] {
  const over = rows.filter(({ kind }) => kind === 'over');
  if (over.length === 0) return [];
  const above = over.filter(({ corrected, day }) => {
    const later = rows.filter((one) => one.kind === 'value' && one.day >= day).map((one) => one.corrected);
    return corrected > (later.length > 0 ? median(later) : lineAt(fit, day));
  });
  return above.length > 0
    ? [finding('trend-over-range-contradicts', 'undecided', { count: over.length, above: above.length })]
    : [finding('trend-over-range', 'note', { count: over.length })];
}
