import type { Terminal } from '../case/terminals.ts';

/* Units are CSS pixels on the narrowest phone, where a terminal of 48 px is large enough for a gloved finger. */

export const drawingSize = { width: 324, height: 690 };
export const terminalRadius = 24;

export const columnX = (column: number): number => 34 + 64 * column;

const rows: Record<Terminal['row'], number> = { bus: 70, drive: 146, 'drive-end': 236, 'motor-end': 348, motor: 438 };

export const rowY = (row: Terminal['row']): number => rows[row];

/** The sockets of the instrument. */
export const sockets = { red: { x: 60, y: 662 }, black: { x: 264, y: 662 } } as const;
