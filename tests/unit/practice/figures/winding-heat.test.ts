import { expect, test } from 'vitest';
import { figureOf } from '../../../../src/kernel/reading/reading.ts';
import { exactInstruments, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { warmMotor, warmReading } from '../../../../src/practice/figures/winding-heat/model.ts';
import { asFound, cableFree } from '../../../../src/practice/simulator/axis-state.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const ohms = (shown: ReturnType<typeof warmReading>) => figureOf(shown.reading.reading) ?? 0;

// Worked by hand: 20 MΩ at 20 °C, halving for each 10 K, and what absorption takes of it after a minute.
test.each([
  [20, 20e6],
  [30, 10e6],
  [50, 2.5e6],
  [10, 40e6],
])('at %d °C a motor of 20 MΩ reads %d Ω, and carried to 20 °C always the same', (celsius, expected) => {
  const shown = warmReading(20e6, 10, celsius);
  expect(ohms(shown) / expected).toBeCloseTo(1, 1);
  expect(shown.carried / 20e6).toBeCloseTo(1, 1);
});

// IEEE 43-2013 (recalled): the halving rule is a rule of thumb, so the carried value is one too.
test('insulation that halves in other steps is carried to a wrong figure, by more the hotter it is', () => {
  const errors = [20, 40, 60, 80].map((celsius) => Math.abs(1 - warmReading(20e6, 9, celsius).carried / 20e6));
  expect(errors).toEqual([...errors].sort((a, b) => a - b));
  expect(errors[3]).toBeGreaterThan(0.3);
});

test('the limit carried to the winding: 100 MΩ at 20 °C, half of it at 30 °C, a sixteenth at 60 °C', () => {
  expect([20, 30, 60].map((celsius) => warmReading(200e6, 10, celsius).limitHere)).toEqual([100e6, 50e6, 6.25e6]);
});

test('heat makes a good motor undecided, never no-go, and a bad one is never a go', () => {
  const verdicts = (insulation: number) =>
    [0, 10, 20, 30, 40, 50, 60, 70, 80].map((celsius) => warmReading(insulation, 10, celsius).verdict);
  expect(new Set(verdicts(800e6))).toEqual(new Set(['go', 'undecided']));
  expect(verdicts(20e6)).not.toContain('go');
});

test('the reading is that of the simulator', () => {
  const leads = { red: 'motor.U', black: 'ground' };
  const state = cableFree(asFound(55, 20));
  const again = measure(warmMotor(80e6, 11), state, exactInstruments, 'insulation', leads, middle);
  expect(warmReading(80e6, 11, 55).reading).toEqual(again);
});
