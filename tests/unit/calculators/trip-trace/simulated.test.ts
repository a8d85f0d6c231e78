import { describe, expect, it } from 'vitest';
import { tripClasses } from '../../../../src/practice/simulator/trip-run/trip-classes.ts';
import { runs } from '../../../support/runs.ts';
import { confusion, judgedTrips } from '../../../support/trip-confusion.ts';

// The reference is the project's own model of a motor with current loop (src/practice/simulator/trip-run). Motors are salient
// and saturate, sensors err, machines hold weights and swing; recorders filter, lose samples, catch disturbances, end before
// the trip; what the person states is missing or off by its tolerance. `npm run prove -- trace 1200 7` draws more of them.

const each = Math.max(3, Math.min(16, Math.round(runs / 150)));
const all = judgedTrips(each, 20_000);

describe(`${each} trips of each of ${tripClasses.length} classes`, () => {
  const table = confusion(all);
  const of = (answer: 'first' | 'among' | 'nothing' | 'wrong') =>
    tripClasses.reduce((total, kind) => total + table[kind][answer], 0);
  const statements = of('first') + of('among') + of('wrong');

  it('points nowhere wrong in more than one statement of fifty', () => {
    expect(of('wrong')).toBeLessThanOrEqual(Math.max(1, statements / 50));
  });

  it('points rightly in a sixth of the trips, or more', () => {
    expect(of('first') + of('among')).toBeGreaterThanOrEqual(all.length / 6);
  });

  it('speaks neither for nor against a short circuit wrongly', () => {
    const slopes = all.flatMap(({ untrue, seed }) =>
      untrue.filter((code) => code.startsWith('slope')).map((code) => [seed, code]),
    );
    expect(slopes).toEqual([]);
  });

  it('speaks against nothing that is the reason in more than one trip of a hundred', () => {
    expect(all.filter(({ untrue }) => untrue.length > 0).length).toBeLessThanOrEqual(Math.max(1, all.length / 100));
  });

  it('proves nothing, whatever it points to', () => {
    expect(all.filter(({ assessment }) => assessment.verdict !== 'undecided')).toEqual([]);
  });
});
