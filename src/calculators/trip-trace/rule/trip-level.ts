import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { TripTraceInput } from './input.ts';

type Stated = Pick<TripTraceInput, 'tripAmps'>;

/** The highest current up to the trip as a share of the trip level; undefined if either is not known in amperes. */
export function levelShare({ inAmperes, peaks }: TraceFigures, { tripAmps }: Stated): number | undefined {
  return inAmperes && tripAmps !== undefined ? Math.max(peaks.atTrip, peaks.before) / tripAmps : undefined;
}

/** The current that tripped was recorded: it reaches the level, and none did so earlier without a trip. */
export function reachesLevel({ inAmperes, peaks, noise }: TraceFigures, { tripAmps }: Stated): boolean {
  const least = (limitValue('trace-trip-share') / 100) * (tripAmps ?? Number.POSITIVE_INFINITY);
  return inAmperes && peaks.atTrip >= least && peaks.atTrip > peaks.before + 2 * noise;
}

/**
 * Until shortly before the trip the currents were too low to be its reason. What a load or a loop does takes longer than the
 * last moments, and a short circuit is over in them.
 */
export function wereOrdinary({ inAmperes, peaks }: TraceFigures, { tripAmps }: Stated): boolean {
  return inAmperes && tripAmps !== undefined && peaks.before < (limitValue('trace-ordinary') / 100) * tripAmps;
}

/**
 * The trip lies in the file: its moment is stated or marked, or the currents end, or the current that tripped is there. The
 * mere end of a file may lie before the trip, and what such a file does not show speaks against nothing.
 */
export const holdsTrip = (figures: TraceFigures, stated: Stated): boolean =>
  figures.tripFrom !== 'file-end' || reachesLevel(figures, stated);
