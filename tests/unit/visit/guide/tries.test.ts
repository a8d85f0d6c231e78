import { describe, expect, test } from 'vitest';
import { triesNeeded } from '../../../../src/visit/guide/tries.ts';

describe('how many tries show whether a trip is still there', () => {
  // Worked by hand: the share is came/(of + 1), at most 65 %; the tries are the fewest with (1 − share)^n ≤ 5 %.
  test.each([
    [10, 10, 3, '0.35^3 = 0.043'],
    [3, 3, 3, 'three of three count as 65 %'],
    [2, 2, 3, '2/3, capped at 65 %'],
    [1, 1, 5, 'one trip in one start counts as one of two: 0.5^5 = 0.031'],
    [1, 2, 8, '1/3: 0.667^8 = 0.039'],
    [5, 10, 5, '5/11: 0.545^5 = 0.048'],
    [3, 10, 10, '3/11: 0.727^10 = 0.041'],
    [1, 10, 32, '1/11: 0.909^32 = 0.047'],
  ])('%i of %i: %i tries (%s)', (came, of, tries) => expect(triesNeeded(came, of)).toBe(tries));

  test.each([
    [undefined, undefined],
    [3, undefined],
    [undefined, 5],
    [0, 5],
    [6, 5],
  ])('%s of %s: not known, tries prove nothing', (came, of) => expect(triesNeeded(came, of)).toBeUndefined());
});
