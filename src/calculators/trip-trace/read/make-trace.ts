import type { Typed } from '../../../kernel/form/field.ts';
import { medianStep, type Trace } from '../measure/trace.ts';
import { findTrip, nearest } from './find-trip.ts';
import { readSettings, type Settings, type SettingsProblems } from './settings.ts';
import type { TraceTable } from './trace-table.ts';

/** What was left out on the way from the file to the trace. */
export interface TraceRemarks {
  /** Rows without one of the currents or without a time. */
  rowsWithoutCurrent: number;
  /** The time goes back at this row: only what stands before it was taken. */
  timeGoesBackAt?: number;
}

type Made = { ok: true; trace: Trace; remarks: TraceRemarks } | { ok: false; problems: SettingsProblems };

/** Rows of equal time that a file may have: a clock that is coarser than the samples makes more. */
const mostEqualTimes = 0.05;

/**
 * The trace that a table holds by the person's answers, in s, A, V and min⁻¹. A row without a current or a time leaves a gap;
 * slower signals that are not in every row keep their last value.
 */
export function makeTrace(file: string, table: TraceTable, typed: Typed): Made {
  const { settings, problems } = readSettings(table, typed);
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const { columns } = settings;
  const raw = timeOf(table, settings);
  const used = [
    raw,
    table.columns[columns.colU ?? 0],
    table.columns[columns.colV ?? 0],
    ...(columns.colW === undefined ? [] : [table.columns[columns.colW]]),
  ];
  const kept: number[] = [];
  let timeGoesBackAt: number | undefined;
  let equal = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < table.rows; row++) {
    if (lacksOne(used, row)) continue;
    const now = raw[row] ?? 0;
    if (now < before) {
      timeGoesBackAt = row + 1;
      break;
    }
    if (now === before) equal++;
    before = now;
    kept.push(row);
  }
  if (kept.length < 8)
    return { ok: false, problems: { colTime: timeGoesBackAt === undefined ? 'no-values' : 'time-not-rising' } };
  if (equal > mostEqualTimes * kept.length) return { ok: false, problems: { colTime: 'time-too-coarse' } };
  const trace = assembled(file, table, settings, raw, kept);
  const outside = settings.tripMoment !== undefined && isOutside(trace.time, settings.tripMoment, trace.step);
  if (outside) return { ok: false, problems: { tripTime: 'outside-the-file' } };
  const rowsWithoutCurrent = (timeGoesBackAt === undefined ? table.rows : timeGoesBackAt - 1) - kept.length;
  return { ok: true, trace, remarks: { rowsWithoutCurrent, ...(timeGoesBackAt !== undefined && { timeGoesBackAt }) } };
}

function timeOf(table: TraceTable, { columns, sampleSeconds, timeScale = 1 }: Settings): Float64Array {
  const column = columns.colTime === undefined ? undefined : table.columns[columns.colTime];
  if (column === undefined) return Float64Array.from({ length: table.rows }, (_, row) => row * (sampleSeconds ?? 1));
  return column.map((value) => value * (sampleSeconds ?? timeScale));
}

function assembled(
  file: string,
  table: TraceTable,
  settings: Settings,
  raw: Float64Array,
  kept: readonly number[],
): Trace {
  const { columns, currentScale, inAmperes, busScale, speedScale, polePairs } = settings;
  const series = (column: number | undefined, scale = 1) => {
    const values = column === undefined ? undefined : table.columns[column];
    return values && held(values, kept, scale);
  };
  const time = held(raw, kept, 1);
  const u = series(columns.colU, currentScale) ?? new Float64Array();
  const v = series(columns.colV, currentScale) ?? new Float64Array();
  const third = series(columns.colW, currentScale);
  const currents = [u, v, third ?? u.map((one, i) => -one - (v[i] ?? 0))] as const;
  const step = medianStep(time);
  const found =
    settings.tripMoment === undefined
      ? findTrip(time, currents, step)
      : { trip: nearest(time, settings.tripMoment), tripFrom: 'typed' as const };
  const optional = {
    bus: series(columns.colBus, busScale),
    speed: series(columns.colSpeed, speedScale),
    position: series(columns.colPosition),
    torque: series(columns.colTorque),
  };
  return {
    file,
    time,
    step,
    currents,
    inAmperes,
    measured: third === undefined ? 2 : 3,
    busInVolts: busScale !== undefined,
    speedInRpm: speedScale !== undefined,
    ...found,
    ...(polePairs !== undefined && { polePairs }),
    ...(Object.fromEntries(Object.entries(optional).filter(([, values]) => values !== undefined)) as Pick<
      Trace,
      'bus'
    >),
  };
}

/** A signal that is not in every row keeps its last value; before its first one it has that. */
function held(values: Float64Array, kept: readonly number[], scale: number): Float64Array {
  let last = values.find((value) => !Number.isNaN(value)) ?? 0;
  const out = new Float64Array(kept.length);
  for (let i = 0; i < out.length; i++) {
    const value = values[kept[i] ?? 0] ?? Number.NaN;
    if (!Number.isNaN(value)) last = value;
    out[i] = last * scale;
  }
  return out;
}

function lacksOne(columns: readonly (Float64Array | undefined)[], row: number): boolean {
  for (const column of columns) if (Number.isNaN(column?.[row] ?? Number.NaN)) return true;
  return false;
}

const isOutside = (time: Float64Array, moment: number, step: number) =>
  moment < (time[0] ?? 0) - step || moment > (time[time.length - 1] ?? 0) + step;
