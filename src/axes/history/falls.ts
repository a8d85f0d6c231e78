import { findDrops } from '../../calculators/trend/rule/drops.ts';
import { boundsOf, correctRows } from '../../calculators/trend/rule/rows.ts';
import { limitValue } from '../../kernel/limits.ts';
import type { Point } from './points.ts';

/** What a reading is compared with. `best`: the highest of all earlier ones, if there is no baseline. */
export type Since = 'last' | 'baseline' | 'best';

/** Two readings of one part. */
export interface Compared {
  since: Since;
  before: Point;
  now: Point;
  /**
   * `fall`: lower by more than the factor at which the trend asks for a cause. `unknown`: lower, or it may be, and a
   * temperature or the end of a range is missing.
   */
  level: 'none' | 'unknown' | 'fall';
  /** By which factor it fell at least; only of a `fall`. Infinite if nothing is left. */
  factor: number;
  /** Both in Ω at `limitValue('reference-temperature-routine')`; absent if they are compared as they were read. */
  corrected?: { before: number; now: number };
}

/** Compares by the rule of the trend: both carried to one temperature, a bound never taken for a value. */
export function compare(since: Since, before: Point, now: Point): Compared {
  const plain = { since, before, now, level: 'none' as const, factor: 1 };
  const { rows } = correctRows([before, now], now.correction, limitValue('reference-temperature-routine'));
  const [first, second] = rows;
  if (first !== undefined && second !== undefined) {
    const factor = fallOf(boundsOf(first), boundsOf(second));
    if (factor === undefined) return plain;
    return { ...plain, level: 'fall', factor, corrected: { before: first.corrected, now: second.corrected } };
  }
  const [was, is] = [boundsAsRead(before), boundsAsRead(now)];
  const factor = fallOf(was, is);
  if (factor !== undefined) return { ...plain, level: 'fall', factor };
  const rangeUnknown = before.reading.kind === 'over' && before.reading.atLeast === undefined;
  // The same figure again is not lower; the same after "more than" is.
  const isLower = is.most < was.least || (before.reading.kind === 'over' && is.most <= was.least);
  const mayBeLower = rangeUnknown ? now.reading.kind !== 'over' : isLower;
  return mayBeLower ? { ...plain, level: 'unknown' } : plain;
}

type Bounds = ReturnType<typeof boundsOf>;

function fallOf(before: Bounds, now: Bounds): number | undefined {
  return findDrops([before, now]).some(({ index }) => index === 1) ? before.least / now.most : undefined;
}

function boundsAsRead({ reading }: Point): Bounds {
  switch (reading.kind) {
    case 'value':
      return { least: reading.value, most: reading.value };
    case 'over':
      return { least: reading.atLeast ?? 0, most: Number.POSITIVE_INFINITY };
    case 'under':
      return { least: 0, most: reading.atMost ?? Number.POSITIVE_INFINITY };
    case 'missing':
      return { least: 0, most: Number.POSITIVE_INFINITY };
  }
}

/**
 * A reading against the last one, and against the baseline or, without one, the best: a slow decline shows only there.
 * `earlier`: points of the same part, in any order; those that are not older do not count. Comparisons without a fall
 * are left out.
 */
export function fallsOf(now: Point, earlier: readonly Point[]): Compared[] {
  const older = earlier
    .filter(({ part, visit, day }) => part === now.part && visit !== now.visit && day < now.day)
    .sort((a, b) => b.day - a.day);
  const [last, ...rest] = older;
  if (last === undefined) return [];
  const compared = [compare('last', last, now)];
  const baseline = rest.find((point) => point.baseline);
  if (baseline !== undefined) compared.push(compare('baseline', baseline, now));
  else if (!last.baseline) {
    const others = rest.map((point) => compare('best', point, now)).filter(({ level }) => level === 'fall');
    const worst = others.reduce<Compared | undefined>((a, b) => (a && a.factor >= b.factor ? a : b), undefined);
    // The last one may be the best as well.
    if (worst !== undefined && !(compared[0]?.level === 'fall' && compared[0].factor >= worst.factor)) {
      compared.push(worst);
    }
  }
  return compared.filter(({ level }) => level !== 'none');
}
