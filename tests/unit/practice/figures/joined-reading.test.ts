import { expect, test } from 'vitest';
import { parallel } from '../../../../src/kernel/electrics/parallel-law.ts';
import { figureOf } from '../../../../src/kernel/reading/reading.ts';
import { joinedAxis, readings } from '../../../../src/practice/figures/joined-reading/model.ts';
import { exactInstruments, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { asFound, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const pairs = [2e6, 20e6, 500e6, 1e9].flatMap((cable) =>
  [2e6, 50e6, 1e9].map((motor): [number, number] => [cable, motor]),
);

// The absorption of the motor, tens of gigohms after a minute, is beside its insulation.
test.each(pairs)('cable %d Ω and motor %d Ω: each reads its own, and joined their conductances add', (cable, motor) => {
  const shown = readings(cable, motor);
  const [ofCable, ofMotor, joined] = [shown.cable, shown.motor, shown.joined].map(
    ({ reading }) => figureOf(reading) ?? 0,
  );
  expect((ofCable ?? 0) / cable).toBeCloseTo(1, 1);
  expect((ofMotor ?? 0) / motor).toBeGreaterThan(0.9);
  expect((ofMotor ?? 0) / motor).toBeLessThan(1.01);
  expect((joined ?? 0) / parallel([ofCable ?? 0, ofMotor ?? 0])).toBeCloseTo(1, 1);
});

test('the joined reading is that of the simulator at the drive end, with the motor plugged', () => {
  const leads = { red: 'cable.drive.W', black: 'ground' };
  const state = leadsOff(asFound(20, 20));
  const again = measure(joinedAxis(100e6, 50e6), state, exactInstruments, 'insulation', leads, middle);
  expect(readings(100e6, 50e6).joined.text).toBe(again.text);
});
