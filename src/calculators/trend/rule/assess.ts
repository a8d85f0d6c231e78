import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { limitOfClass, machineMinimum } from '../../../kernel/electrics/machine-minimum.ts';
import {
  type CorrectionMethod,
  correctionMethods,
  limitsOfMethod,
} from '../../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import { findDrops } from './drops.ts';
import type {
  CorrectedRow,
  NewestJudged,
  TrendAssessment,
  TrendFinding,
  TrendInput,
  TrendPayloads,
  TrendStepCode,
} from './input.ts';
import { horizonAfter, outlookOf } from './outlook.ts';
import { impossibleRecord, tableFindings, upToToday } from './record.ts';
import { correctRows, knownOf, newestRows } from './rows.ts';

const finding = findingMaker<TrendPayloads>();

/**
 * Whether insulation is getting worse over the years: each reading carried to the temperature of the minima, a robust
 * line through the logarithms, and when it meets the minimum of the machine's class, as a range. Go holds for the time of
 * the limit `trend-horizon` after the last value; the line must stay above the minimum as long after the newest row, which
 * may be a bound. Too few readings, a sudden fall, a newest row that is kept out or a verdict that hangs on the correction
 * method leave it undecided. A cell of the newest day that is cleared never makes a go; a row that is deleted whole is
 * unknown here, so a go names the last reading that it rests on and ends the sooner, the older that is. A figure that is no
 * number or below zero, or a day that no record can have, is `figure-impossible`: undecided, nothing is judged.
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
  const told = verdictOf(findings) === 'go' ? expired(findings, input, rows, outlook.fit?.lastDay) : findings;
  told.push(finding('trend-only-the-record', 'note'));
  return assessed(told, { ...parts, ...(outlook.fit && { fit: outlook.fit }) });
}

type Parts = Omit<TrendAssessment, 'verdict' | 'findings' | 'next'>;

function assessed(findings: TrendFinding[], parts: Parts): TrendAssessment {
  return { verdict: verdictOf(findings), findings, next: steps(findings), ...parts };
}

function minimumOf({ machineClass, ratedVoltage }: TrendInput): number | undefined {
  if (machineClass === 'pre-1970' && ratedVoltage.kind !== 'value') return undefined;
  return machineMinimum(machineClass, ratedVoltage.kind === 'value' ? ratedVoltage.value : 0);
}

type Stands = 'below' | 'above' | 'unknown';

/** All readings of the newest day count: the lowest decides. */
function standOfNewest(rows: readonly CorrectedRow[], minimum: number): Stands {
  const newest = newestRows(rows).map(knownOf);
  if (newest.some(({ most }) => most < minimum)) return 'below';
  return newest.every(({ least }) => least >= minimum) ? 'above' : 'unknown';
}

function newestFindings(input: TrendInput, rows: readonly CorrectedRow[], minimum: number): TrendFinding[] {
  const [last] = newestRows(rows).sort((a, b) => knownOf(a).most - knownOf(b).most || a.corrected - b.corrected);
  if (last === undefined) return [];
  const limits: LimitId[] = [
    limitOfClass[input.machineClass],
    'reference-temperature-routine',
    ...limitsOfMethod[input.correction],
  ];
  const { kind, day } = last;
  const parts = { limits, kind, day, correctedOhms: last.corrected, minimumOhms: minimum };
  const stands = standOfNewest(rows, minimum);
  const found = [stands === 'below' ? belowFinding(input, rows, minimum, parts) : standFindings[stands](parts)];
  const under = rows.filter(({ kind }) => kind === 'under').length;
  if (under === 0) return found;
  // What lies below a bound after the last value is not known at all.
  const lastOf = (wanted: CorrectedRow['kind']) => rows.map(({ kind }) => kind).lastIndexOf(wanted);
  const severity = lastOf('under') > lastOf('value') ? 'undecided' : 'caution';
  return [...found, finding('trend-under-range', severity, { count: under })];
}

type NewestParts = NewestJudged & { limits: LimitId[] };

const standFindings = {
  above: (parts: NewestParts) => finding('trend-last-above', 'pass', parts),
  unknown: (parts: NewestParts) => finding('trend-last-unknown', 'undecided', parts),
};

/** The rules of correction are for unlike insulations: a verdict that hangs on which one was chosen is none. */
function belowFinding(input: TrendInput, rows: readonly CorrectedRow[], minimum: number, parts: NewestParts) {
  const newest = newestRows(rows);
  const dissenting = otherMethods(input, newest, (other) => standOfNewest(other, minimum) !== 'below');
  return dissenting.length === 0 ? finding('trend-last-below', 'fail', parts) : methodsDiffer(dissenting);
}

/** A go by the chosen rule must be one by every other that reaches all rows: fewer rows would be another record. */
function methodFindings(input: TrendInput, rows: readonly CorrectedRow[], minimum: number): TrendFinding[] {
  const isGo = (other: CorrectedRow[]) =>
    standOfNewest(other, minimum) === 'above' && verdictOf(outlookOf(other, minimum).findings) === 'go';
  const dissenting = otherMethods(input, rows, (other) => !isGo(other));
  return dissenting.length === 0 ? [] : [methodsDiffer(dissenting)];
}

function otherMethods(
  { correction }: TrendInput,
  rows: readonly CorrectedRow[],
  differs: (rows: CorrectedRow[]) => boolean,
): CorrectionMethod[] {
  return correctionMethods.filter((method) => {
    if (method === correction) return false;
    const other = correctRows(rows, method, limitValue('reference-temperature-routine'));
    return other.keptOut.length === 0 && differs(other.rows);
  });
}

function methodsDiffer(methods: readonly CorrectionMethod[]): TrendFinding {
  const limits = methods.flatMap((method) => limitsOfMethod[method]);
  return finding('trend-methods-differ', 'undecided', { limits, methods: [...methods] });
}

/**
 * A go that held until a day that has passed says nothing about today. Today is the newest row's day at least: a bound
 * that was noted more than a year after the last value does not stretch the go to it.
 */
function expired(
  findings: TrendFinding[],
  { today = Number.NEGATIVE_INFINITY }: TrendInput,
  rows: readonly CorrectedRow[],
  lastDay = 0,
): TrendFinding[] {
  const day = horizonAfter(lastDay);
  if (Math.max(today, lastIn(rows)?.day ?? lastDay) <= day) return findings;
  // First, as its step is: a yearly reading is of no use to whoever needs one now.
  return [
    finding('trend-go-expired', 'undecided', { limits: ['trend-horizon'], day }),
    ...findings.filter(({ code }) => code !== 'trend-holds-until'),
  ];
}

function dropFindings(rows: readonly CorrectedRow[]): TrendFinding[] {
  const drops = findDrops(rows.map(knownOf));
  const limits: LimitId[] = ['trend-drop', 'trend-drop-before'];
  const told = (
    code: 'trend-drop-open' | 'trend-drop-recovered',
    severity: 'undecided' | 'caution',
    some: typeof drops,
  ) => {
    const day = rows[some[some.length - 1]?.index ?? 0]?.day ?? 0;
    const parts = { limits, count: some.length, day, factor: limitValue('trend-drop') };
    return some.length === 0 ? [] : [finding(code, severity, parts)];
  };
  return [
    ...told(
      'trend-drop-open',
      'undecided',
      drops.filter(({ open }) => open),
    ),
    ...told(
      'trend-drop-recovered',
      'caution',
      drops.filter(({ open }) => !open),
    ),
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
