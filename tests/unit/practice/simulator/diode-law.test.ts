import { expect, test } from 'vitest';
import {
  diodeConductance,
  diodeCurrent,
  limitStep,
  thermalVolts,
} from '../../../../src/practice/simulator/diode-law.ts';

test('thermal voltage is 25.69 mV at 25 °C (CODATA: k/q = 86.17 µV/K)', () => {
  expect(thermalVolts(25)).toBeCloseTo(0.025693, 6);
  expect(thermalVolts(-273.15)).toBeCloseTo(0, 12);
});

const [saturation, slope] = [1e-9, 0.03];

test('ten times the current needs slope · ln 10 more: 69 mV at a slope of 30 mV', () => {
  const at = (volts: number) => diodeCurrent(volts, saturation, slope);
  expect(at(0.4 + slope * Math.LN10) / at(0.4)).toBeCloseTo(10, 4);
});

test('no current at zero volts, at most the saturation current in reverse', () => {
  expect(diodeCurrent(0, saturation, slope)).toBe(0);
  expect(diodeCurrent(-500, saturation, slope)).toBeCloseTo(-saturation, 18);
});

test('the conductance is the slope of the current', () => {
  const [volts, step] = [0.35, 1e-7];
  const rise = diodeCurrent(volts + step, saturation, slope) - diodeCurrent(volts - step, saturation, slope);
  expect(diodeConductance(volts, saturation, slope) / (rise / (2 * step))).toBeCloseTo(1, 5);
});

test('small steps and steps below the bend are kept, a large step beyond it is shortened', () => {
  expect(limitStep(-200, 0, saturation, slope)).toBe(-200);
  expect(limitStep(0.41, 0.4, saturation, slope)).toBe(0.41);
  const shortened = limitStep(100, 0.4, saturation, slope);
  expect(shortened).toBeGreaterThan(0.4);
  expect(shortened).toBeLessThan(0.8);
});
