import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { asFound } from '../../../../src/practice/simulator/axis-state.ts';
import { afterWaiting, chargeAfter, holding, switchedOn } from '../../../../src/practice/simulator/discharge.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { type Capacitor, resistor } from '../../../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../../../src/practice/simulator/operating-point.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

const bus: Capacitor = { kind: 'capacitor', a: 'plus', b: 'ground', farads: 1e-3, volts: 600 };

test.each([1, 10, 100, 600])('1 mF and 100 kΩ after %d s: V0·exp(−t/RC)', (seconds) => {
  const volts = chargeAfter([bus, resistor('plus', 'ground', 100e3)], bus, seconds);
  expect(volts / (600 * Math.exp(-seconds / 100))).toBeCloseTo(1, 4);
});

test('no charge is lost in zero seconds, and an empty bus stays empty', () => {
  const empty = { ...bus, volts: 0 };
  expect(chargeAfter([bus, resistor('plus', 'ground', 1e3)], bus, 0)).toBe(600);
  expect(chargeAfter([empty, resistor('plus', 'ground', 1e3)], empty, 60)).toBe(0);
});

test('a charged capacitor is a voltage source during a reading', () => {
  const volts = operatingPoint(holding([bus, resistor('plus', 'ground', 100e3)]));
  expect(volts('plus')).toBeCloseTo(600, 2);
});

const sound = () => {
  const random = seeded(11);
  return faultedAxis('nuisance', drawAxis(random), random);
};

test('after switch-off the bus falls to a touchable voltage, and in ten minutes below what falsifies a resistance', () => {
  const axis = sound();
  const on = switchedOn(axis, asFound(20, 20));
  expect(afterWaiting(axis, on, 60).busVolts).toBe(axis.parameters.supplyVolts);
  const off = { ...on, supply: false };
  const at = (seconds: number) => afterWaiting(axis, off, seconds).busVolts;
  expect(at(1)).toBeGreaterThan(500);
  expect(at(60)).toBeGreaterThan(60);
  expect(at(300)).toBeLessThan(50);
  expect(at(600)).toBeLessThan(0.1);
});

test('with an open bleed resistor the bus stays dangerous after the time on the label', () => {
  const axis = sound();
  const open = (ohms: number) => ({ U: ohms, V: ohms, W: ohms });
  const parameters = { ...axis.parameters, bleedOhms: 1e9, upperOhms: open(1e9), lowerOhms: open(1e9) };
  const state = { ...asFound(20, 20), busVolts: axis.parameters.supplyVolts };
  expect(afterWaiting({ ...axis, parameters }, state, 600).busVolts).toBeGreaterThan(300);
});

test('a winding cools towards the air: in one time constant by 63 %; in the tidy world it keeps its temperature', () => {
  const tidy = sound();
  const field = { ...tidy, parameters: { ...tidy.parameters, coolingSeconds: 2400 } };
  const hot = asFound(80, 20);
  expect(afterWaiting(field, hot, 2400).windingCelsius).toBeCloseTo(20 + 60 / Math.E, 6);
  expect(afterWaiting(field, switchedOn(field, hot), 2400).windingCelsius).toBeCloseTo(20 + 60 / Math.E, 6);
  expect(afterWaiting(tidy, hot, 2400).windingCelsius).toBe(80);
});
