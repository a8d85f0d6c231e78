/** A cell of a table. */
export type Cell = string | number;

/**
 * A table as CSV (RFC 4180) with a byte order mark, so that a spreadsheet reads it as UTF-8. A text that a spreadsheet
 * would take for a formula gets an apostrophe before it: what somebody typed must never be run.
 */
export function csvOf(rows: readonly (readonly Cell[])[]): string {
  const lines = rows.map((row) => row.map(cellText).join(','));
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}

function cellText(cell: Cell): string {
  if (typeof cell === 'number') return String(cell);
  const safe = /^\s*[=+\-@\t\r|%]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}
