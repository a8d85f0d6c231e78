import type { Assessment } from './assessment.ts';
import type { DateErrorCode, DateOrder } from './calendar-date.ts';
import type { MachineClass } from './machine-minimum.ts';
import type { FigureCode, FigureStepCode } from './possible-figures.ts';
import type { Reading } from './reading.ts';
import type { CorrectionMethod } from './temperature-correction.ts';
import type { TrendFit } from './trend-fit.ts';

/** One reading of the record: resistance in Ω, winding temperature in °C, `day` in days from 1970-01-01. */
export interface TrendRow {
  /** Where it stood in what was typed, from 1. */
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

/** A row that takes no part, with the reason; `detail` is what the reader of a cell says about it. */
export interface KeptOutRow {
  line: number;
  cells: readonly string[];
  code: KeptOutCode;
  detail?: string;
  /** Where its date could be read. */
  day?: number;
}

/** What stands in the way of reading any row. */
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
  /** Heads of columns that are not used. */
  unused: string[];
}

/** How cells are to be understood where they do not say it themselves. */
export interface TableReading {
  dateOrder?: DateOrder;
  /** Of a resistance without a unit, such as `MΩ`. */
  bareOhms?: string;
  /** `C` or `F`, of a temperature without a unit. */
  bareTemperature?: string;
  /** Where the file has one: `1,250` is then no longer in doubt. */
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
  /** In days from 1970-01-01; where it is given, a go that no longer holds is none, and a later reading is kept out. */
  today?: number;
}

export type TrendCode =
  | FigureCode
  | 'trend-table-problem'
  | 'trend-no-rows'
  | 'trend-rows-kept-out'
  | 'trend-newest-kept-out'
  | 'trend-dates-ambiguous'
  | 'trend-columns-unused'
  | 'trend-rated-voltage-missing'
  | 'trend-last-below'
  | 'trend-last-above'
  | 'trend-last-unknown'
  | 'trend-methods-differ'
  | 'trend-too-few'
  | 'trend-too-short'
  | 'trend-meets-now'
  | 'trend-meets-within'
  | 'trend-meets-later'
  | 'trend-not-within'
  | 'trend-change'
  | 'trend-direction-unknown'
  | 'trend-drop-open'
  | 'trend-drop-recovered'
  | 'trend-over-range'
  | 'trend-over-range-contradicts'
  | 'trend-under-range'
  | 'trend-holds-until'
  | 'trend-go-expired'
  | 'trend-only-the-record';

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

/** A row as it is drawn: `corrected` in Ω at the temperature of the limit. */
export interface CorrectedRow extends TrendRow {
  corrected: number;
  kind: 'value' | 'over' | 'under';
  drop: boolean;
}

export interface TrendAssessment extends Assessment<TrendCode, TrendStepCode> {
  rows: CorrectedRow[];
  keptOut: KeptOutRow[];
  /** Absent where there are too few readings for a line. */
  fit?: TrendFit;
  /** In Ω; absent where the rated voltage is missing. */
  minimum?: number;
  /** In °C. */
  reference: number;
}
