import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linearTicks, logTicks } from '../../../../src/ui/plot/ticks.ts';

test.each([
  [0, 10, 5, [0, 2, 4, 6, 8, 10]],
  [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  [-20, 80, 5, [-20, 0, 20, 40, 60, 80]],
  [2014.2, 2026.9, 5, [2015, 2020, 2025]],
  [0.1, 0.4, 5, [0.1, 0.2, 0.3, 0.4]],
  [3, 3.9, 5, [3, 3.2, 3.4, 3.6, 3.8]],
])('from %d to %d with at most %d steps: %j', (from, to, most, expected) => {
  expect(linearTicks(from, to, most)).toEqual(expected);
});

test.each([
  [1e3, 1e6, [1e3, 1e4, 1e5, 1e6]],
  [1e3, 1e11, [1e3, 1e5, 1e7, 1e9, 1e11]],
  [1, 10, [1, 2, 5, 10]],
  [1, 100, [1, 10, 100]],
  [0.3, 3, [0.5, 1, 2]],
])('decades from %d to %d: %j', (from, to, expected) => {
  expect(logTicks(from, to)).toEqual(expected);
});

test('linear ticks are evenly spaced, within the axis and not too many', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      (from, width) => {
        const ticks = linearTicks(from, from + width, 5);
        const room = width * 1e-6;
        expect(ticks.length).toBeGreaterThanOrEqual(1);
        expect(ticks.length).toBeLessThanOrEqual(6);
        expect(ticks.every((tick) => tick >= from - room && tick <= from + width + room)).toBe(true);
      },
    ),
  );
});

test('logarithmic ticks lie within the axis, rise and are not too many', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -6, max: 12, noNaN: true }),
      fc.double({ min: 1, max: 16, noNaN: true }),
      (decade, decades) => {
        const [from, to] = [10 ** decade, 10 ** (decade + decades)];
        const ticks = logTicks(from, to);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(10);
        expect(ticks.every((tick) => tick >= from * 0.999999 && tick <= to * 1.000001)).toBe(true);
        expect(ticks).toEqual([...new Set(ticks)].sort((a, b) => a - b));
      },
    ),
  );
});
