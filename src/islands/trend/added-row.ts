import { readTrendTable } from '../../calc/index.ts';
import { keptOutReason } from '../../texts/trend-rows.ts';
import type { ReadForm } from '../form/read-form.ts';
import { withRow } from './cells.ts';
import { tableReading } from './table-reading.ts';

/** The rows with one more, or why the new one could not be used. */
export function addedRow(rows: string, cells: string[], read: ReadForm): { rows: string } | { wrong: string } {
  const [bad] = readTrendTable([cells], tableReading(read)).keptOut;
  return bad === undefined ? { rows: withRow(rows, cells) } : { wrong: keptOutReason(bad) };
}
