import { describe, expect, test } from 'vitest';
import { faultIds } from '../../../../src/practice/simulator/faulted-axis.ts';
import { missedGoals } from '../../../prove/goals.ts';
import { play } from '../../../prove/outcome.ts';

/** The short form of `npm run prove`, which plays two hundred visits to each fault. */
const seeds = [1, 2, 3, 4, 5, 6];

describe('the guide names every bad part and no other, without an unsafe step', () => {
  test.each(faultIds)('%s', (fault) => {
    expect(
      missedGoals(
        fault,
        seeds.map((seed) => play(fault, seed)),
      ),
    ).toEqual([]);
  });
});

test('a visit played twice is the same visit', () => {
  expect(play('all-three', 3)).toEqual(play('all-three', 3));
});
