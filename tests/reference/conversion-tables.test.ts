import { describe, expect, it } from 'vitest';
import { validityOf } from '../../src/kernel/electrics/correction-validity.ts';
import { correctionFactor, interpolate } from '../../src/kernel/electrics/temperature-correction.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limitPoints } from '../../src/kernel/limits.ts';

/** Source: ANSI/NETA MTS, table 100.14.1, solid insulation to 20 °C; recalled from memory. Repeated here on purpose. */
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

describe('the factors for solid insulation (recalled from memory)', () => {
  it.each(solid)('at %d °C to 20 °C: %d', (celsius, factor) => {
    expect(correctionFactor('table', celsius, 20)).toBeCloseTo(factor, 12);
  });

  it('are the rows that were published, no more and no less', () => {
    expect(limitPoints('solid-insulation-to-20')).toEqual(solid);
    expect(limitLabels['solid-insulation-to-20'].recalled).toBe(true);
  });

  it('are used between the first row and the last', () => {
    expect(validityOf('table')).toEqual({ from: 0, to: 70 });
    expect(correctionFactor('table', -0.1, 20)).toBeUndefined();
    expect(correctionFactor('table', 70.1, 20)).toBeUndefined();
  });
});

describe('between the rows', () => {
  it('the logarithm is interpolated: half way is the geometric mean', () => {
    solid.slice(1).forEach(([celsius, factor], index) => {
      const [before, factorBefore] = solid[index] ?? [0, 0];
      const middle = interpolate(solid, (celsius + before) / 2);
      expect(middle).toBeCloseTo(Math.sqrt(factor * factorBefore), 12);
    });
  });

  it('the factor rises without a jump', () => {
    const last = solid.at(-1)?.[0] ?? 0;
    const steps = Array.from({ length: last * 10 + 1 }, (_, index) => interpolate(solid, index / 10) ?? 0);
    steps.slice(1).forEach((factor, index) => {
      const ratio = factor / (steps[index] ?? 0);
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(1.02);
    });
  });

  /** An invented table that doubles each ten degrees: interpolation must find the law between its rows exactly. */
  it('an exponential law is found again from its rows', () => {
    const law = (celsius: number) => 2 ** ((celsius - 20) / 10);
    const rows = [-7, 3, 18, 41, 66].map((celsius): [number, number] => [celsius, law(celsius)]);
    for (const celsius of [-6.5, 0, 12.3, 20, 40.9, 59])
      expect(interpolate(rows, celsius)).toBeCloseTo(law(celsius), 12);
  });

  it('nothing lies outside', () => {
    expect(interpolate(solid, -1)).toBeUndefined();
    expect(interpolate(solid, 71)).toBeUndefined();
  });
});
