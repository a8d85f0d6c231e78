import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { machineMinimum } from '../../../kernel/electrics/machine-minimum.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import { findDrops } from './drops.ts';
import type { CorrectedRow, TrendAssessment, TrendFinding, TrendInput, TrendPayloads, TrendStepCode } from './input.ts';
import { methodFindings, newestFindings } from './newest.ts';
import { horizonAfter, outlookOf } from './outlook.ts';
import { impossibleRecord, tableFindings, upToToday } from './record.ts';
import { boundsOf, correctRows } from './rows.ts';

const finding = findingMaker<TrendPayloads>();

/**
 * Whether insulation is getting worse over the years: each reading corrected to the temperature of the minima, a robust
 * line through the logarithms, and when it meets the minimum of the machine's class, as a range. Go holds for the time
 * `trend-horizon` after the last value; the line must stay above the minimum for as long after the newest row, which
 * may be a bound. Too few readings, a sudden fall, an excluded newest row or a verdict that depends on the correction
 * method leave it undecided. Clearing a cell of the newest day never makes a go. A deleted row leaves no trace here, so
 * a go names the last reading behind it and ends earlier the older that reading is. An impossible figure or day gives
 * `figure-impossible`: undecided, nothing is judged.
 */
export function assessTrend(input: TrendInput): TrendAssessment {
  const reference = limitValue('reference-temperature-routine');
  const { table, correction } = input;
  const impossible = impossibleRecord(input);
  if (impossible.length > 0) return assessed(impossible, { rows: [], keptOut: table.keptOut, reference });
  const minimum = minimumOf(input);
  const { past, future } = upToToday(input);
  const { rows, keptOut } = correctRows(past, correction, reference);
  const allKeptOut = [...table.keptOut, ...keptOut, ...future].sort((a, b) => a.line - b.line);
  const findings = tableFindings(table, allKeptOut, rows);
  const parts = { rows, keptOut: allKeptOut, reference, ...(minimum !== undefined && { minimum }) };
  if (minimum === undefined) findings.push(finding('trend-rated-voltage-missing', 'undecided'));
  if (minimum === undefined || rows.length === 0) return assessed(findings, parts);
  const outlook = outlookOf(rows, minimum);
  const judged = [...newestFindings(input, rows, minimum), ...outlook.findings];
  findings.push(...judged, ...dropFindings(rows));
  if (verdictOf(judged) === 'go') findings.push(...methodFindings(input, rows, minimum));
  const withExpiry = verdictOf(findings) === 'go' ? expired(findings, input, rows, outlook.fit?.lastDay) : findings;
  withExpiry.push(finding('trend-only-the-record', 'note'));
  return assessed(withExpiry, { ...parts, ...(outlook.fit && { fit: outlook.fit }) });
}

type Parts = Omit<TrendAssessment, 'verdict' | 'findings' | 'next'>;

function assessed(findings: TrendFinding[], parts: Parts): TrendAssessment {
  return { verdict: verdictOf(findings), findings, next: steps(findings), ...parts };
}

function minimumOf({ machineClass, ratedVoltage }: TrendInput): number | undefined {
  if (machineClass === 'pre-1970' && ratedVoltage.kind !== 'value') return undefined;
  return machineMinimum(machineClass, ratedVoltage.kind === 'value' ? ratedVoltage.value : 0);
}

/**
 * A go that held until a past day says nothing about today. Today is at least the newest row's day: a bound noted more
 * than a year after the last value does not extend the go.
 */
function expired(
  findings: TrendFinding[],
  { today = Number.NEGATIVE_INFINITY }: TrendInput,
  rows: readonly CorrectedRow[],
  lastDay = 0,
): TrendFinding[] {
  const day = horizonAfter(lastDay);
  if (Math.max(today, lastIn(rows)?.day ?? lastDay) <= day) return findings;
  // First, so that its step comes first: "measure yearly" does not help if a reading is needed now.
  return [
    finding('trend-go-expired', 'undecided', { limits: ['trend-horizon'], day }),
    ...findings.filter(({ code }) => code !== 'trend-holds-until'),
  ];
}

function dropFindings(rows: readonly CorrectedRow[]): TrendFinding[] {
  const drops = findDrops(rows.map(boundsOf));
  const limits: LimitId[] = ['trend-drop', 'trend-drop-before'];
  const parts = (some: typeof drops) => {
    const day = rows[lastIn(some)?.index ?? 0]?.day ?? 0;
    return { limits, count: some.length, day, factor: limitValue('trend-drop') };
  };
  const open = drops.filter((drop) => drop.open);
  const recovered = drops.filter((drop) => !drop.open);
  return [
    ...(open.length > 0 ? [finding('trend-drop-open', 'undecided', parts(open))] : []),
    ...(recovered.length > 0 ? [finding('trend-drop-recovered', 'caution', parts(recovered))] : []),
  ];
}

const stepAfter: Partial<Record<TrendFinding['code'], TrendStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'trend-table-problem': ['mend-table'],
  'trend-no-rows': ['type-readings'],
  'trend-dates-ambiguous': ['state-date-order'],
  'trend-newest-kept-out': ['mend-newest-row'],
  'trend-rated-voltage-missing': ['state-trend-voltage'],
  'trend-last-below': ['judge-reading-itself', 'separate-and-repair'],
  'trend-last-unknown': ['note-range-of-over', 'judge-reading-itself'],
  'trend-methods-differ': ['measure-at-one-temperature'],
  'trend-too-few': ['measure-yearly'],
  'trend-too-short': ['measure-yearly'],
  'trend-meets-now': ['measure-again-soon', 'judge-reading-itself'],
  'trend-meets-within': ['measure-again-soon', 'measure-at-one-temperature'],
  'trend-meets-later': ['measure-yearly'],
  'trend-not-within': ['measure-yearly'],
  'trend-go-expired': ['take-a-reading-now'],
  'trend-drop-open': ['find-cause-of-drop'],
  'trend-over-range-contradicts': ['note-range-of-over'],
  'trend-under-range': ['judge-reading-itself'],
};

function steps(findings: readonly TrendFinding[]): Step<TrendStepCode>[] {
  return [...new Set(findings.flatMap(({ code }) => stepAfter[code] ?? []))].map((code) => step(code));
}
