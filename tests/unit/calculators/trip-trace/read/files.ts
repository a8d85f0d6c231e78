import { expect, it } from 'vitest';
import type { lineRemarks } from '../../../../../src/calculators/trip-trace/read/file-problems.ts';
import type { TraceFile, TraceTable } from '../../../../../src/calculators/trip-trace/read/trace-table.ts';
import { readBytes, readText, rows } from './read-text.ts';

export const head = 'Time;iU;iV;iW';
export const bytes = (...values: number[]) => Uint8Array.from(values);
export const utf16 = (text: string, mark: boolean) => {
  const codes = [...(mark ? '\ufeff' : ''), ...text].map((letter) => letter.charCodeAt(0));
  return Uint8Array.from(codes.flatMap((code) => [code & 255, code >> 8]));
};
export const joined = (first: Uint8Array, text: string) =>
  Uint8Array.from([...first, ...new TextEncoder().encode(text)]);
export const changed = (text: string, line: number, into: string) =>
  text
    .split('\n')
    .map((one, i) => (i === line ? into : one))
    .join('\n');
export const withLast = (ends: string) =>
  rows()
    .split('\n')
    .map((row) => `${row}${ends}`)
    .join('\n');

export type Check = (table: TraceTable) => void;
export const whole: Check = ({ rows: count, remarked, columns }) => {
  expect([count, remarked, columns.length]).toEqual([40, 0, 4]);
  expect(columns[0]?.[39]).toBeCloseTo(4.875, 9);
  expect(columns[1]?.[0]).toBeCloseTo(8, 9);
  expect(columns[2]?.[0]).toBeCloseTo(-4, 9);
};
export const named =
  (names: string[], units: string[]): Check =>
  (table) => {
    expect([table.names, table.units]).toEqual([names, units]);
    whole(table);
  };
export const plainNames = named(['Time', 'iU', 'iV', 'iW'], ['', '', '', '']);
export const without =
  (lines: number[], remark: keyof typeof lineRemarks, count: number): Check =>
  (table) => {
    expect(table.remarks).toEqual(lines.map((line) => ({ line, remark })));
    expect(table.rows).toBe(count);
  };

export const readOf = (content: string | Uint8Array, piece?: number): TraceFile =>
  typeof content === 'string' ? readText(content, piece) : readBytes(content, piece);

/** A file that is read: its name, its content, and what must have been understood. */
export type ReadFile = [string, string | Uint8Array, Check];

export function readsEach(files: ReadFile[]): void {
  it.each(files)('%s', (_, content, check) => {
    const file = readOf(content);
    expect(file).toMatchObject({ ok: true });
    if (file.ok) check(file.table);
  });

  it.each(files)('the same in small pieces: %s', (_, content) => {
    expect(readOf(content, 4096)).toEqual(readOf(content));
    // The first piece must hold enough to tell what the file is; the others may be of any size.
    expect(readOf(content, 997)).toEqual(readOf(content));
  });
}
