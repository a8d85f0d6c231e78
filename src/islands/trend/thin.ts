import type { CorrectedRow } from '../../calc/index.ts';
import { lastIn } from '../../calc/last-in.ts';

/** As many rows as are drawn one by one. */
const mostDrawn = 300;

/** Spans of time that a long record is cut into for the drawing: about two units of it each. */
const spans = 120;

/**
 * The rows to draw. Of a long record the lowest and the highest of each span of time and kind, and every sudden fall, so
 * that nothing that stands out is lost from sight. The line is made from all rows, never from these.
 */
export function rowsToDraw(rows: readonly CorrectedRow[]): readonly CorrectedRow[] {
  const first = rows[0]?.day ?? 0;
  const length = (lastIn(rows)?.day ?? 0) - first;
  if (rows.length <= mostDrawn || length === 0) return rows;
  const extremes = new Map<string, { low: CorrectedRow; high: CorrectedRow }>();
  for (const row of rows) {
    const key = `${row.kind} ${Math.min(spans - 1, Math.floor(((row.day - first) / length) * spans))}`;
    const { low, high } = extremes.get(key) ?? { low: row, high: row };
    extremes.set(key, {
      low: row.corrected < low.corrected ? row : low,
      high: row.corrected > high.corrected ? row : high,
    });
  }
  const kept = new Set([...extremes.values()].flatMap(({ low, high }) => [low, high]));
  return rows.filter((row) => row.drop || kept.has(row));
}
