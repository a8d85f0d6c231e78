import { dsvFormat } from 'd3-dsv';

const marks = ['\t', ';', ','] as const;

/** The cell separator: a tab if there is one (spreadsheets), else a semicolon, else a comma. */
function separatorOf(text: string): string {
  return marks.find((mark) => text.includes(mark)) ?? '\t';
}

/**
 * The cells of a pasted or opened table, quoted ones included. Undefined if a quotation mark is not closed: the rest of
 * the text would be one cell, and its rows would be lost unnoticed.
 */
export function cellsOf(text: string): string[][] | undefined {
  const { table, separator } = withoutPreamble(text);
  if ((table.match(/"/g)?.length ?? 0) % 2 === 1) return undefined;
  return dsvFormat(separator).parseRows(table);
}

/** Spreadsheets may put a byte order mark and a line `sep=;` first. */
function withoutPreamble(text: string): { table: string; separator: string } {
  const table = text.replace(/^\ufeff/, '');
  const stated = /^sep=(.)\r?\n/i.exec(table);
  if (stated === null) return { table, separator: separatorOf(table) };
  // A blank line in its place keeps the line numbers.
  return { table: table.slice(stated[0].length - 1), separator: stated[1] ?? ',' };
}

/** The text with one more row, with the separator of the rows before. */
export function withRow(text: string, cells: readonly string[]): string {
  const row = dsvFormat(separatorOf(text)).formatRow([...cells]);
  return text.trim() === '' ? `${row}\n` : `${text.trimEnd()}\n${row}\n`;
}
