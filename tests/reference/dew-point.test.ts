import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../src/kernel/electrics/dew-point.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

const grid = Array.from({ length: 51 }, (_, celsius) => celsius).flatMap((celsius) =>
  Array.from({ length: 96 }, (_, index) => ({ celsius, humidity: index + 5 })),
);
const compared = grid.map(({ celsius, humidity }) => {
  const ours = dewPoint(celsius, humidity) ?? Number.NaN;
  return { ours, difference: ours - psychrolib.GetTDewPointFromRelHum(celsius, humidity / 100) };
});
const largest = (points: typeof compared) => Math.max(...points.map(({ difference }) => Math.abs(difference)));

/**
 * Source: psychrolib 1.1 (the formulas of the ASHRAE Handbook of Fundamentals, 2017), from 0 to 50 °C and 5 to 100 %.
 * The Magnus constants of Alduchov and Eskridge (1996) were read in public code that names the paper.
 */
describe('the Magnus dew point against psychrolib', () => {
  it('differs by 0.055 K at most where the dew point is above freezing', () => {
    const liquid = compared.filter(({ ours }) => ours >= 0);
    expect(liquid.length).toBeGreaterThan(3000);
    expect(largest(liquid)).toBeLessThan(0.055);
    expect(largest(liquid)).toBeGreaterThan(0.05);
  });

  // Below freezing psychrolib gives the frost point over ice, Magnus the dew point over water, which is lower. No
  // correction method is valid below freezing, so no verdict depends on it.
  it('lies below the frost point by 3.3 K at most where it is below freezing', () => {
    const frozen = compared.filter(({ ours }) => ours < 0);
    expect(frozen.length).toBeGreaterThan(500);
    expect(largest(frozen)).toBeLessThan(3.3);
    expect(Math.max(...frozen.map(({ difference }) => difference))).toBeLessThan(0.02);
  });

  it('has constants that are flagged as read', () => {
    expect(limitLabels.magnus.recalled).toBe(false);
  });
});

/** Source: a published example, 25 °C and 50 % give 13.9 °C (recalled from memory). */
describe('published examples', () => {
  it.each([
    [25, 50, 13.9],
    [20, 100, 20],
    [0, 100, 0],
    [30, 60, 21.4],
  ])('%d °C and %d percent: %d °C', (celsius, humidity, dew) => {
    expect(dewPoint(celsius, humidity)).toBeCloseTo(dew, 1);
  });
});
