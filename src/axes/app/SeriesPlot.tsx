import { useEffect, useRef, useState } from 'preact/hooks';
import { verdictWords } from '../../kernel/form/verdict-words.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatQuantity, formatRounded } from '../../kernel/reading/format-reading.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import { decadesAround, spanOf } from '../../ui/plot/domain.ts';
import { plotFrame } from '../../ui/plot/frame.ts';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import { PlotTable, type TableData } from '../../ui/plot/PlotTable.tsx';
import { type Point, Points, type Shape } from '../../ui/plot/Points.tsx';
import { linearTicks } from '../../ui/plot/ticks.ts';
import type { Series, SeriesRow } from '../history/series.ts';
import { axesTexts } from '../words/axis.ts';

interface Props {
  series: Series;
  title: string;
}

/** The readings of one step over the years: a small plot if there are several days, and the table with the limits. */
export function SeriesPlot({ series, title }: Props) {
  const [isOpen, setOpen] = useState(false);
  const points = series.rows.flatMap((row) => pointsIn(row, series));
  const days = new Set(points.map(({ x }) => x));
  // The rows are drawn when the table is opened: with many visits they are most of the page.
  const table = tableOf(series, isOpen);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const toggled = ({ target }: Event) => {
      if (target instanceof HTMLDetailsElement) setOpen(target.open);
    };
    // The event does not bubble.
    place.current?.addEventListener('toggle', toggled, true);
    return () => place.current?.removeEventListener('toggle', toggled, true);
  }, []);
  if (days.size < 2) {
    return (
      <div class="axis-series" ref={place}>
        <h3>{title}</h3>
        <PlotTable {...table} />
      </div>
    );
  }
  const insulation = series.step === 'insulation' || series.step === 'isolation';
  const limit = insulation ? limitValue('after-trip-point') : undefined;
  const years = spanOf(points.map(({ x }) => x));
  const frame = plotFrame(
    { kind: 'linear', domain: years, label: 'year', format: yearText, ticks: linearTicks(...years, 4) },
    {
      kind: 'log10',
      // A limit at the foot of the plot would stand among the years.
      domain: decadesAround([...points.map(({ y }) => y), ...(limit === undefined ? [] : [limit / 2])]),
      label: 'resistance, as read',
      format: (value) => formatQuantity(value, 'Ω'),
    },
    { bottom: 220 },
  );
  return (
    <div class="axis-series" ref={place}>
      <h3>{title}</h3>
      <Plot
        id={`series-${series.step}`}
        title={`${title}: readings over the years`}
        desc={axesTexts.plotted(points.length, formatRounded(Math.min(...points.map(({ y }) => y)), 'Ω'))}
        frame={frame}
        table={table}
        caption={captionOf(series)}
      >
        {limit !== undefined && (
          <LimitLine frame={frame} at={limit} text={`after a trip ${formatRounded(limit, 'Ω')}`} below />
        )}
        <Points frame={frame} points={points} />
      </Plot>
    </div>
  );
}

const shapeNames: [Shape, string][] = [
  ['dot', 'Dots'],
  ['square', 'Squares'],
  ['triangle', 'Triangles'],
  ['ring', 'Rings'],
  ['cross', 'Crosses'],
];

/** Terminals of one part or rail look alike: what differs between them is in the table. */
const groupOf = (id: string) => /^(motor|cable|plus|minus)/.exec(id)?.[0] ?? id;

/** PE would press the insulation together, and the joined stage is drawn with its own step. */
const isDrawn = (id: string) => !/(PE$|^joined|^bonded)/.test(id);

function groupsIn({ fields }: Series): string[] {
  return [...new Set(fields.filter(({ id }) => isDrawn(id)).map(({ id }) => groupOf(id)))];
}

function captionOf(series: Series): string {
  const groups = groupsIn(series).map((group, index) => {
    const names = series.fields.filter(({ id }) => isDrawn(id) && groupOf(id) === group).map(({ name }) => name);
    return `${shapeNames[index % shapeNames.length]?.[1]}: ${names.join(', ')}.`;
  });
  return `${groups.join(' ')} Arrows: bounds.`;
}

function pointsIn({ at, readings }: SeriesRow, series: Series): Point[] {
  const x = Date.parse(at) / (365.25 * 86_400_000) + 1970;
  const groups = groupsIn(series);
  return series.fields
    .filter(({ id }) => isDrawn(id))
    .flatMap(({ id }): Point[] => {
      const y = ohmsOf(readings[id]);
      return y === undefined ? [] : [{ x, y, shape: shapeOf(readings[id], groups.indexOf(groupOf(id))) }];
    });
}

function ohmsOf(reading: Reading | undefined): number | undefined {
  const ohms =
    reading?.kind === 'value'
      ? reading.value
      : reading?.kind === 'over'
        ? reading.atLeast
        : reading?.kind === 'under'
          ? reading.atMost
          : undefined;
  return ohms !== undefined && ohms > 0 ? ohms : undefined;
}

function shapeOf(reading: Reading | undefined, index: number): Shape {
  if (reading?.kind === 'over') return 'above';
  if (reading?.kind === 'under') return 'below';
  return shapeNames[index % shapeNames.length]?.[0] ?? 'dot';
}

const yearText = (year: number) =>
  Number.isInteger(year) ? String(year) : new Date((year - 1970) * 365.25 * 86_400_000).toISOString().slice(0, 7);

function tableOf({ fields, rows }: Series, drawn: boolean): TableData {
  return {
    summary: 'The readings as a table',
    head: ['Day', ...fields.map(({ name }) => name), 'Verdict then', 'Limits then'],
    rows: (drawn ? [...rows] : [])
      .reverse()
      .map((row) => [
        row.baseline ? `${row.at.slice(0, 10)} (baseline)` : row.at.slice(0, 10),
        ...fields.map(({ id }) => row.texts[id] ?? ''),
        Object.entries(verdictWords).find(([verdict]) => verdict === row.verdict)?.[1] ?? '',
        row.limits.map(({ label, value }) => `${label} ${value}`).join('; '),
      ]),
  };
}
