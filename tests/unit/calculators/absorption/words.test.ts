import { describe, expect, it } from 'vitest';
import { ratioText } from '../../../../src/calculators/absorption/words.ts';

describe('a ratio in a sentence never looks narrower than it is', () => {
  it.each<[number, number, string]>([
    [3, 3, '3'],
    [1.994, 2.006, '1.99 to 2.01'],
    [1.9999, 2.0001, '1.99 to 2.01'],
    [2.5, Number.POSITIVE_INFINITY, 'at least 2.5'],
    [0, Number.POSITIVE_INFINITY, 'any value'],
    [0, 0.5, '0 to 0.5'],
    [12.34, 12.34, '12.3 to 12.4'],
  ])('%d to %d', (lo, hi, text) => {
    expect(ratioText({ lo, hi })).toBe(text);
  });
});
