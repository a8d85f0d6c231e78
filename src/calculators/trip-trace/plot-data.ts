import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { spanOf } from '../../ui/plot/domain.ts';
import { type Frame, plotFrame } from '../../ui/plot/frame.ts';
import type { TableData } from '../../ui/plot/PlotTable.tsx';
import type { Pair } from '../../ui/plot/place-pairs.ts';
import type { KeptTrace } from './kept-trace.ts';

interface Drawn {
  frame: Frame;
  curves: Pair[][];
  table: TableData;
  /** Place of the trip on the time axis. */
  trip: number;
}

const phases = ['U', 'V', 'W'];

/** Milliseconds from the trip: the figures of the file may be times of day. */
const fromTrip = (seconds: number, { figures }: KeptTrace) => 1000 * (seconds - figures.tripSeconds);
const number = (value: number) => String(Number(value.toPrecision(3))).replace('-', '−');

/** The three currents in the last moments. */
export function nearPlot(kept: KeptTrace): Drawn {
  const { near } = kept.plot;
  const unit = kept.figures.inAmperes ? 'A' : '%';
  const count = near.currents[0].length;
  const at = (index: number) => fromTrip(near.from + ((near.to - near.from) * index) / Math.max(1, count - 1), kept);
  const curves = near.currents.map((values) =>
    values.map((value, index): Pair => [at(index), (value / 1000) * near.top]),
  );
  const highest = Math.max(...curves.flat().map(([, y]) => Math.abs(y)), 1e-9);
  const frame = plotFrame(
    { kind: 'linear', domain: spanOf([at(0), at(count - 1)]), label: 'time from the trip, ms', format: number },
    { kind: 'linear', domain: [-1.05 * highest, 1.05 * highest], label: `current, ${unit}`, format: number },
  );
  const every = Math.max(1, Math.ceil(count / 30));
  const rows = Array.from({ length: Math.ceil(count / every) }, (_, row) => row * every);
  const table = {
    summary: 'The last moments as a table',
    head: ['Time, ms', ...phases.map((phase) => `${phase}, ${unit}`)],
    rows: rows.map((index) => [number(at(index)), ...curves.map((curve) => number(curve[index]?.[1] ?? 0))]),
    ...(every > 1 && { note: `Every ${every}th sample drawn.` }),
  };
  return { frame, curves, table, trip: 0 };
}

/** All of the recording: highest current, speed and bus, each as a share of its own highest figure. */
export function wholePlot(kept: KeptTrace): Drawn {
  const { whole } = kept.plot;
  const series = [whole.current, whole.speed, whole.bus];
  const count = whole.current.length;
  const at = (index: number) => fromTrip(whole.from + ((whole.to - whole.from) * (index + 0.5)) / count, kept);
  const curves = series.map((values) => (values ?? []).map((value, index): Pair => [at(index), value / 10]));
  const ends: [number, number] = [fromTrip(whole.from, kept), fromTrip(whole.to, kept)];
  const frame = plotFrame(
    { kind: 'linear', domain: spanOf(ends), label: 'time from the trip, ms', format: number },
    { kind: 'linear', domain: [0, 105], label: '% of the highest', format: number },
  );
  const every = Math.max(1, Math.ceil(count / 30));
  const rows = Array.from({ length: Math.ceil(count / every) }, (_, row) => row * every);
  const cell = (value: number | undefined) => (value === undefined ? '' : number(value));
  const table = {
    summary: 'The whole recording as a table',
    head: ['Time, ms', `Current, % of ${top(kept)}`, 'Speed, %', 'Bus, %'],
    rows: rows.map((index) => [number(at(index)), ...curves.map((curve) => cell(curve[index]?.[1]))]),
  };
  return { frame, curves, table, trip: 0 };
}

const top = ({ plot, figures }: KeptTrace) =>
  figures.inAmperes ? formatRounded(plot.whole.top, 'A') : `${number(plot.whole.top)} %`;

/** What a reader who can't see the drawings needs from them. */
export function traceInWords(kept: KeptTrace): { near: string; whole: string } {
  const { figures } = kept;
  const unit = (value: number) => (figures.inAmperes ? formatRounded(value, 'A') : `${number(value)} %`);
  return {
    near: `Currents of U, V and W around the trip. The highest up to the trip is ${unit(figures.peaks.atTrip)}; before the last moments it was ${unit(figures.peaks.before)}.`,
    whole: `Highest current, speed and bus voltage of the whole recording of ${formatRounded(figures.spanSeconds, 's')}, with the trip marked.`,
  };
}
