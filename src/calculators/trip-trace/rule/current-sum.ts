import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { SumSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';
import { levelShare, reachesLevel } from './trip-level.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: SumSilence) => finding('sum-nothing', 'note', { why });

/** Each of the three currents has a sensor of its own, by what is stated and by what the sum shows. */
export const eachPhaseMeasured = ({ measured, sum }: TraceFigures, { sensors }: TripTraceInput): boolean =>
  sensors === 'three' && measured === 3 && sum?.zero === false;

/** In A: what the sum of three sound sensors may be. */
const sumLimit = (highest: number, noise: number) => Math.max((limitValue('trace-sum') / 100) * highest, 8 * noise);

/** The three add up within their errors, in each sample of the last moments. */
export const addsUp = ({ sum, peaks }: TraceFigures): boolean =>
  sum !== undefined && Math.max(sum.atTrip, sum.alone) <= sumLimit(peaks.atTrip, sum.noise);

/**
 * Kirchhoff at the motor: three currents that were each measured add up to zero unless some of it returns another way, to
 * earth, or a sensor reads wrong. A drive with two sensors computes the third, so its sum is zero whatever happens: no
 * statement.
 */
export function currentSum(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { sum, peaks, inAmperes } = figures;
  const { sensors, tripAmps } = input;
  if (sum === undefined) return nothing('two-columns');
  if (sum.zero || sensors === 'two') return nothing('by-construction');
  const allowed = limitValue('trace-sum') / 100;
  const limit = sumLimit(peaks.atTrip, sum.noise);
  // What a sensor is off at zero is a share of its range, and that holds the trip level.
  const offLimit = inAmperes && tripAmps !== undefined ? Math.max(limit, allowed * tripAmps) : undefined;
  const parts = { limits: ['trace-sum' as const] };
  const { atTrip } = sum;
  const { follows } = sum;
  const isSteady = atTrip <= 2 * sum.before;
  if (
    isSteady &&
    follows !== undefined &&
    follows.fit > 0.8 &&
    Math.abs(follows.share) > 2 * allowed &&
    follows.amps > limit
  ) {
    return finding('sum-of-one', 'undecided', { ...parts, phase: follows.phase, share: follows.share });
  }
  // A path that trips the drive is there at the trip, and not only earlier.
  if (atTrip > limit) {
    return finding('sum-for', 'undecided', { ...parts, share: atTrip / peaks.atTrip });
  }
  if (offLimit !== undefined && Math.abs(sum.offset) > offLimit)
    return finding('sum-offset', 'undecided', { ...parts, share: sum.offset / peaks.atTrip });
  if (figures.gapAtTrip) return nothing('gap');
  // A current between two samples is in no sum.
  if (levelShare(figures, input) === undefined) return nothing('level-unknown');
  if (!reachesLevel(figures, input)) return nothing('below-level');
  if (Math.abs(sum.offset) > limit || Math.max(sum.before, sum.alone) > limit) return nothing('between');
  return finding('sum-against', 'note', { ...parts, share: Math.max(atTrip, sum.before) / peaks.atTrip });
}
