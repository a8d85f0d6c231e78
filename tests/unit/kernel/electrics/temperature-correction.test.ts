import { describe, expect, it } from 'vitest';
import {
  type CorrectionMethod,
  correctionMethods,
  validityOf,
} from '../../../../src/kernel/electrics/correction-validity.ts';
import {
  correctionFactor,
  factorIfUnknown,
  interpolate,
  limitsOfMethod,
} from '../../../../src/kernel/electrics/temperature-correction.ts';

describe.each([...correctionMethods])('by %s', (method) => {
  const { from, to } = validityOf(method);
  const inside = Array.from({ length: 11 }, (_, index) => from + ((to - from) * index) / 10);

  it('a reading at the reference is unchanged', () => {
    for (const celsius of inside) expect(correctionFactor(method, celsius, celsius)).toBe(1);
  });

  it('a hotter reading is raised more', () => {
    const factors = inside.map((celsius) => correctionFactor(method, celsius, 40) ?? Number.NaN);
    for (const [index, factor] of factors.slice(1).entries()) expect(factor).toBeGreaterThan(factors[index] ?? 0);
  });

  it('there and back changes nothing', () => {
    for (const celsius of inside) {
      const there = correctionFactor(method, celsius, 40) ?? Number.NaN;
      const back = correctionFactor(method, 40, celsius) ?? Number.NaN;
      expect(there * back).toBeCloseTo(1, 12);
    }
  });

  it('the ends are within and a little beyond is not', () => {
    expect(correctionFactor(method, from, 40)).toBeDefined();
    expect(correctionFactor(method, to, 40)).toBeDefined();
    expect(correctionFactor(method, from - 0.01, 40)).toBeUndefined();
    expect(correctionFactor(method, to + 0.01, 40)).toBeUndefined();
    expect(correctionFactor(method, 40, to + 0.01)).toBeUndefined();
    expect(correctionFactor(method, Number.NaN, 40)).toBeUndefined();
  });

  it('its limits are named', () => {
    expect(limitsOfMethod[method].length).toBeGreaterThan(0);
  });
});

describe('exact factors', () => {
  const rows: [CorrectionMethod, number, number, number][] = [
    ['halving', 40, 20, 4],
    ['halving', 10, 20, 0.5],
    ['halving', 27, 20, 1.6245],
    ['halving', 70, 40, 8],
    ['thermosetting', 25, 40, 0.8186],
    ['thermosetting', 60, 40, 2.2517],
    ['thermosetting', 60, 25, 2.7507],
    ['table', 40, 20, 2.5],
    ['table', 60, 40, 2.56],
    ['table', 10, 20, 0.5],
    ['table', 22.5, 20, 1.1401754],
  ];
  it.each(rows)('%s from %d to %d °C: %d', (method, from, to, factor) => {
    expect(correctionFactor(method, from, to)).toBeCloseTo(factor, 3);
  });
});

describe('an unknown temperature', () => {
  it('leaves all factors of the range open', () => {
    expect(factorIfUnknown('halving', { from: 0, to: 100 }, 20)).toEqual({ lo: 0.25, hi: 256 });
    expect(factorIfUnknown('halving', { from: 10, to: 30 }, 20)).toEqual({ lo: 0.5, hi: 2 });
    expect(factorIfUnknown('table', { from: 0, to: 70 }, 20)).toEqual({ lo: 0.4, hi: 10 });
  });

  it.each(['thermosetting', 'table'] as const)('beyond the validity of %s leaves everything open', (method) => {
    expect(factorIfUnknown(method, { from: 0, to: 100 }, 20)).toEqual({ lo: 0, hi: Number.POSITIVE_INFINITY });
  });
});

describe('interpolation', () => {
  const table: [number, number][] = [
    [0, 1],
    [10, 2],
    [30, 32],
  ];

  it.each([
    [0, 1],
    [5, Math.SQRT2],
    [10, 2],
    [15, 4],
    [20, 8],
    [25, 16],
    [30, 32],
  ])('at %d is %d', (input, output) => {
    expect(interpolate(table, input)).toBeCloseTo(output, 12);
  });

  it('ends with the table', () => {
    expect(interpolate(table, -0.001)).toBeUndefined();
    expect(interpolate(table, 30.001)).toBeUndefined();
    expect(interpolate([], 1)).toBeUndefined();
    expect(interpolate([[5, 2]], 5)).toBe(2);
    expect(interpolate([[5, 2]], 4)).toBeUndefined();
  });
});
