import { describe, expect, it } from 'vitest';
import { correctionFactor, interpolate, limit, limitPoints, validityOf } from '../../src/calc/index.ts';

/** Source: ANSI/NETA MTS, table 100.14.1, solid insulation to 20 °C; recalled from memory. Typed here a second time. */
const solid: [celsius: number, factor: number][] = [
  [0, 0.4],
  [5, 0.45],
  [10, 0.5],
  [15, 0.75],
  [20, 1],
  [25, 1.3],
  [30, 1.6],
  [35, 2.05],
  [40, 2.5],
  [45, 3.25],
  [50, 4],
  [55, 5.2],
  [60, 6.4],
  [65, 8.7],
  [70, 10],
];

/** Source: transformer makers' tables, the same as the oil column of ANSI/NETA MTS, table 100.14.1; read. */
const oil: [celsius: number, factor: number][] = [
  [0, 0.25],
  [5, 0.36],
  [10, 0.5],
  [15, 0.74],
  [20, 1],
  [25, 1.4],
  [30, 1.98],
  [35, 2.8],
  [40, 3.95],
  [45, 5.6],
  [50, 7.85],
  [55, 11.2],
  [60, 15.85],
  [65, 22.4],
  [70, 31.75],
  [75, 44.7],
];

describe('the factors for solid insulation (recalled from memory)', () => {
  it.each(solid)('at %d °C to 20 °C: %d', (celsius, factor) => {
    expect(correctionFactor('table', celsius, 20)).toBeCloseTo(factor, 12);
  });

  it('are the rows that were published, no more and no less', () => {
    expect(limitPoints('solid-insulation-to-20')).toEqual(solid);
    expect(limit('solid-insulation-to-20').recalled).toBe(true);
  });

  it('are used between the first row and the last', () => {
    expect(validityOf('table')).toEqual({ from: 0, to: 70 });
    expect(correctionFactor('table', -0.1, 20)).toBeUndefined();
    expect(correctionFactor('table', 70.1, 20)).toBeUndefined();
  });
});

describe('the factors for oil-filled apparatus', () => {
  const points = limitPoints('oil-insulation-to-20');

  it('are the rows that were published', () => {
    expect(points).toEqual(oil);
    expect(limit('oil-insulation-to-20').recalled).toBe(false);
  });

  /** Source: the worked example printed beside such a table; read. */
  it('give the published worked example: 1200 MΩ at 35 °C is 3360 MΩ at 20 °C', () => {
    expect(1200e6 * (interpolate(points, 35) ?? 0)).toBeCloseTo(3360e6, 3);
  });

  it('double in about 10 °C, near the halving rule', () => {
    for (const [celsius, factor] of oil.filter(([one]) => one <= 65)) {
      const later = interpolate(points, celsius + 10) ?? 0;
      expect(later / factor).toBeGreaterThan(1.89);
      expect(later / factor).toBeLessThan(2.06);
    }
  });
});

describe('between the rows', () => {
  const tables: [string, [number, number][]][] = [
    ['solid', solid],
    ['oil', oil],
  ];

  it.each(tables)('of %s the logarithm is interpolated: half way is the geometric mean', (_, table) => {
    table.slice(1).forEach(([celsius, factor], index) => {
      const [before, factorBefore] = table[index] ?? [0, 0];
      const middle = interpolate(table, (celsius + before) / 2);
      expect(middle).toBeCloseTo(Math.sqrt(factor * factorBefore), 12);
    });
  });

  it.each(tables)('of %s the factor rises without a jump', (_, table) => {
    const last = table.at(-1)?.[0] ?? 0;
    const steps = Array.from({ length: last * 10 + 1 }, (_, index) => interpolate(table, index / 10) ?? 0);
    steps.slice(1).forEach((factor, index) => {
      const ratio = factor / (steps[index] ?? 0);
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(1.02);
    });
  });

  it('every second row of the oil table is found again from the others within 5 %', () => {
    const sparse = oil.filter((_, index) => index % 2 === 0);
    for (const [celsius, factor] of oil.slice(1, -1)) {
      expect(Math.abs((interpolate(sparse, celsius) ?? factor) / factor - 1)).toBeLessThan(0.05);
    }
  });

  it('nothing lies outside', () => {
    expect(interpolate(oil, -1)).toBeUndefined();
    expect(interpolate(oil, 76)).toBeUndefined();
  });
});
