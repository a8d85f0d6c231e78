import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { brakeCores } from '../../src/calculators/brake/rule/cable.ts';
import { coilResistance } from '../../src/kernel/electrics/coil-resistance.ts';
import { temperatureFactor } from '../../src/kernel/electrics/conductor-temperature.ts';
import { metres } from '../../src/kernel/reading/reading.ts';

/** Source: Ohm's and Joule's laws; mathjs keeps the units. */
it.each([
  [24, 12],
  [24, 7.2],
  [24, 40],
  [48, 18],
  [96, 55],
])('a coil of %d V and %d W', (volts, watts) => {
  const ohms: number = evaluate(`(${volts} V)^2 / (${watts} W)`).toNumber('ohm');
  expect(coilResistance(volts, watts)).toBeCloseTo(ohms, 9);
});

it.each([
  [0, 12],
  [24, 0],
  [-24, 12],
  [Number.NaN, 12],
  [24, Number.POSITIVE_INFINITY],
])('no coil of %d V and %d W', (volts, watts) => {
  expect(coilResistance(volts, watts)).toBeUndefined();
});

/**
 * Source: IEC 60028, annealed copper: 0.00393 per kelvin at 20 °C, constant mass; recalled, not read. The law with the
 * constant 234.5 of NBS Handbook 100 is the same line: 1 / 254.5 = 0.003929.
 */
describe('copper by its coefficient', () => {
  it.each([-20, 0, 20, 40, 75, 120, 180])('%d °C', (celsius) => {
    const byCoefficient = 1 + 0.00393 * (celsius - 20);
    expect(1 / (temperatureFactor('copper', celsius, 20) ?? 0) / byCoefficient).toBeCloseTo(1, 3);
  });
});

/** Source: IEC 60228, class 5, Ω/km at 20 °C, read in two texts; a pair of cores is there and back. */
it.each([
  [0.75, 30, 1.56],
  [1, 20, 0.78],
  [1.5, 50, 1.33],
])('two cores of %d mm², %d m, have %d Ω', (section, length, ohms) => {
  expect(brakeCores({ metres: metres(length), squareMillimetres: section })?.table).toBeCloseTo(ohms, 9);
});
