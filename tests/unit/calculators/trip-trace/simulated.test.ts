import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../../src/calculators/trip-trace/rule/input.ts';
import { type TripClass, tripClasses } from '../../../../src/practice/simulator/trip-run/trip-classes.ts';
import { runs } from '../../../support/runs.ts';
import { assessed, simulatedTrip } from '../../../support/trip-recordings.ts';

// The reference is the project's own model of a motor with current loop (src/practice/simulator/trip-run): noise, steps,
// filters, 125 µs to 2 ms between samples, two sensors in two drives of five, the trip at the end or before it.

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

/** A path of low resistance beside the winding, or through a part of it: what the slope is about. */
const hardShorts: TripClass[] = ['short-between-phases', 'short-to-earth', 'shorted-turns'];
/** A leak lets through what its resistance allows. A rise that it adds may be fast or slow. */
const shorts: TripClass[] = [...hardShorts, 'leak-to-earth'];

const trips = Math.max(6, Math.min(40, Math.round(runs / 420)));
const all = tripClasses.flatMap((kind) =>
  Array.from({ length: trips }, (_, index) => ({ kind, assessment: assessed(simulatedTrip(kind, 1000 + index * 17)) })),
);

const columns = ['first', 'among', 'nothing', 'wrong'] as const;

function table(): Record<TripClass, Record<(typeof columns)[number], number>> {
  const count = Object.fromEntries(
    tripClasses.map((kind) => [kind, { first: 0, among: 0, nothing: 0, wrong: 0 }]),
  ) as ReturnType<typeof table>;
  for (const { kind, assessment } of all) {
    const [first, ...others] = assessment.points;
    const row = count[kind];
    if (first === undefined) row.nothing++;
    else if (right[kind].includes(first)) row.first++;
    else if (others.some((one) => right[kind].includes(one))) row.among++;
    else row.wrong++;
  }
  return count;
}

describe(`${trips} trips of each of ${tripClasses.length} classes`, () => {
  const count = table();
  const sum = (column: (typeof columns)[number]) => tripClasses.reduce((total, kind) => total + count[kind][column], 0);

  it('points nowhere wrong in more than one trip of thirty', () => {
    console.table(count);
    expect(sum('wrong')).toBeLessThanOrEqual(all.length / 30);
  });

  it('points rightly in half of the trips, or more', () => {
    expect(sum('first') + sum('among')).toBeGreaterThanOrEqual(all.length / 2);
  });

  it('of no class does it point wrong in more than one trip of five', () => {
    expect(tripClasses.filter((kind) => count[kind].wrong > trips / 5)).toEqual([]);
  });

  it('proves nothing, whatever it points to', () => {
    expect(all.filter(({ assessment }) => assessment.verdict !== 'undecided')).toEqual([]);
  });
});

describe('the slope alone', () => {
  const said = (code: string) => all.filter(({ assessment }) => assessment.findings.some((one) => one.code === code));

  it('speaks for a short circuit only if there is one, or a sensor that shows one', () => {
    const wrong = said('slope-for').filter(
      ({ kind, assessment }) => !shorts.includes(kind) && !assessment.points.includes('sensing'),
    );
    expect(wrong.map(({ kind }) => kind)).toEqual([]);
    expect(said('slope-for').length).toBeGreaterThan(0);
  });

  it('speaks against a hard one only if there is none', () => {
    expect(
      said('slope-against')
        .filter(({ kind }) => hardShorts.includes(kind))
        .map(({ kind }) => kind),
    ).toEqual([]);
    expect(said('slope-against').length).toBeGreaterThan(0);
  });
});
