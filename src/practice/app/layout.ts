import type { Terminal } from '../case/terminals.ts';

/* The drawing in units that are CSS pixels on the narrowest phone: a terminal of 48 is a target for a glove there. */

export const drawingSize = { width: 324, height: 690 };
export const terminalRadius = 24;

export const columnX = (column: number): number => 34 + 64 * column;

const rows: Record<Terminal['row'], number> = { bus: 70, drive: 146, 'drive-end': 236, 'motor-end': 348, motor: 438 };

export const rowY = (row: Terminal['row']): number => rows[row];

/** The sockets of the instrument. */
export const sockets = { red: { x: 60, y: 662 }, black: { x: 264, y: 662 } } as const;
