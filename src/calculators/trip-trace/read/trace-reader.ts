import { limitValue } from '../../../kernel/limits.ts';
import { fileKind } from './file-kind.ts';
import { GrowingColumn } from './growing-column.ts';
import { type DecimalMark, isAbsent, isClock, numberIn } from './number-cell.ts';
import { readPlainRow } from './plain-row.ts';
import { isOpen } from './split-cells.ts';
import { rowOf, type TableFormat, tableFormat } from './table-format.ts';
import type { LineRemark, ReadProblem, TraceFile, TraceTable } from './trace-table.ts';

/** Lines from which the format is found. */
const linesToLookAt = 400;
const mostRemarks = 20;
/** Letters of a line: more than 256 columns of 100 letters have. */
const longestLine = 30_000;
/** A quoted cell that is longer was not closed. */
const mostLinesOfARow = 20;

/**
 * Reads the file of a recorder in pieces of any size, so that the whole text is never in memory at once. Every line is a row,
 * a comment or a remark with its number: nothing is left out unseen.
 */
export class TraceReader {
  readonly #askedMark: DecimalMark | undefined;
  #decoder: TextDecoder | undefined;
  #carry = '';
  #row = '';
  #rowLines = 0;
  #line = 0;
  #waiting: string[] | undefined = [];
  #format: TableFormat | undefined;
  #columns: GrowingColumn[] = [];
  #values = new Float64Array();
  readonly #mostRows = limitValue('trace-rows');
  #ended = false;
  #problem: { problem: ReadProblem; line?: number } | undefined;
  readonly #table = {
    remarks: [] as TraceTable['remarks'],
    remarked: 0,
    blanks: 0,
    comments: 0,
    clocks: [] as boolean[],
  };

  constructor(askedMark?: DecimalMark) {
    this.#askedMark = askedMark;
  }

  /** Rows read so far, to show how far the reading has come. */
  get rows(): number {
    return this.#columns[0]?.length ?? 0;
  }

  /** Takes the next piece of the file. Returns false once there is no use in reading on. */
  push(bytes: Uint8Array): boolean {
    if (this.#problem !== undefined) return false;
    if (this.#decoder === undefined) {
      const kind = fileKind(bytes);
      if (!kind.ok) return this.#fail(kind.problem);
      this.#decoder = new TextDecoder(kind.encoding);
    }
    this.#take(this.#decoder.decode(bytes, { stream: true }));
    return this.#problem === undefined && !this.#ended;
  }

  end(): TraceFile {
    if (this.#problem === undefined && this.#decoder === undefined) this.#fail('empty');
    if (this.#problem === undefined && this.#decoder !== undefined) this.#take(`${this.#decoder.decode()}\n`);
    if (this.#problem === undefined && this.#row !== '')
      this.#fail('quote-not-closed', this.#line - this.#rowLines + 1);
    if (this.#problem === undefined && this.#waiting !== undefined) this.#begin();
    if (this.#problem === undefined && this.rows < limitValue('trace-rows-least')) this.#fail('too-few-rows');
    if (this.#problem !== undefined || this.#format === undefined)
      return { ok: false, ...(this.#problem ?? { problem: 'empty' }) };
    return {
      ok: true,
      table: { ...this.#format, ...this.#table, columns: this.#columns.map((one) => one.values()), rows: this.rows },
    };
  }

  #fail(problem: ReadProblem, line?: number): false {
    this.#problem = line === undefined ? { problem } : { problem, line };
    return false;
  }

  #take(text: string): void {
    const whole = this.#carry + text;
    // A carriage return at the end may be half of a line end.
    const held = whole.endsWith('\r') ? 1 : 0;
    const lines = (held ? whole.slice(0, -1) : whole).split(/\r\n|\n|\r/);
    this.#carry = (lines.pop() ?? '') + (held ? '\r' : '');
    const tooLong = lines.findIndex((line) => line.length > longestLine);
    if (tooLong >= 0 || this.#carry.length > longestLine) {
      this.#fail('line-too-long', this.#line + (tooLong < 0 ? lines.length : tooLong) + 1);
      return;
    }
    for (const line of lines) {
      if (this.#problem !== undefined || this.#ended) return;
      this.#line++;
      this.#takeLine(line);
    }
  }

  #takeLine(line: string): void {
    const row = this.#row === '' ? line : `${this.#row}\n${line}`;
    this.#rowLines++;
    if (isOpen(row)) {
      this.#row = row;
      if (this.#rowLines > mostLinesOfARow) this.#fail('quote-not-closed', this.#line - this.#rowLines + 1);
      return;
    }
    this.#row = '';
    this.#rowLines = 0;
    if (this.#waiting === undefined) this.#takeRow(row, this.#line);
    else if (this.#waiting.push(row) >= linesToLookAt) this.#begin();
  }

  /** Finds the format from the first lines, then reads them as rows. */
  #begin(): void {
    const lines = this.#waiting ?? [];
    this.#waiting = undefined;
    const format = tableFormat(lines, this.#askedMark);
    if ('problem' in format) {
      this.#fail(lines.every((line) => line.trim() === '') ? 'empty' : format.problem);
      return;
    }
    this.#format = format;
    this.#columns = format.names.map(() => new GrowingColumn());
    this.#values = new Float64Array(format.width);
    const first = rowOf(lines[format.linesBefore] ?? '', format);
    this.#table.clocks = format.names.map((_, column) => isClock(first[column] ?? ''));
    for (const [index, line] of lines.entries()) {
      if (index >= format.linesBefore && !this.#ended) this.#takeRow(line, index + 1);
    }
  }

  #takeRow(line: string, number: number): void {
    const format = this.#format;
    if (format === undefined) return;
    if (!readPlainRow(line, format.separator, format.mark, this.#values) && !this.#takeOddRow(line, number, format))
      return;
    if (this.rows >= this.#mostRows) {
      this.#fail('too-many-rows', number);
      return;
    }
    for (let column = 0; column < this.#columns.length; column++) {
      const value = this.#values[column] ?? Number.NaN;
      if (Number.isNaN(value)) this.#table.blanks++;
      this.#columns[column]?.push(value);
    }
  }

  /** Reads a row that is not all plain numbers. False if it is none of the recording. */
  #takeOddRow(line: string, number: number, format: TableFormat): boolean {
    if (line.trim() === '') return false;
    if (/^\s*(#|\/\/)/.test(line)) {
      this.#table.comments++;
      return false;
    }
    const cells = rowOf(line, format);
    if (cells.length > format.width) return this.#remark(number, 'cells-too-many');
    // A row that ends with empty cells may be written short.
    const isShort = cells.length < format.width && !/[;,|\t]\s*$/.test(line);
    if (isShort) return this.#remark(number, this.#startsAgain(cells) ? 'second-recording' : 'cells-missing');
    for (let column = 0; column < format.width; column++) {
      const cell = cells[column] ?? '';
      const value = numberIn(cell, format.mark);
      this.#values[column] = value;
      if (!Number.isNaN(value) || isAbsent(cell)) continue;
      return this.#remark(number, this.#startsAgain(cells) ? 'second-recording' : 'not-a-number');
    }
    return true;
  }

  /** The names of the columns come once more: another recording begins, and its times with it. */
  #startsAgain(cells: readonly string[]): boolean {
    const names = this.#format?.names ?? [];
    return names.some((name) => name !== '') && names.every((name, column) => name === (cells[column] ?? '').trim());
  }

  #remark(line: number, remark: LineRemark): false {
    this.#table.remarked++;
    if (this.#table.remarks.length < mostRemarks) this.#table.remarks.push({ line, remark });
    if (remark === 'second-recording') this.#ended = true;
    return false;
  }
}
