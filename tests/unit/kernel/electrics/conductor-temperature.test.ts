import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductors, temperatureFactor } from '../../../../src/kernel/electrics/conductor-temperature.ts';
import { runs } from '../../../support/runs.ts';

const celsius = fc.double({ min: -20, max: 180, noNaN: true });
const metal = fc.constantFrom(...conductors);

describe('the factor of a temperature', () => {
  it('is one without a change, and grows with the temperature', () => {
    fc.assert(
      fc.property(metal, celsius, fc.double({ min: 0.01, max: 50, noNaN: true }), (conductor, from, more) => {
        expect(temperatureFactor(conductor, from, from)).toBe(1);
        if (from + more <= 180) expect(temperatureFactor(conductor, from, from + more)).toBeGreaterThan(1);
      }),
      { numRuns: runs },
    );
  });

  it('there and back gives one, and an intermediate step changes nothing', () => {
    fc.assert(
      fc.property(metal, celsius, celsius, celsius, (conductor, a, b, c) => {
        const factor = (from: number, to: number) => temperatureFactor(conductor, from, to) ?? Number.NaN;
        expect(factor(a, b) * factor(b, a)).toBeCloseTo(1, 12);
        expect(factor(a, b) * factor(b, c)).toBeCloseTo(factor(a, c), 10);
      }),
      { numRuns: runs },
    );
  });

  it.each([
    [-21, 20],
    [20, 181],
    [Number.NaN, 20],
  ])('is none from %d to %d °C, outside its range', (from, to) => {
    expect(temperatureFactor('copper', from, to)).toBeUndefined();
  });
});
