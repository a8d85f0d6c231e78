import type { ReadForm } from '../../kernel/form/read-form.ts';
import { withRow } from './cells.ts';
import { keptOutReason } from './row-words.ts';
import { readTrendTable } from './rule/table.ts';
import { tableOptions } from './table-options.ts';

/** The rows with one more, or why the new one can't be used. `now` in ms from 1970-01-01. */
export function addedRow(
  rows: string,
  cells: string[],
  read: ReadForm,
  now: number,
): { rows: string } | { wrong: string } {
  const [bad] = readTrendTable([cells], tableOptions(read, now)).keptOut;
  return bad === undefined ? { rows: withRow(rows, cells) } : { wrong: keptOutReason(bad) };
}
