import type { Branch, TripTraceAssessment, TripTraceFinding } from '../../src/calculators/trip-trace/rule/input.ts';
import { type TripClass, tripClasses } from '../../src/practice/simulator/trip-run/trip-classes.ts';
import { assessed, type SimulatedTrip, simulatedTrip } from './trip-recordings.ts';

/** What a trace of each class may rightly be said to point to. */
const right: Record<TripClass, readonly Branch[]> = {
  'short-between-phases': ['short-outside'],
  'short-to-earth': ['earth-path', 'short-outside'],
  'leak-to-earth': ['earth-path'],
  'inside-drive': ['inside-drive'],
  'current-sensor': ['sensing'],
  encoder: ['feedback'],
  commutation: ['feedback'],
  'open-core': ['open-core'],
  load: ['mechanics'],
  tuning: ['tuning'],
  'supply-braking': ['supply-braking'],
  'shorted-turns': ['short-outside'],
};

/** What must not be spoken against in these classes. */
const against: Partial<Record<TripTraceFinding['code'], readonly TripClass[]>> = {
  'slope-against': ['short-between-phases', 'short-to-earth'],
  'sum-against': ['short-to-earth', 'leak-to-earth'],
  'zero-against': ['open-core'],
  'oscillation-against': ['tuning'],
  'bus-against': ['supply-braking'],
};

/** What a fast rise may come from: a path of low resistance, a part of the winding, a leak; one sensor alone, too. */
const fastRise: Record<'slope-for' | 'slope-of-one', readonly TripClass[]> = {
  'slope-for': ['short-between-phases', 'short-to-earth', 'shorted-turns', 'leak-to-earth'],
  'slope-of-one': ['short-between-phases', 'short-to-earth', 'shorted-turns', 'leak-to-earth', 'current-sensor'],
};

export type Answer = 'first' | 'among' | 'nothing' | 'wrong';

export interface Judged {
  trip: SimulatedTrip;
  seed: number;
  assessment: TripTraceAssessment;
  answer: Answer;
  /** Findings that say something untrue of this class, besides where the whole points to. */
  untrue: TripTraceFinding['code'][];
}

export function judgedTrip(kind: TripClass, seed: number): Judged {
  const trip = simulatedTrip(kind, seed);
  const assessment = assessed(trip);
  const [first, ...others] = assessment.points;
  const fits = (one: Branch) => right[kind].includes(one);
  const answer =
    first === undefined ? 'nothing' : fits(first) ? 'first' : others.some(fits) ? 'among' : ('wrong' as const);
  return { trip, seed, assessment, answer, untrue: assessment.findings.map(({ code }) => code).filter(isUntrue(kind)) };
}

const isUntrue = (kind: TripClass) => (code: TripTraceFinding['code']) => {
  if (code === 'slope-for' || code === 'slope-of-one') return !fastRise[code].includes(kind);
  return against[code]?.includes(kind) ?? false;
};

/** So many trips of each class, drawn from this seed on. */
export const judgedTrips = (each: number, seed: number): Judged[] =>
  tripClasses.flatMap((kind, row) =>
    Array.from({ length: each }, (_, index) => judgedTrip(kind, seed + (row * each + index) * 7919)),
  );

export type Confusion = Record<TripClass, Record<Answer, number>>;

export function confusion(trips: readonly Judged[]): Confusion {
  const table = Object.fromEntries(
    tripClasses.map((kind) => [kind, { first: 0, among: 0, nothing: 0, wrong: 0 }]),
  ) as Confusion;
  for (const { trip, answer } of trips) table[trip.kind][answer]++;
  return table;
}
