import { type DecimalMark, isAbsent, numberIn } from './number-cell.ts';
import { type Separator, splitCells } from './split-cells.ts';

/** How a table of numbers is written, found from its first lines. */
export interface TableFormat {
  separator: Separator;
  mark: DecimalMark;
  /** Cells of a row. */
  width: number;
  /** Every row ends with a separator, which makes no cell. */
  endsWithSeparator: boolean;
  /** The names of the columns; empty texts if the file has none. */
  names: string[];
  /** Their units, from a row of their own or in brackets behind the name. */
  units: string[];
  /** How many lines stand before the first row of numbers. */
  linesBefore: number;
}

export type FormatProblem = 'no-numbers' | 'one-column' | 'commas-both-ways' | 'marks-mixed' | 'too-many-columns';

/** More columns than any recorder writes: such a table has its signals in rows. */
const mostColumns = 256;

const separators: Separator[] = ['\t', ';', '|', ',', 'space'];

interface Try {
  separator: Separator;
  width: number;
  /** Lines that split into as many cells as most lines do, all of them numbers. */
  fitting: number[];
}

/**
 * Finds separator, decimal mark and head from the first lines of a file. The separator is the one that makes the most
 * lines of equally many numbers. A comma can't be both: that is refused, since a figure would be torn in two unseen.
 * `askedMark` is the person's answer, which goes before what the cells look like.
 */
export function tableFormat(
  lines: readonly string[],
  askedMark?: DecimalMark,
): TableFormat | { problem: FormatProblem } {
  const stated = /^"?sep=(.|\\t)"?$/i.exec(lines[0]?.trim() ?? '')?.[1];
  const given = stated === '\\t' ? '\t' : separators.find((one) => one === stated);
  const tries = (given ? [given] : separators).map((separator) => tried(lines, separator));
  const best = tries.reduce((a, b) => (score(b) > score(a) ? b : a));
  const least = Math.min(3, lines.filter((line) => line.trim() !== '').length);
  if (best.fitting.length < Math.max(1, least)) {
    const single = lines.filter((line) => isNumber(line)).length;
    return { problem: single >= 3 && single > lines.length / 2 ? 'one-column' : 'no-numbers' };
  }
  const cellsOf = (line: number) => splitCells(lines[line] ?? '', best.separator);
  const endsWithSeparator = best.fitting.every((line) => cellsOf(line)[best.width - 1]?.trim() === '');
  if (endsWithSeparator) best.width--;
  if (best.width > mostColumns) return { problem: 'too-many-columns' };
  const first = best.fitting[0] ?? 0;
  const { names, units } = headOf(lines.slice(0, first), best);
  if (best.separator === ',' && tornByCommas(lines, best, names)) return { problem: 'commas-both-ways' };
  const mark = askedMark ?? markOf(best.fitting.map(cellsOf));
  if (mark === undefined) return { problem: 'marks-mixed' };
  return { separator: best.separator, mark, width: best.width, endsWithSeparator, names, units, linesBefore: first };
}

const score = ({ width, fitting }: Try) => fitting.length * Math.min(width, 20);

function tried(lines: readonly string[], separator: Separator): Try {
  const rows = lines.map((line) => (line.trim() === '' ? [] : splitCells(line, separator)));
  const counts = new Map<number, number[]>();
  for (const [line, cells] of rows.entries()) {
    if (cells.length < 2 || !cells.some(isNumber) || !cells.every((cell) => isNumber(cell) || isAbsent(cell))) continue;
    counts.set(cells.length, [...(counts.get(cells.length) ?? []), line]);
  }
  const [width, fitting] = [...counts].reduce((a, b) => (b[1].length > a[1].length ? b : a), [0, [] as number[]]);
  return { separator, width, fitting };
}

/** The cells of a row of this table; the empty one behind the last separator is none. */
export function rowOf(line: string, { separator, width }: Pick<TableFormat, 'separator' | 'width'>): string[] {
  const cells = splitCells(line, separator);
  if (cells.length === width + 1 && cells[width]?.trim() === '') cells.pop();
  return cells;
}

function isNumber(cell: string): boolean {
  return !Number.isNaN(numberIn(cell, '.')) || !Number.isNaN(numberIn(cell, ','));
}

/**
 * `0,125,1,5,-2,25` is three figures or six. More cells than names give it away; so do pairs of columns of which the second
 * never has a sign, and cells that begin with zeros as decimals do.
 */
function tornByCommas(lines: readonly string[], { width, fitting }: Try, names: readonly string[]): boolean {
  const rows = fitting.map((line) => lines[line] ?? '');
  if (rows.some((row) => row.includes('"') || row.includes('.'))) return false;
  const named = names.filter((name) => name !== '').length;
  if (named > 0 && named * 2 === width) return true;
  const cells = rows.map((row) => row.split(','));
  const leadingZeros = cells.filter((row) => row.some((cell) => /^0\d/.test(cell.trim()))).length;
  return width % 2 === 0 && leadingZeros > rows.length / 4;
}

/** Comma or point, by which of them the cells have; undefined if some have one and some the other. */
function markOf(rows: readonly (readonly string[])[]): DecimalMark | undefined {
  let commas = 0;
  let points = 0;
  for (const cell of rows.flat()) {
    if (cell.includes(':')) continue;
    const last = Math.max(cell.lastIndexOf(','), cell.lastIndexOf('.'));
    if (last < 0) continue;
    // With both, the last one is the decimal mark.
    if (cell[last] === ',') commas++;
    else points++;
  }
  if (commas > 0 && points > 0) return undefined;
  return commas > 0 ? ',' : '.';
}

const unitLike =
  /^[[(]?\s*(m?s|[uµμ]s|sec|samples?|m?a|a[ _]?(rms|eff)|k?v|%|rpm|u?\/?min|min-1|min⁻¹|1\/(min|s)|rad(\/s)?|°|deg|mm|m|n\.?m|inc|counts?|hz|khz|pu|bool|-|–)?\s*[\])]?$/i;

function headOf(before: readonly string[], table: Try): Pick<TableFormat, 'names' | 'units'> {
  const blank = Array.from({ length: table.width }, () => '');
  const rows = before
    .map((line) => rowOf(line.replace(/^\s*(#|\/\/|%)\s*/, ''), table).map((cell) => cell.trim()))
    .filter((cells) => cells.length === table.width && cells.some((cell) => cell !== ''));
  const last = rows[rows.length - 1];
  if (last === undefined) return { names: blank, units: blank };
  const second = rows[rows.length - 2];
  const lastIsUnits = second !== undefined && last.every((cell) => unitLike.test(cell));
  const names = lastIsUnits ? second : last;
  const units = names.map((name, column) => bare(lastIsUnits ? (last[column] ?? '') : unitIn(name)));
  return { names, units };
}

const bare = (unit: string) => unit.replace(/^[[(]\s*|\s*[\])]$/g, '').trim();

/** The unit in a head such as `iU [A]`, `Speed (min-1)`, `t/ms`, `Current, A`. */
function unitIn(name: string): string {
  return /[[(]([^\])]*)[\])]\s*$/.exec(name)?.[1] ?? /(?:\/|,| in )\s*([^\s,/]+(?:\/\S+)?)$/.exec(name)?.[1] ?? '';
}
