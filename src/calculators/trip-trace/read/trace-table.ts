import type { FileProblem } from './file-kind.ts';
import type { FormatProblem, TableFormat } from './table-format.ts';

export type ReadProblem =
  | FileProblem
  | FormatProblem
  | 'too-many-rows'
  | 'quote-not-closed'
  | 'too-few-rows'
  | 'line-too-long';

/** Lines of the file that were not taken as a row of the recording, with what is remarkable about them. */
export type LineRemark = 'cells-missing' | 'cells-too-many' | 'not-a-number' | 'second-recording';

/** The numbers of a file, column by column; NaN for a value that the file does not have. */
export interface TraceTable extends TableFormat {
  columns: Float64Array[];
  rows: number;
  /** Columns with times of day, in s from midnight. */
  clocks: boolean[];
  remarks: { line: number; remark: LineRemark }[];
  /** How many lines have a remark; only the first few are listed. */
  remarked: number;
  /** Values that the file does not have. */
  blanks: number;
  comments: number;
}

export type TraceFile = { ok: true; table: TraceTable } | { ok: false; problem: ReadProblem; line?: number };
