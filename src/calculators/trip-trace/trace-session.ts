import type { Typed } from '../../kernel/form/field.ts';
import { limitValue } from '../../kernel/limits.ts';
import { writeKeptTrace } from './kept-trace.ts';
import { measureTrace } from './measure/measure-trace.ts';
import { plotSeries } from './plot-series.ts';
import { type ColumnField, proposedColumns, statedUnits } from './read/columns.ts';
import { makeTrace } from './read/make-trace.ts';
import type { DecimalMark } from './read/number-cell.ts';
import type { SettingsProblems } from './read/settings.ts';
import { TraceReader } from './read/trace-reader.ts';
import type { ReadProblem, TraceTable } from './read/trace-table.ts';

/** What the person sees of a file that was read. */
export interface OpenedFile extends Pick<TraceTable, 'rows' | 'remarks' | 'remarked' | 'blanks' | 'comments' | 'mark'> {
  name: string;
  /** Each column with its name, its unit and its first values. */
  columns: { name: string; unit: string; first: string }[];
  /** Proposed columns and the units that the file states. */
  proposal: Record<ColumnField, string> & Typed;
}

export type Opened = { ok: true; file: OpenedFile } | { ok: false; problem: ReadProblem | 'unreadable'; line?: number };
export type Measured = { ok: true; kept: string } | { ok: false; problems: SettingsProblems };

/** How far the reading has come: share of the file, and rows. */
export interface Progress {
  share: number;
  rows: number;
}

/** Read at a time: small enough that a page without a worker stays responsive in between. */
const pieceBytes = 1 << 18;

/** One file that is open: read once, then measured by each set of answers. */
export class TraceSession {
  #table: TraceTable | undefined;
  #name = '';

  async open(
    file: Blob,
    name: string,
    mark: DecimalMark | undefined,
    onProgress: (progress: Progress) => void,
  ): Promise<Opened> {
    this.#table = undefined;
    this.#name = name;
    if (file.size > limitValue('trace-file')) return { ok: false, problem: 'too-large' };
    const reader = new TraceReader(mark);
    for (let at = 0; at < file.size; at += pieceBytes) {
      let piece: ArrayBuffer;
      try {
        piece = await file.slice(at, at + pieceBytes).arrayBuffer();
      } catch {
        return { ok: false, problem: 'unreadable' };
      }
      if (!reader.push(new Uint8Array(piece))) break;
      onProgress({ share: Math.min(1, (at + pieceBytes) / file.size), rows: reader.rows });
    }
    const read = reader.end();
    if (!read.ok) return read;
    this.#table = read.table;
    return { ok: true, file: seen(read.table, name) };
  }

  /** Undefined if no file is open. */
  measure(typed: Typed): Measured | undefined {
    if (this.#table === undefined) return undefined;
    const made = makeTrace(this.#name, this.#table, typed);
    if (!made.ok) return made;
    const { trace, remarks } = made;
    return { ok: true, kept: writeKeptTrace({ figures: measureTrace(trace), plot: plotSeries(trace), remarks }) };
  }
}

/** Values of a column that are shown beside its name. */
const firstValues = 3;

function seen(table: TraceTable, name: string): OpenedFile {
  const { rows, remarks, remarked, blanks, comments, mark } = table;
  const columns = table.names.map((column, index) => ({
    name: column,
    unit: table.units[index] ?? '',
    first: Array.from(table.columns[index]?.subarray(0, firstValues) ?? [], (value) =>
      Number.isNaN(value) ? '–' : String(Number(value.toPrecision(6))),
    ).join(', '),
  }));
  const proposed = proposedColumns(table);
  return {
    name,
    rows,
    remarks,
    remarked,
    blanks,
    comments,
    mark,
    columns,
    proposal: { ...proposed, ...statedUnits(table, proposed) },
  };
}
