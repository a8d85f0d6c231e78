import type { BusFigures } from '../rule/figures.ts';
import { largest, median } from './statistics.ts';
import { lastMoments, type Trace } from './trace.ts';
import type { CurrentVector } from './vector.ts';

/** A bus that is lower by this share has begun to fall. */
const beginsToFall = 0.1;

/** The bus before the last moments and in the last tenth of a second. */
export function busOf(trace: Trace, { magnitude }: Pick<CurrentVector, 'magnitude'>): BusFigures | undefined {
  const { bus, speed, trip, step } = trace;
  if (bus === undefined) return undefined;
  const { from } = lastMoments(trace);
  const recent = Math.max(0, trip - Math.round(0.1 / step));
  const before = median(bus.subarray(0, Math.max(1, from)));
  let [least, most, mostAt] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, trip];
  for (let i = recent; i <= trip; i++) {
    least = Math.min(least, bus[i] ?? before);
    if ((bus[i] ?? before) > most) {
      most = bus[i] ?? before;
      mostAt = i;
    }
  }
  let falls = recent;
  while (falls <= trip && (bus[falls] ?? before) > (1 - beginsToFall) * before) falls++;
  const reach = Math.max(2, Math.round(0.02 / step));
  const slower =
    speed &&
    Math.abs(speed[mostAt] ?? 0) < Math.abs(speed[Math.max(0, mostAt - reach)] ?? 0) - 0.01 * largest(speed, 0, trip);
  return {
    before,
    atTrip: median(bus.subarray(Math.max(0, trip - 2), trip + 1)),
    least,
    most,
    leastEarlier: recent === 0 ? before : bus.subarray(0, recent).reduce((a, b) => Math.min(a, b)),
    moved: largest(
      bus.map((one) => one / before - 1),
      0,
      trip,
    ),
    rising: (trip - mostAt) * step <= Math.max(2 * step, 0.004),
    ...(falls <= trip && { currentBeforeFall: largest(magnitude, 0, falls) }),
    ...(slower !== undefined && { slowing: slower }),
  };
}
