import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inversionDistribution, ranksLeftOut } from '../../../../../src/calculators/trend/rule/kendall.ts';
import { heightAt, median, robustSlope, tieSizes } from '../../../../../src/calculators/trend/rule/theil-sen.ts';
import { limitConstant } from '../../../../../src/kernel/limits.ts';
import { runs } from '../../../../support/runs.ts';

type Point = readonly [number, number];

const point = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: -50, max: 50 }));
const points = fc
  .array(point, { minLength: 2, maxLength: 40 })
  .map((list) => list.sort((a, b) => a[0] - b[0] || a[1] - b[1]) as Point[])
  .filter((list) => list[0]?.[0] !== list.at(-1)?.[0]);

function allSlopes(list: readonly Point[]): number[] {
  const slopes = list.flatMap((a, i) =>
    list.slice(i + 1).flatMap((b) => (a[0] < b[0] ? [(b[1] - a[1]) / (b[0] - a[0])] : [])),
  );
  return slopes.sort((a, b) => a - b);
}

describe('the robust slope', () => {
  test('of a straight line is its slope, with a range of zero', () => {
    const line = Array.from({ length: 10 }, (_, x): Point => [x, 7 - 2 * x]);
    expect(robustSlope(line)).toEqual({ slope: -2, range: { lo: -2, hi: -2 } });
  });

  test('does not turn for two wild readings of ten', () => {
    const wild = Array.from({ length: 10 }, (_, x): Point => [x, x === 3 ? 100 : x === 8 ? -80 : -x]);
    expect(robustSlope(wild)?.slope).toBe(-1);
  });

  test('has a range from five points on, and no range below', () => {
    const line = (count: number) => Array.from({ length: count }, (_, x): Point => [x, (x * 7) % 5]);
    expect(robustSlope(line(4))?.range).toBeUndefined();
    expect(robustSlope(line(5))?.range).toBeDefined();
    expect(robustSlope(line(1))).toBeUndefined();
    expect(robustSlope([[1, 2], [1, 3]])).toBeUndefined(); // biome-ignore format: one line
  });

  test('lies in its range, and a lower last point never raises any of the three', () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 0, max: 60 }), (list, fall) => {
        const before = robustSlope(list);
        const [x, y] = list.at(-1) ?? [0, 0];
        const after = robustSlope([...list.slice(0, -1), [x, y - fall]]);
        if (before === undefined || after === undefined) throw new Error('no slope');
        expect(after.slope).toBeLessThanOrEqual(before.slope + 1e-9);
        if (before.range === undefined || after.range === undefined) return;
        expect(before.range.lo).toBeLessThanOrEqual(before.slope);
        expect(before.range.hi).toBeGreaterThanOrEqual(before.slope);
        expect(after.range.lo).toBeLessThanOrEqual(before.range.lo + 1e-9);
        expect(after.range.hi).toBeLessThanOrEqual(before.range.hi + 1e-9);
      }),
      { numRuns: runs },
    );
  });

  test('and its range are slopes of pairs, with as many left out below as above', () => {
    fc.assert(
      fc.property(points, (list) => {
        const slopes = allSlopes(list);
        const found = robustSlope([...list].reverse());
        expect(found?.slope).toBeCloseTo(median(slopes), 12);
        if (found?.range === undefined) return;
        const { lo, hi } = found.range;
        const tail = (1 - limitConstant('trend-confidence', 'percent') / 100) / 2;
        const out = ranksLeftOut(tieSizes(list), tail, limitConstant('trend-confidence', 'z'));
        expect(lo).toBeCloseTo(slopes[out] ?? Number.NaN, 12);
        expect(hi).toBeCloseTo(slopes.at(-1 - out) ?? Number.NaN, 12);
      }),
      { numRuns: runs },
    );
  });

  test('is undefined if a point or a slope is not finite', () => {
    const line = Array.from({ length: 8 }, (_, x): Point => [x, -x]);
    for (const wrong of [Number.NaN, Number.NEGATIVE_INFINITY]) {
      expect(robustSlope([...line, [8, wrong]])).toBeUndefined();
      expect(robustSlope([...line, [wrong, -8]])).toBeUndefined();
    }
    expect(robustSlope([...line, [5e-324, -8]])).toBeUndefined();
  });

  test('does not depend on the unit of either axis', () => {
    fc.assert(
      fc.property(points, fc.constantFrom(0.5, 2, 1024), (list, unit) => {
        const scaled = list.map(([x, y]): Point => [x * unit, y / unit]);
        expect(robustSlope(scaled)?.slope).toBeCloseTo((robustSlope(list)?.slope ?? 0) / unit / unit, 9);
      }),
      { numRuns: runs },
    );
  });
});

test('the height of a line has as many points above as below', () => {
  const list: Point[] = [[0, 1], [1, 5], [2, 3]]; // biome-ignore format: one line
  expect(heightAt(list, 1, 2)).toBe(3);
  expect(median([4, 1, 3, 2])).toBe(2.5);
});

test('ties are points that share an x', () => {
  const list: Point[] = [[0, 1], [0, 2], [1, 0], [2, 5], [2, 6], [2, 7]]; // biome-ignore format: one line
  expect(tieSizes(list)).toEqual([2, 1, 3]);
});

describe('the ranks left out', () => {
  test.each([
    [4, -1],
    [5, 0],
    [6, 1],
    [7, 3],
    [10, 11],
  ])('of %d points: %d', (count, out) => {
    expect(
      ranksLeftOut(
        Array.from({ length: count }, () => 1),
        0.025,
        1.959964,
      ),
    ).toBe(out);
  });

  test('exact and normal meet', () => {
    const ones = (count: number) => Array.from({ length: count }, () => 1);
    const exact = ranksLeftOut(ones(60), 0.025, 1.959964);
    const normal = (60 * 59) / 4 - (1.959964 * Math.sqrt((60 * 59 * 125) / 18)) / 2;
    expect(Math.abs(exact - normal)).toBeLessThan(3);
    expect(ranksLeftOut(ones(61), 0.025, 1.959964)).toBeGreaterThan(exact);
  });

  test('the probabilities are those of all orders, with ties too', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 12 }), (ties) => {
        const chances = inversionDistribution(ties);
        expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
        expect(chances.every((chance, index) => Math.abs(chance - (chances.at(-1 - index) ?? 0)) < 1e-9)).toBe(true);
      }),
    );
  });
});
