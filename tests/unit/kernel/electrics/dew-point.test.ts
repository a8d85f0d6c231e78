import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../../../src/kernel/electrics/dew-point.ts';

describe('the dew point', () => {
  it.each([
    [25, 50, 13.8576],
    [25, 60, 16.6977],
    [20, 60, 11.9999],
    [35, 80, 31.0304],
    [50, 5, 0.1592],
  ])('of %d °C and %d percent is %d °C', (celsius, humidity, dew) => {
    expect(dewPoint(celsius, humidity)).toBeCloseTo(dew, 4);
  });

  it.each([-20, 0, 13.5, 25, 60])('of saturated air of %d °C is that temperature', (celsius) => {
    expect(dewPoint(celsius, 100)).toBeCloseTo(celsius, 9);
  });

  it('rises with humidity and with temperature, and never above the air', () => {
    for (let celsius = -20; celsius <= 60; celsius += 5) {
      for (let humidity = 5; humidity < 100; humidity += 5) {
        const dew = dewPoint(celsius, humidity) ?? Number.NaN;
        expect(dew).toBeLessThan(celsius);
        expect(dewPoint(celsius, humidity + 5)).toBeGreaterThan(dew);
        if (celsius < 60) expect(dewPoint(celsius + 5, humidity)).toBeGreaterThan(dew);
      }
    }
  });

  it.each([
    [25, 0],
    [25, -1],
    [25, 100.1],
    [-20.1, 50],
    [60.1, 50],
    [Number.NaN, 50],
    [25, Number.NaN],
  ])('of %d °C and %d percent is not computed', (celsius, humidity) => {
    expect(dewPoint(celsius, humidity)).toBeUndefined();
  });
});
