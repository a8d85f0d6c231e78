import type { Typed } from '../../../kernel/form/field.ts';
import { parseReading } from '../../../kernel/reading/parse-reading.ts';
import { typedNumber } from './amount.ts';
import { type ColumnField, columnFields } from './columns.ts';
import type { TraceTable } from './trace-table.ts';

/** What an answer about the file still lacks, by its field. */
export type SettingsProblem =
  | 'column-missing'
  | 'column-taken'
  | 'unit-missing'
  | 'time-not-rising'
  | 'time-too-coarse'
  | 'sample-time-missing'
  | 'scale-missing'
  | 'not-a-figure'
  | 'outside-the-file'
  | 'no-values';

export type SettingsProblems = Partial<Record<string, SettingsProblem>>;

/** The answers about the file, as far as they can be understood; columns count from 0. */
export interface Settings {
  columns: Partial<Record<ColumnField, number>>;
  /** Factors to s, A, V and min⁻¹; absent if a unit says nothing of these. */
  timeScale?: number;
  currentScale: number;
  inAmperes: boolean;
  busScale?: number;
  speedScale?: number;
  /** In s, if the time is counted in samples or not recorded. */
  sampleSeconds?: number;
  tripMoment?: number;
  polePairs?: number;
}

const timeScales: Record<string, number> = { s: 1, ms: 1e-3, us: 1e-6 };
const speedScales: Record<string, number> = { rpm: 1, 'rad/s': 30 / Math.PI, '1/s': 60 };

/** Reads the answers about a file. Nothing is assumed for one that is missing: it becomes a problem beside its field. */
export function readSettings(table: TraceTable, typed: Typed): { settings: Settings; problems: SettingsProblems } {
  const problems: SettingsProblems = {};
  const settings: Settings = { columns: columnsOf(table, typed, problems), currentScale: 1, inAmperes: true };
  const { columns } = settings;
  for (const needed of ['colU', 'colV'] as const) {
    if (columns[needed] === undefined) problems[needed] ??= 'column-missing';
  }
  readTime(typed, settings, problems);
  readCurrent(typed, settings, problems);
  if (columns.colBus !== undefined && typed.busUnit === '') problems.busUnit = 'unit-missing';
  if (typed.busUnit === 'V') settings.busScale = 1;
  if (columns.colSpeed !== undefined && typed.speedUnit === '') problems.speedUnit = 'unit-missing';
  const speedScale = speedScales[typed.speedUnit ?? ''];
  if (speedScale !== undefined) settings.speedScale = speedScale;
  const polePairs = Number(typed.polePairs);
  if (polePairs >= 1) settings.polePairs = polePairs;
  return { settings, problems };
}

function columnsOf(table: TraceTable, typed: Typed, problems: SettingsProblems): Settings['columns'] {
  const columns: Settings['columns'] = {};
  const taken = new Set<number>();
  for (const field of columnFields) {
    const column = Number(typed[field]) - 1;
    if (!Number.isInteger(column) || column < 0 || column >= table.columns.length) continue;
    if (taken.has(column)) problems[field] = 'column-taken';
    else if (table.columns[column]?.every((value) => Number.isNaN(value))) problems[field] = 'no-values';
    else columns[field] = column;
    taken.add(column);
  }
  return columns;
}

function readTime(typed: Typed, settings: Settings, problems: SettingsProblems): void {
  const counted = settings.columns.colTime === undefined || typed.timeUnit === 'samples';
  const scale = timeScales[typed.timeUnit ?? ''];
  if (counted) {
    const read = parseReading(typed.sampleTime ?? '', 'seconds');
    if (!read.ok) problems.sampleTime = 'not-a-figure';
    else if (read.reading.kind !== 'value' || read.reading.value <= 0) problems.sampleTime = 'sample-time-missing';
    else settings.sampleSeconds = read.reading.value;
  } else if (scale === undefined) problems.timeUnit = 'unit-missing';
  else settings.timeScale = scale;
  const trip = (typed.tripTime ?? '').trim();
  if (trip === '') return;
  const moment = typedNumber(trip);
  if (moment === undefined) problems.tripTime = 'not-a-figure';
  else settings.tripMoment = moment * (settings.timeScale ?? settings.sampleSeconds ?? 1);
}

function readCurrent(typed: Typed, settings: Settings, problems: SettingsProblems): void {
  const unit = typed.currentUnit ?? '';
  if (unit === '') problems.currentUnit = 'unit-missing';
  if (unit === 'mA') settings.currentScale = 1e-3;
  if (unit === 'rms') settings.currentScale = Math.SQRT2;
  if (unit !== 'percent' && unit !== 'raw') return;
  const text = (typed.currentScale ?? '').trim();
  const scale = typedNumber(text.replace(/\s*A$/i, ''));
  if (text === '') settings.inAmperes = false;
  else if (scale === undefined || scale <= 0) problems.currentScale = 'not-a-figure';
  else settings.currentScale = unit === 'percent' ? scale / 100 : scale;
}
