import { lusolve, type Matrix, mean } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { assessWinding } from '../../src/calculators/winding/rule/assess.ts';
import { deltaPhases, type Pairs, starPhases } from '../../src/calculators/winding/rule/phases.ts';
import { temperatureFactor } from '../../src/kernel/electrics/conductor-temperature.ts';
import { type LimitId, limit, limitValue } from '../../src/kernel/limits.ts';
import { ohms } from '../../src/kernel/reading/reading.ts';

const column = (solution: unknown): number[] => ((solution as Matrix).valueOf?.() ?? solution).flat(2) as number[];

/**
 * Source: NBS Handbook 100, recalled: temperature coefficients of resistance of annealed copper, in the reference
 * temperature of each row. α1 = 1/(k + t1), so that R2/R1 = 1 + α1·(t2 − t1).
 */
describe('copper, temperature coefficients of NBS Handbook 100 (recalled from memory)', () => {
  it.each([
    [0, 0.00427],
    [20, 0.00393],
    [25, 0.00385],
    [30, 0.00378],
    [50, 0.00352],
  ])('at %d °C it is %d per kelvin', (celsius, coefficient) => {
    const perKelvin = ((temperatureFactor('copper', celsius, celsius + 10) ?? 0) - 1) / 10;
    // Half a step of the table, and what its own rounding of k adds.
    expect(Math.abs(perKelvin - coefficient)).toBeLessThan(0.0000061);
  });
});

/** Source: NBS Handbook 100, recalled: ohms per 1000 feet of a wire of gauge 10 at four temperatures. */
describe('copper, a wire of NBS Handbook 100 (recalled from memory)', () => {
  it.each([
    [0, 0.9203],
    [50, 1.117],
    [75, 1.215],
  ])('0.9989 at 20 °C is at %d °C %d', (celsius, resistance) => {
    expect(0.9989 * (temperatureFactor('copper', 20, celsius) ?? 0)).toBeCloseTo(resistance, 3);
  });
});

/** Source: IEC 60228, correction to 20 °C of copper conductors, kt = 254.5/(234.5 + t), recalled with its values. */
describe('copper, correction factors of IEC 60228 (recalled from memory)', () => {
  it.each([
    [5, 1.063],
    [10, 1.041],
    [15, 1.02],
    [25, 0.981],
    [30, 0.962],
  ])('from %d °C the factor is %d', (celsius, factor) => {
    expect(temperatureFactor('copper', celsius, 20)).toBeCloseTo(factor, 3);
  });
});

/**
 * Source: IEC 60034-1, temperature rise by resistance, recalled: θ2 + 235 = (R2/R1)·(θ1 + 235) for copper, 225 for
 * aluminium. The other way round: from two temperatures to the ratio.
 */
describe('constants of IEC 60034-1 (recalled from memory)', () => {
  it.each([
    ['copper-iec', 235],
    ['aluminium', 225],
  ] as const)('%s gives back the hot temperature from the ratio, with %d', (conductor, k) => {
    for (const [cold, hot] of [
      [20, 100],
      [25, 155],
      [18.5, 73],
    ] as const) {
      const ratio = temperatureFactor(conductor, cold, hot) ?? 0;
      expect(ratio * (cold + k) - k).toBeCloseTo(hot, 9);
    }
  });

  it.each([
    ['copper-iec', 20, 100, 335 / 255],
    ['copper-iec', 25, 155, 1.5],
    ['aluminium', 25, 150, 1.5],
  ] as const)('%s from %d to %d °C grows by %d', (conductor, from, to, ratio) => {
    expect(temperatureFactor(conductor, from, to)).toBeCloseTo(ratio, 12);
  });

  it('the two constants of copper differ by less than a thousandth up to 120 °C', () => {
    const [nbs, iec] = [temperatureFactor('copper', 20, 120), temperatureFactor('copper-iec', 20, 120)];
    expect(Math.abs((nbs ?? 0) / (iec ?? 1) - 1)).toBeLessThan(0.001);
  });
});

const lines: Pairs<number>[] = [
  { UV: 1.82, VW: 1.91, WU: 2.14 },
  { UV: 0.842, VW: 0.845, WU: 0.69 },
  { UV: 3, VW: 5, WU: 4 },
  { UV: 0.0123, VW: 0.0124, WU: 0.0122 },
];

/** Reference library: mathjs, which solves linear systems. */
describe('each winding by itself, against mathjs', () => {
  it.each(lines)('a star that reads $UV, $VW and $WU Ω', ({ UV, VW, WU }) => {
    const solved = column(
      lusolve(
        [
          [1, 1, 0],
          [0, 1, 1],
          [1, 0, 1],
        ],
        [UV, VW, WU],
      ),
    );
    const { U, V, W } = starPhases({ UV, VW, WU });
    for (const [index, value] of [U, V, W].entries()) expect(value).toBeCloseTo(solved[index] ?? Number.NaN, 12);
  });

  /** What a network of three conductances reads between two of its nodes: 1 A in at one, out at the other. */
  const read = (delta: Pairs<number>, from: number, to: number): number => {
    const [uv, vw, wu] = [1 / delta.UV, 1 / delta.VW, 1 / delta.WU];
    const nodes = [
      [uv + wu, -uv, -wu],
      [-uv, uv + vw, -vw],
      [-wu, -vw, vw + wu],
    ];
    const kept = [0, 1, 2].filter((node) => node !== to);
    const system = kept.map((row) => kept.map((node) => nodes[row]?.[node] ?? 0));
    const volts = column(
      lusolve(
        system,
        kept.map((node) => (node === from ? 1 : 0)),
      ),
    );
    return volts[kept.indexOf(from)] ?? Number.NaN;
  };

  it.each(lines)('a delta that reads $UV, $VW and $WU Ω, read back node by node', (reading) => {
    const delta = deltaPhases(reading);
    expect(read(delta, 0, 1)).toBeCloseTo(reading.UV, 10);
    expect(read(delta, 1, 2)).toBeCloseTo(reading.VW, 10);
    expect(read(delta, 2, 0)).toBeCloseTo(reading.WU, 10);
  });
});

/** Sources: ANSI/EASA AR100 (read in a secondary text), IEEE 1415 (read in a trade forum that quotes it). */
describe('the limits of published repair practice', () => {
  it.each([
    ['winding-unbalance-good', 2, 'easa-ar100'],
    ['winding-unbalance-good-form', 1, 'easa-ar100'],
    ['winding-unbalance-bad', 5, 'ieee-1415'],
  ] as [LimitId, number, string][])('%s is %d %%, by %s', (id, value, source) => {
    expect(limitValue(id)).toBe(value);
    expect(limit(id)).toMatchObject({ status: 'standard', source, unit: '%' });
  });

  /** Definition of NEMA MG 1 12.45, recalled; the mean by mathjs. */
  it.each(lines)('the deviation of $UV, $VW and $WU Ω is what the definition gives', ({ UV, VW, WU }) => {
    const average = mean(UV, VW, WU);
    const expected = (100 * Math.max(...[UV, VW, WU].map((one) => Math.abs(one - average)))) / average;
    const readings = { UV: ohms(UV, 1e-5), VW: ohms(VW, 1e-5), WU: ohms(WU, 1e-5) };
    const { findings } = assessWinding({ readings, leads: 'four' });
    const shown = findings.flatMap((one) => ('deviationPercent' in one ? [one] : []))[0];
    expect(shown?.deviationPercent).toBeCloseTo(expected, 9);
    if (shown?.code !== 'winding-unbalanced') return;
    // Highest less lowest is one and a half times to twice the deviation, as the trade says "about twice".
    expect((shown.rangePercent ?? 0) / expected).toBeGreaterThanOrEqual(1.5 - 1e-9);
    expect((shown.rangePercent ?? 0) / expected).toBeLessThanOrEqual(2 + 1e-9);
  });
});
