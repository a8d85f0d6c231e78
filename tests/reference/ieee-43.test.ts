import { describe, expect, it } from 'vitest';
import { testVoltageRow } from '../../src/kernel/assessment/test-voltage.ts';
import { validityOf } from '../../src/kernel/electrics/correction-validity.ts';
import { machineMinimum } from '../../src/kernel/electrics/machine-minimum.ts';
import { correctionFactor } from '../../src/kernel/electrics/temperature-correction.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limitRange, limitValue } from '../../src/kernel/limits.ts';

/** Source: IEEE 43-2000, clause 6.3, KT = 0.5^((40 − T)/10); read in texts that reproduce it. */
describe('the halving rule of IEEE 43', () => {
  it.each([
    [0, 0.0625],
    [10, 0.125],
    [20, 0.25],
    [25, 0.35355339],
    [30, 0.5],
    [33, 0.61557221],
    [40, 1],
    [47, 1.62450479],
    [50, 2],
    [60, 4],
    [70, 8],
    [100, 64],
  ])('at %d °C the factor to 40 °C is %d', (celsius, factor) => {
    expect(correctionFactor('halving', celsius, 40)).toBeCloseTo(factor, 8);
  });

  it('is the same rule to any other reference temperature', () => {
    expect(correctionFactor('halving', 40, 20)).toBeCloseTo(4, 12);
    expect(correctionFactor('halving', 10, 20)).toBeCloseTo(0.5, 12);
    expect(correctionFactor('halving', 20, 20)).toBe(1);
  });
});

/** Source: IEEE 43-2013, clause 6.3; formulas, constants and ranges recalled from memory. */
describe('the formulas for thermosetting insulation (recalled from memory)', () => {
  it.each([
    [10, 0.656],
    [25, 0.8186],
    [40, 1],
    [60, 2.2517],
    [85, 5.467],
  ])('at %d °C the factor to 40 °C is %d', (celsius, factor) => {
    expect(correctionFactor('thermosetting', celsius, 40)).toBeCloseTo(factor, 4);
  });

  it.each([10, 20, 39.9, 40, 50, 85])('at %d °C is the exponential with the constant of its range', (celsius) => {
    const k = celsius < 40 ? 1245 : 4230;
    const expected = Math.exp(-k * (1 / (celsius + 273) - 1 / 313));
    expect(correctionFactor('thermosetting', celsius, 40)).toBeCloseTo(expected, 12);
  });

  it('hold from 10 to 85 °C and give nothing outside', () => {
    expect(validityOf('thermosetting')).toEqual({ from: 10, to: 85 });
    expect(correctionFactor('thermosetting', 9.9, 40)).toBeUndefined();
    expect(correctionFactor('thermosetting', 85.1, 40)).toBeUndefined();
  });

  it('meet at 40 °C, and rise with temperature', () => {
    const factors = [10, 20, 30, 39.999, 40, 40.001, 60, 85].map((t) => correctionFactor('thermosetting', t, 40) ?? 0);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
    expect(factors[3]).toBeCloseTo(1, 4);
    expect(factors[5]).toBeCloseTo(1, 4);
  });

  it('are flagged as recalled', () => {
    expect(limitLabels['thermosetting-hot'].recalled).toBe(true);
    expect(limitLabels['thermosetting-cool'].recalled).toBe(true);
  });
});

/** Source: IEEE 43-2000, table 3, kept in 2013; read in texts that reproduce it. */
describe('the minima of IEEE 43 at 40 °C after 1 min', () => {
  it.each([
    ['pre-1970', 0, 1e6],
    ['pre-1970', 400, 1.4e6],
    ['pre-1970', 1000, 2e6],
    ['pre-1970', 3300, 4.3e6],
    ['pre-1970', 13_800, 14.8e6],
    ['form-wound', 3300, 100e6],
    ['form-wound', 13_800, 100e6],
    ['random-wound', 400, 5e6],
    ['random-wound', 690, 5e6],
  ] as const)('%s, rated %d V: %d Ω', (machineClass, rated, ohms) => {
    expect(machineMinimum(machineClass, rated)).toBeCloseTo(ohms, 3);
  });
});

/** Source: IEEE 43-2000, table 1; read in texts that reproduce it. */
describe('the test voltages of IEEE 43', () => {
  it.each([
    [230, 500, 500],
    [999, 500, 500],
    [1000, 500, 1000],
    [2500, 500, 1000],
    [2501, 1000, 2500],
    [5000, 1000, 2500],
    [5001, 2500, 5000],
    [12_000, 2500, 5000],
    [12_001, 5000, 10_000],
  ])('rated %d V: %d to %d V', (rated, from, to) => {
    expect(limitRange(testVoltageRow(rated))).toEqual({ from, to });
  });
});

/** Source: IEEE 43, clause 5.4, recalled from memory. */
it('a winding is discharged for four times the test at least (recalled from memory)', () => {
  expect(limitValue('discharge-after-test')).toBe(4);
  expect(limitLabels['discharge-after-test'].recalled).toBe(true);
});
