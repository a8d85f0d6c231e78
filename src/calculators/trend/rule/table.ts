import { limitValue } from '../../../kernel/limits.ts';
import { parseDate } from '../../../kernel/reading/calendar-date.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import { parseReading } from '../../../kernel/reading/parse-reading.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type Columns, columnsOf, isHead, usualColumns } from './columns.ts';
import type { KeptOutRow, TableOptions, TableProblem, TrendRow, TrendTable } from './input.ts';

const nothing = { rows: [], keptOut: [], unused: [] };

/**
 * Reads the cells of a record: a date, a resistance and a winding temperature in each row, in the columns that the
 * heads name, or in this order without heads. A row that can't be read completely is excluded with its reason; blank
 * rows are skipped. Returns rows in order of their dates.
 */
export function readTrendTable(cells: readonly (readonly string[])[], how: TableOptions = {}): TrendTable {
  const lines = cells
    .map((row, index) => ({ line: index + 1, cells: trimmedEnd(row) }))
    .filter((row) => row.cells.length > 0);
  const problem = (code: TableProblem): TrendTable => ({ ...nothing, problem: code });
  if (lines.length > limitValue('trend-rows')) return problem('too-many-rows');
  const headed = lines[0] !== undefined && isHead(lines[0].cells);
  const columns = headed ? columnsOf(lines[0]?.cells ?? []) : usualColumns;
  if ('problem' in columns) return problem(columns.problem);
  if (contradicts(columns.bareOhms, how.bareOhms)) return problem('unit-contradicts');
  const table: TrendTable = { rows: [], keptOut: [], unused: columns.unused };
  const seen = new Set<string>();
  for (const line of headed ? lines.slice(1) : lines) {
    const row = readRow(line, columns, how);
    if ('code' in row) {
      table.keptOut.push(row);
      continue;
    }
    const key = JSON.stringify([row.day, row.reading, row.temperature]);
    if (seen.has(key)) table.keptOut.push({ ...line, code: 'same-as-before', day: row.day });
    else table.rows.push(row);
    seen.add(key);
  }
  table.rows.sort((a, b) => a.day - b.day);
  return table;
}

interface Line {
  line: number;
  cells: readonly string[];
}

function readRow({ line, cells }: Line, columns: Columns, how: TableOptions): TrendRow | KeptOutRow {
  const keptOut = (code: KeptOutRow['code'], detail?: string, day?: number): KeptOutRow => ({
    ...{ line, cells, code },
    ...(detail !== undefined && { detail }),
    ...(day !== undefined && { day }),
  });
  if (cells.length > columns.width) return keptOut('too-many-cells');
  const date = parseDate(cells[columns.date] ?? '', how.dateOrder);
  if (!date.ok) return keptOut(date.code);
  const { day } = date;
  const { today = Number.POSITIVE_INFINITY } = how;
  if (day >= today + 1) return keptOut('date-in-future');
  const cell = (column: number) => withMark(cells[column] ?? '', how.decimalMark);
  const reading = parseReading(cell(columns.reading), 'resistance', columns.bareOhms ?? how.bareOhms);
  if (!reading.ok) return keptOut('reading-unreadable', reading.error.message, day);
  if (reading.reading.kind === 'missing') return keptOut('reading-missing', undefined, day);
  if (!hasFigure(reading.reading)) return keptOut('bound-not-noted', undefined, day);
  const unit = columns.bareTemperature ?? how.bareTemperature;
  const temperature = parseReading(cell(columns.temperature), 'temperature', unit);
  if (!temperature.ok) return keptOut('temperature-unreadable', temperature.error.message, day);
  if (temperature.reading.kind === 'missing') return keptOut('temperature-missing', undefined, day);
  return { line, cells, day, reading: reading.reading, temperature: temperature.reading };
}

function hasFigure(reading: Reading): boolean {
  if (reading.kind === 'over') return (reading.atLeast ?? 0) > 0;
  return reading.kind === 'under' ? (reading.atMost ?? 0) > 0 : true;
}

/**
 * A number with the file's decimal mark, rewritten so that no mark is in doubt: the other mark only separates groups
 * (`0.500` is not a number in a file with commas), and a point after a zero is the decimal mark.
 */
function withMark(text: string, mark: ',' | '.' | undefined): string {
  if (mark === undefined) return text;
  return text
    .replaceAll(mark === ',' ? '.' : ',', "'")
    .replace(mark, '.')
    .replace(/^(\D*)(\d+\.)/, (_, before: string, whole: string) => `${before}0${whole}`);
}

/** The head and the answer above the table name different units. */
function contradicts(inHead: string | undefined, chosen: string | undefined): boolean {
  const size = (unit: string) => {
    const result = parseReading(`1 ${unit}`, 'resistance');
    return result.ok && result.reading.kind === 'value' ? result.reading.value : undefined;
  };
  return inHead !== undefined && chosen !== undefined && size(inHead) !== size(chosen);
}

function trimmedEnd(cells: readonly string[]): string[] {
  const trimmed = cells.map((cell) => cell.trim());
  while (lastIn(trimmed) === '') trimmed.pop();
  return trimmed;
}
