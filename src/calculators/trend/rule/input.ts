import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { CorrectionMethod } from '../../../kernel/electrics/correction-validity.ts';
import type { MachineClass } from '../../../kernel/electrics/machine-minimum.ts';
import type { DateErrorCode, DateOrder } from '../../../kernel/reading/calendar-date.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { TrendFit } from './line-fit.ts';

/** One reading of the record: resistance in Ω, winding temperature in °C, `day` in days from 1970-01-01. */
export interface TrendRow {
  /** Line number in what was typed, from 1. */
  line: number;
  cells: readonly string[];
  day: number;
  reading: Reading;
  temperature: Reading;
}

export type KeptOutCode =
  | DateErrorCode
  | 'date-in-future'
  | 'reading-missing'
  | 'reading-unreadable'
  | 'bound-not-noted'
  | 'temperature-missing'
  | 'temperature-unreadable'
  | 'temperature-out-of-validity'
  | 'too-many-cells'
  | 'same-as-before';

/** An unused row with the reason; `detail` is the message of the cell's reader. */
export interface KeptOutRow {
  line: number;
  cells: readonly string[];
  code: KeptOutCode;
  detail?: string;
  /** Present if its date could be read. */
  day?: number;
}

/** What prevents every row from being read. */
export type TableProblem =
  | 'too-many-rows'
  | 'quote-not-closed'
  | 'column-missing'
  | 'column-twice'
  | 'unit-contradicts';

/** The record as it was read. */
export interface TrendTable {
  rows: TrendRow[];
  keptOut: KeptOutRow[];
  problem?: TableProblem;
  /** Heads of unused columns. */
  unused: string[];
}

/** How to read cells that are not clear by themselves. */
export interface TableOptions {
  dateOrder?: DateOrder;
  /** Of a resistance without a unit, such as `MΩ`. */
  bareOhms?: string;
  /** `C` or `F`, of a temperature without a unit. */
  bareTemperature?: string;
  /** If the file has one: `1,250` is then clear. */
  decimalMark?: ',' | '.';
  /** The last day that a reading can have been taken, in days from 1970-01-01. */
  today?: number;
}

/** `ratedVoltage` in V, line to line; only windings made before about 1970 need it. */
export interface TrendInput {
  table: TrendTable;
  correction: CorrectionMethod;
  machineClass: MachineClass;
  ratedVoltage: Reading;
  /** In days from 1970-01-01; if given, an expired go becomes undecided and a later reading is excluded. */
  today?: number;
}

interface Count {
  count: number;
}

/** The lowest reading of the newest day; days from 1970-01-01. */
export interface NewestJudged {
  day: number;
  kind: CorrectedRow['kind'];
  correctedOhms: number;
  minimumOhms: number;
}

/**
 * Between which days the line meets the minimum: `reachDay` is the last day that the record can predict, and a day
 * beyond it is absent.
 */
export interface MeetsMinimum {
  earliestDay?: number;
  latestDay?: number;
  reachDay: number;
}

interface Drops {
  count: number;
  /** Of the last one. */
  day: number;
  factor: number;
}

export interface TrendPayloads extends FigurePayloads {
  'trend-table-problem': { problem: TableProblem };
  'trend-no-rows': Nothing;
  'trend-rows-kept-out': Count;
  'trend-newest-kept-out': Nothing;
  'trend-dates-ambiguous': Count;
  'trend-columns-unused': { columns: string[] };
  'trend-rated-voltage-missing': Nothing;
  'trend-last-below': NewestJudged;
  'trend-last-above': NewestJudged;
  'trend-last-unknown': NewestJudged;
  'trend-methods-differ': { methods: CorrectionMethod[] };
  'trend-too-few': Count;
  'trend-too-short': { years: number; neededYears: number };
  'trend-meets-now': Nothing;
  'trend-meets-within': MeetsMinimum;
  'trend-meets-later': MeetsMinimum;
  'trend-not-within': { reachDay: number };
  /** A year. */
  'trend-change': Count & { changePercent: number; leastPercent: number; mostPercent: number };
  'trend-direction-unknown': Nothing;
  'trend-drop-open': Drops;
  'trend-drop-recovered': Drops;
  'trend-over-range': Count;
  'trend-over-range-contradicts': Count & { above: number };
  'trend-under-range': Count;
  'trend-holds-until': { day: number; years: number };
  'trend-go-expired': { day: number };
  'trend-only-the-record': Nothing;
}

export type TrendFinding = FindingOf<TrendPayloads>;

export type TrendStepCode =
  | FigureStepCode
  | 'mend-table'
  | 'mend-newest-row'
  | 'state-date-order'
  | 'state-trend-voltage'
  | 'type-readings'
  | 'measure-again-soon'
  | 'take-a-reading-now'
  | 'measure-yearly'
  | 'measure-at-one-temperature'
  | 'find-cause-of-drop'
  | 'note-range-of-over'
  | 'judge-reading-itself'
  | 'separate-and-repair';

/** A row for the plot: `corrected` in Ω at the temperature of the limit. */
export interface CorrectedRow extends TrendRow {
  corrected: number;
  kind: 'value' | 'over' | 'under';
  drop: boolean;
}

export interface TrendAssessment extends Assessment<TrendFinding, Step<TrendStepCode>> {
  rows: CorrectedRow[];
  keptOut: KeptOutRow[];
  /** Absent with too few readings for a line. */
  fit?: TrendFit;
  /** In Ω; absent without the rated voltage. */
  minimum?: number;
  /** In °C. */
  reference: number;
}
