import { limitValue } from '../../../kernel/limits.ts';

/** The bounds of a corrected reading, in Ω: over-range has no upper bound, under-range has zero as the lower one. */
export interface CorrectedBounds {
  least: number;
  most: number;
}

interface Drop {
  /** Index in the record. */
  index: number;
  /** No later reading has certainly returned to the level below which it is a drop. */
  open: boolean;
}

/**
 * Sudden falls: readings below each of the few before them by the factor `trend-drop`. Comparing with each of them
 * keeps one reading that is high by chance from turning the next into a drop. `record` in order of time.
 */
export function findDrops(record: readonly CorrectedBounds[]): Drop[] {
  const before = limitValue('trend-drop-before');
  const factor = limitValue('trend-drop');
  // Backwards: the level to which the later readings have certainly returned.
  const cameBack: number[] = [];
  for (let index = record.length - 1, highest = 0; index >= 0; index--) {
    cameBack[index] = highest;
    highest = Math.max(highest, record[index]?.least ?? 0);
  }
  return record.flatMap((one, index) => {
    const earlier = record.slice(Math.max(0, index - before), index);
    const bound = Math.min(...earlier.map(({ least }) => least)) / factor;
    if (index === 0 || one.most >= bound) return [];
    return [{ index, open: (cameBack[index] ?? 0) < bound }];
  });
}
