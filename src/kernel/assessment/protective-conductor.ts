import { limitValue } from '../limits.ts';
import { intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';
import { isPossible } from './possible-figures.ts';

export type PeJudgement = 'short' | 'not-short' | 'not-proven' | 'missing';

/**
 * Whether a protective conductor reads a dead short. A zero in megohms proves little: it only says "less than one step
 * of the display". An over-range reading without a noted range is not a short on any range. An impossible figure proves
 * nothing.
 */
export function judgePe(reading: Reading): PeJudgement {
  const limit = limitValue('pe-dead-short');
  if (!isPossible(reading)) return 'not-proven';
  switch (reading.kind) {
    case 'missing':
      return 'missing';
    case 'over':
      return reading.atLeast !== undefined && reading.atLeast < limit ? 'not-proven' : 'not-short';
    case 'under':
      return (reading.atMost ?? Number.POSITIVE_INFINITY) <= limit ? 'short' : 'not-proven';
    case 'value': {
      if (reading.value > limit) return 'not-short';
      const hi = reading.value === 0 ? (reading.resolution ?? 0) : intervalOf(reading).hi;
      return hi <= limit ? 'short' : 'not-proven';
    }
  }
}
