import { limitValue } from '../../../kernel/limits.ts';

/** What is known of a corrected reading, in Ω: over-range has no upper bound, under-range no lower one but zero. */
export interface CorrectedBounds {
  least: number;
  most: number;
}

export interface Drop {
  /** Place in the record. */
  index: number;
  /** No later reading surely came back to the size below which it is a drop. */
  open: boolean;
}

/**
 * Sudden falls: readings below each of the few before by the factor of the limit `trend-drop`. Compared with each of
 * them, so that one reading that is high by chance makes no drop of the next. `record` in the order of time.
 */
export function findDrops(record: readonly CorrectedBounds[]): Drop[] {
  const before = limitValue('trend-drop-before');
  const factor = limitValue('trend-drop');
  // From behind: how high the later readings surely came back.
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
