import { millisecondsADay } from '../../kernel/reading/calendar-date.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import { type MeasuredId, type ReadingSet, readingsOf } from '../record/visit-digest.ts';
import { type Exchange, sameSince } from './changes.ts';
import type { Earlier } from './earlier.ts';
import { type Compared, fallsOf } from './falls.ts';
import { type InsulatedPart, type Point, pointsOf } from './points.ts';

/** The step that shows what is said about a part. */
const stepOf: Record<InsulatedPart, MeasuredId> = { joined: 'insulation', motor: 'isolation', cable: 'isolation' };

/**
 * What the insulation readings of a visit say against those before. A part that was exchanged since is another part:
 * readings before that day are left out. `clock`: what the clock of this device shows, in ms. A reading later than that comes
 * from a device whose clock is ahead, or this one is behind: it exists already, so it counts as the last one before.
 */
export function againstPast(
  visit: VisitRecord,
  own: readonly Earlier[],
  exchanges: readonly Exchange[],
  clock = Number.POSITIVE_INFINITY,
): { step: MeasuredId; compared: Compared }[] {
  const { sets } = readingsOf(visit);
  const now = pointsOf({ id: visit.id, baseline: visit.purpose === 'baseline' }, sets);
  const before = own.flatMap(({ visit: earlier, sets: taken }) => pointsOf(earlier, taken));
  return now.flatMap((point) =>
    fallsOf(point, asPast(ofSamePart(before, point.part, exchanges), point, clock)).map((compared) => ({
      step: shownIn(point.part, sets),
      compared,
    })),
  );
}

function asPast(points: readonly Point[], now: Point, clock: number): Point[] {
  const today = clock / millisecondsADay;
  const order = (day: number) => (day > today ? now.day - 1 / (1 + day) : day);
  return points.map((point) => ({ ...point, day: order(point.day) }));
}

/** The joined stage is judged where it was typed. */
function shownIn(part: InsulatedPart, sets: readonly ReadingSet[]): MeasuredId {
  const step = stepOf[part];
  return sets.some((set) => set.step === step) ? step : 'isolation';
}

/**
 * The points since the part was last exchanged. Of the day itself those count that were taken after the visit that decided
 * the exchange: its own readings are those that condemned the old part.
 */
export function ofSamePart(points: readonly Point[], part: InsulatedPart, exchanges: readonly Exchange[]): Point[] {
  const own = points.filter((point) => point.part === part);
  const { on, decidedBy } = sameSince(exchanges, part);
  const condemned = own.filter(({ visit }) => decidedBy.includes(visit)).map(({ at }) => Date.parse(at));
  const last = Math.max(Number.NEGATIVE_INFINITY, ...condemned);
  return own.filter(({ at }) => at.slice(0, 10) >= on && Date.parse(at) > last);
}
