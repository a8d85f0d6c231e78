import { erf } from 'mathjs';
import { TheilSenRegression } from 'ml-regression-theil-sen';
import { expect, test } from 'vitest';
import { inversionDistribution } from '../../src/calculators/trend/rule/kendall.ts';
import { heightAt, robustSlope } from '../../src/calculators/trend/rule/theil-sen.ts';
import { limitConstant } from '../../src/kernel/limits.ts';
import hundred from './theil-sen-hundred.json' with { type: 'json' };

const pairs = (xs: number[], ys: number[]) => xs.map((x, index) => [x, ys[index] ?? Number.NaN] as const);

/** The example of Sen, JASA 63 (1968). */
const sen = pairs([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]);

/** Twelve yearly logarithms with one wild value. */
const yearly = pairs(
  [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11],
  [9.28, 9.31, 9.19, 9.25, 9.11, 9.1, 8.99, 9.02, 8.49, 8.91, 8.88, 8.85],
);

/** Several readings on one day. */
const tied = pairs([0, 0, 1, 1, 2, 3, 3, 4, 5, 6], [5.1, 4.9, 4.75, 5.02, 4.6, 4.41, 4.52, 4.33, 4.05, 4.11]);

const quarters = pairs(
  hundred.y.map((_, index) => index / 4),
  hundred.y,
);

test('the example of Sen 1968: slope 4, intercept 6; 26/7 to 35/8 at 93 %, as the R package deming (tests/thiel.R) has it', () => {
  // The paper's own interval contains an error in its list of slopes, as that package notes. At 95 % scipy gives the
  // same.
  expect(robustSlope(sen)).toEqual({ slope: 4, range: { lo: 26 / 7, hi: 35 / 8 } });
  expect(heightAt(sen, 4, 0)).toBe(6);
});

// scipy.stats.theilslopes(y, x, 0.95), scipy 1.17.1, computed 2026-11-25 on these figures.
test.each([
  ['Sen 1968', sen, 4, 3.7142857142857144, 4.375],
  ['twelve years', yearly, -0.04249999999999998, -0.054999999999999716, -0.03599999999999994],
  ['several on one day', tied, -0.16749999999999993, -0.22999999999999984, -0.12666666666666693],
  ['a hundred quarters', quarters, -0.028813942307692308, -0.031551515151515254, -0.026054901960784336],
])('slope and range of scipy: %s', (_, points, slope, lo, hi) => {
  const found = robustSlope(points);
  expect(found?.slope).toBeCloseTo(slope, 12);
  // Ours is exact for few points and rounds ranks outwards, theirs is normal and rounds to the nearest: one rank at most.
  const slopes = allSlopes(points);
  const rankOf = (value: number) => slopes.filter((one) => one < value - 1e-12).length;
  expect(rankOf(lo) - rankOf(found?.range?.lo ?? Number.NaN)).toBeOneOf([0, 1]);
  expect(rankOf(found?.range?.hi ?? Number.NaN) - rankOf(hi)).toBeOneOf([0, 1]);
});

test.each([
  ['Sen 1968', sen],
  ['twelve years', yearly],
  // An odd number of pairs: with an even one that package takes one of the middle two slopes.
  ['ninety-nine quarters', quarters.slice(1)],
])('slope of the npm package ml-regression-theil-sen: %s', (_, points) => {
  const theirs = new TheilSenRegression(
    points.map(([x]) => x),
    points.map(([, y]) => y),
  );
  expect(robustSlope(points)?.slope).toBeCloseTo(theirs.slope, 12);
});

// Numbers of permutations by inversions: the triangle of Mahonian numbers, OEIS A008302 (recalled).
test.each([
  [3, [1, 2, 2, 1]],
  [4, [1, 3, 5, 6, 5, 3, 1]],
  [5, [1, 4, 9, 15, 20, 22, 20, 15, 9, 4, 1]],
])('inversions of %d things in a random order', (count, wanted) => {
  const total = wanted.reduce((sum, one) => sum + one, 0);
  const chances = inversionDistribution(Array.from({ length: count }, () => 1));
  expect(chances.map((chance) => chance * total)).toEqual(wanted.map((one) => expect.closeTo(one, 9)));
});

// scipy.stats.kendalltau(..., method='exact'), scipy 1.17.1: one pair out of order of 6, two of 8. Both tails.
test.each([
  [6, 1, 0.016666666666666666],
  [8, 2, 0.001736111111111111],
])('the tail of %d things with at most %d inversions', (count, inversions, both) => {
  const chances = inversionDistribution(Array.from({ length: count }, () => 1));
  const tail = chances.slice(0, inversions + 1).reduce((sum, one) => sum + one, 0);
  expect(2 * tail).toBeCloseTo(both, 12);
});

// erf of the npm package mathjs: the share of a normal distribution within ±z is erf(z / √2).
test('the normal deviate belongs to its confidence', () => {
  const z = limitConstant('trend-confidence', 'z');
  expect(100 * erf(z / Math.SQRT2)).toBeCloseTo(limitConstant('trend-confidence', 'percent'), 5);
});

function allSlopes(points: readonly (readonly [number, number])[]): number[] {
  return points.flatMap(([ax, ay], index) =>
    points.slice(index + 1).flatMap(([bx, by]) => (ax === bx ? [] : [(by - ay) / (bx - ax)])),
  );
}
