import { formatDay } from '../../kernel/reading/calendar-date.ts';
import { formatQuantity, formatReading, formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { decadesAround, spanOf } from '../../ui/plot/domain.ts';
import { type Frame, plotFrame } from '../../ui/plot/frame.ts';
import type { TableData } from '../../ui/plot/PlotTable.tsx';
import type { Point } from '../../ui/plot/Points.tsx';
import type { Pair } from '../../ui/plot/place-pairs.ts';
import { linearTicks } from '../../ui/plot/ticks.ts';
import type { CorrectedRow, TrendAssessment } from './rule/input.ts';
import { daysPerYear, type TrendFit } from './rule/line-fit.ts';

/** Rows in the text table; nobody would read a longer one. */
const mostListed = 200;

/** More dots would run together. */
const mostDots = 60;

interface TrendPlotData {
  frame: Frame;
  points: Point[];
  line: Pair[];
  upper: Pair[];
  lower: Pair[];
  table: TableData;
}

const yearOf = (day: number) => 1970 + day / daysPerYear;
const dayOf = (year: number) => (year - 1970) * daysPerYear;

/** What the plot shows: the corrected readings over the years, the line, and its possible range. */
export function trendPlotData({ rows, fit, minimum, reference }: TrendAssessment): TrendPlotData | undefined {
  const first = rows[0];
  const last = lastIn(rows);
  if (first === undefined || last === undefined) return undefined;
  // As far to the right as the record is long, which is as far as the line predicts.
  const ahead = fit === undefined ? 0 : Math.max(daysPerYear, fit.lastDay - fit.firstDay) / 2;
  const years = spanOf([yearOf(first.day), yearOf(last.day + ahead)]);
  const frame = plotFrame(
    { kind: 'linear', domain: years, label: 'year', format: yearText, ticks: linearTicks(...years, 4) },
    {
      kind: 'log10',
      domain: decadesAround([...rows.map(({ corrected }) => corrected), ...(minimum ? [minimum] : [])]),
      label: `resistance, at ${formatRounded(reference, '°C')}`,
      format: (value) => formatQuantity(value, 'Ω'),
    },
  );
  const plain = rows.length > mostDots ? 'speck' : 'dot';
  const points = rows.map((row): Point => ({ x: yearOf(row.day), y: row.corrected, shape: shapeOf(row, plain) }));
  return { frame, points, table: tableOf(rows), ...linesOf(fit, years) };
}

/** A year, or a month if the record is short. */
function yearText(year: number): string {
  return Number.isInteger(year) ? String(year) : formatDay(dayOf(year)).slice(0, 7);
}

function shapeOf({ kind, drop }: CorrectedRow, plain: Point['shape']): Point['shape'] {
  if (kind === 'over') return 'above';
  if (kind === 'under') return 'below';
  return drop ? 'cross' : plain;
}

function linesOf(fit: TrendFit | undefined, [from, to]: readonly [number, number]) {
  if (fit === undefined) return { line: [], upper: [], lower: [] };
  const lastYear = yearOf(fit.lastDay);
  const at = (height: number, slope: number, year: number) => 10 ** (height + slope * (year - lastYear));
  const places = Array.from({ length: 25 }, (_, index) => from + ((to - from) * index) / 24);
  const { heights, range, slope } = fit;
  const edges = (year: number) => [at(heights.lo, range.lo, year), at(heights.hi, range.hi, year)];
  return {
    line: places.map((year): Pair => [year, at(heights.middle, slope, year)]),
    upper: places.map((year): Pair => [year, Math.max(...edges(year))]),
    lower: places.map((year): Pair => [year, Math.min(...edges(year))]),
  };
}

function tableOf(rows: readonly CorrectedRow[]): TableData {
  const listed = rows.slice(-mostListed);
  const bounds = { value: '', over: 'at least ', under: 'at most ' };
  return {
    summary: 'The readings as a table',
    head: ['Day', 'Read', 'Winding', 'Corrected', 'Remark'],
    rows: listed.map((row) => [
      formatDay(row.day),
      formatReading(row.reading),
      formatReading(row.temperature),
      `${bounds[row.kind]}${formatRounded(row.corrected, 'Ω')}`,
      row.drop ? 'sudden fall' : row.kind === 'value' ? '' : 'bound, not in the line',
    ]),
    ...(rows.length > listed.length && { note: `The newest ${listed.length} of ${rows.length} readings.` }),
  };
}
