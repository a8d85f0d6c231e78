import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { SumSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: SumSilence) => finding('sum-nothing', 'note', { why });

/**
 * Kirchhoff at the motor: three currents that were each measured add up to zero unless some of it returns another way, to
 * earth, or a sensor reads wrong. A drive with two sensors computes the third, so its sum is zero whatever happens: no
 * statement.
 */
export function currentSum(figures: TraceFigures, { sensors, tripAmps }: TripTraceInput): TripTraceFinding {
  const { sum, peaks } = figures;
  if (sum === undefined) return nothing('two-columns');
  if (sum.zero || sensors === 'two') return nothing('by-construction');
  const limit = Math.max((limitValue('trace-sum') / 100) * peaks.atTrip, 8 * sum.noise);
  const parts = { limits: ['trace-sum' as const] };
  if (sum.atTrip > limit && sum.atTrip > 2 * sum.before) {
    return finding('sum-for', 'undecided', { ...parts, share: sum.atTrip / peaks.atTrip });
  }
  const { follows } = sum;
  if (follows !== undefined && follows.fit > 0.8 && Math.abs(follows.share) > limitValue('trace-sum') / 100) {
    return finding('sum-of-one', 'undecided', { ...parts, phase: follows.phase, share: follows.share });
  }
  if (Math.abs(sum.offset) > limit)
    return finding('sum-offset', 'undecided', { ...parts, share: sum.offset / peaks.atTrip });
  if (Math.max(sum.atTrip, sum.before) > limit) {
    return finding('sum-for', 'undecided', { ...parts, share: sum.before / peaks.atTrip });
  }
  if (figures.gapAtTrip) return nothing('gap');
  // A current between two samples is in no sum.
  if (!figures.inAmperes || tripAmps === undefined) return nothing('level-unknown');
  if (peaks.atTrip < (limitValue('trace-trip-share') / 100) * tripAmps) return nothing('below-level');
  return finding('sum-against', 'note', { ...parts, share: Math.max(sum.atTrip, sum.before) / peaks.atTrip });
}
