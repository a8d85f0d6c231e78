import { mean } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { deviationFromMean, pairwiseSpread } from '../../src/kernel/reading/spread.ts';

/**
 * Source: NEMA MG 1, 12.45 and 14.36: 100 × largest deviation from the mean / mean, with the worked example of 460,
 * 467 and 450 V: mean 459 V, deviation 9 V, 1.96 %. Definition and example recalled from memory.
 */
describe('the unbalance of NEMA MG 1 (recalled from memory)', () => {
  it('of 460, 467 and 450 V is 9/459 = 1.96 %', () => {
    expect(deviationFromMean([460, 467, 450])).toBeCloseTo((100 * 9) / 459, 12);
    expect(deviationFromMean([460, 467, 450])).toBeCloseTo(1.96, 2);
  });

  it('does not depend on the order', () => {
    expect(deviationFromMean([450, 460, 467])).toBe(deviationFromMean([467, 450, 460]));
  });

  it.each([
    [450e3, 455e3, 300e3],
    [45e3, 45.5e3, 46e3],
    [1, 2, 3],
    [0.1, 0.2, 0.15],
  ])('of %d, %d and %d is what mathjs gives by the definition', (...values) => {
    const average = mean(values) as number;
    const deviations = values.map((value) => Math.abs(value - average));
    expect(deviationFromMean(values)).toBeCloseTo((100 * Math.max(...deviations)) / average, 10);
  });

  it('is milder than the pairwise spread, which the verdict uses', () => {
    for (const values of [
      [460, 467, 450],
      [100, 105, 110],
      [1, 1, 10],
      [300, 450, 455],
    ]) {
      expect(deviationFromMean(values)).toBeLessThan(pairwiseSpread(values));
    }
  });
});
