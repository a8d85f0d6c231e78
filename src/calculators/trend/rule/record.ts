import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type FigureFinding, impossibleFigures, isPossible } from '../../../kernel/assessment/possible-figures.ts';
import { isDay } from '../../../kernel/reading/calendar-date.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import type {
  CorrectedRow,
  KeptOutRow,
  TrendFinding,
  TrendInput,
  TrendPayloads,
  TrendRow,
  TrendTable,
} from './input.ts';

const finding = findingMaker<TrendPayloads>();

/** The check of every calculator, plus days that no record can have. */
export function impossibleRecord({ table, ratedVoltage, today }: TrendInput): FigureFinding[] {
  const rows = table.rows.filter(
    ({ day, reading, temperature }) => !(isDay(day) && isPossible(reading) && isPossible(temperature)),
  );
  const days = [today, ...table.keptOut.map(({ day }) => day)].filter((day) => day !== undefined && !isDay(day));
  if (rows.length + days.length === 0) return impossibleFigures({ ratedVoltage });
  const readings = [...rows.map(({ line }) => `line ${line}`), ...(days.length > 0 ? ['date'] : [])];
  return [finding('figure-impossible', 'undecided', { readings })];
}

/** The rows in order of time, and those after today: the clock is wrong, or their date. */
export function upToToday({ table, today = Number.POSITIVE_INFINITY }: TrendInput): {
  past: TrendRow[];
  future: KeptOutRow[];
} {
  const rows = [...table.rows].sort((a, b) => a.day - b.day);
  const later = ({ day }: TrendRow) => day >= today + 1;
  return {
    past: rows.filter((row) => !later(row)),
    future: rows.filter(later).map(({ line, cells, day }) => ({ line, cells, day, code: 'date-in-future' })),
  };
}

/** Excluded rows are counted; one that may be the newest leaves the end of the record unknown. */
export function tableFindings(
  table: TrendTable,
  keptOut: readonly KeptOutRow[],
  rows: readonly CorrectedRow[],
): TrendFinding[] {
  if (table.problem !== undefined) {
    return [finding('trend-table-problem', 'undecided', { problem: table.problem })];
  }
  const found: TrendFinding[] = [];
  // All readings of the last day count alike, at any time of day.
  const newest = Math.floor(lastIn(rows)?.day ?? Number.NEGATIVE_INFINITY);
  const maybeNewest = keptOut.filter(
    ({ code, day }) => code !== 'same-as-before' && (day === undefined || !(day < newest)),
  );
  const ambiguous = keptOut.filter(({ code }) => code === 'date-ambiguous').length;
  if (rows.length === 0) found.push(finding('trend-no-rows', 'undecided'));
  if (ambiguous > 0) found.push(finding('trend-dates-ambiguous', 'undecided', { count: ambiguous }));
  if (maybeNewest.length > ambiguous) found.push(finding('trend-newest-kept-out', 'undecided'));
  if (keptOut.length > 0) found.push(finding('trend-rows-kept-out', 'caution', { count: keptOut.length }));
  if (table.unused.length > 0) {
    found.push(finding('trend-columns-unused', 'note', { columns: table.unused }));
  }
  return found;
}
