import { expect, test } from 'vitest';
import { phases } from '../../../../src/kernel/electrics/phases.ts';
import { figureOf } from '../../../../src/kernel/reading/reading.ts';
import { cableAlone, coreReadings, leakyCable } from '../../../../src/practice/figures/free-ends/model.ts';
import { exactInstruments, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const none = Number.POSITIVE_INFINITY;

test.each([1e9, 10e6, 100e3, 1e3])('free ends hide a leak of %d Ω: all three cores read as without it', (ohms) => {
  const [leaky, sound] = [coreReadings('free', ohms), coreReadings('free', none)];
  expect(phases.map((phase) => leaky[phase].text)).toEqual(phases.map((phase) => sound[phase].text));
  expect(leaky.U.reading.kind).toBe('over');
});

test.each([300e6, 10e6, 1e6])('bonded, U and V both read a leak of %d Ω, and W does not', (ohms) => {
  const { U, V, W } = coreReadings('bonded', ohms);
  for (const { reading } of [U, V]) expect((figureOf(reading) ?? 0) / ohms).toBeCloseTo(1, 1);
  expect(W.reading.kind).toBe('over');
});

test('the readings are those of the simulator', () => {
  for (const ends of ['free', 'bonded'] as const) {
    for (const phase of phases) {
      const leads = { red: `cable.drive.${phase}`, black: 'ground' };
      const again = measure(leakyCable(30e6), cableAlone(ends, phase), exactInstruments, 'insulation', leads, middle);
      expect(coreReadings(ends, 30e6)[phase]).toEqual(again);
    }
  }
});
