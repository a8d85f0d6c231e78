import { expect, test } from 'vitest';
import { parallel } from '../../../../src/kernel/electrics/parallel-law.ts';
import { figureOf } from '../../../../src/kernel/reading/reading.ts';
import { leakyStage, sixReadings } from '../../../../src/practice/figures/bridge-leak/model.ts';
import { exactInstruments, leadsOffAt20, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const sound = { rail: 'plus', phase: 'V', ohms: Number.POSITIVE_INFINITY } as const;
const ohms = (reading: ReturnType<typeof sixReadings>['readings']['plus']['U']) => figureOf(reading.reading) ?? 0;

test('a sound stage reads alike within each rail, differently between them, and is a go', () => {
  const { readings, spreadPercent, verdict } = sixReadings(sound);
  expect(readings.plus.U.text).toBe(readings.plus.V.text);
  expect(readings.minus.U.text).toBe(readings.minus.W.text);
  expect(ohms(readings.plus.U)).toBeGreaterThan(1.3 * ohms(readings.minus.U));
  expect([spreadPercent, verdict]).toEqual([0, 'go']);
});

// The leak lies across the two points, and everything else there is linear as long as the diodes block: common practice.
test.each([3e6, 1e6, 300e3, 100e3, 10e3])('a leak of %d Ω is in parallel with the sound reading', (leak) => {
  const whole = ohms(sixReadings(sound).readings.plus.V);
  const leaky = ohms(sixReadings({ ...sound, ohms: leak }).readings.plus.V);
  expect(leaky / parallel([whole, leak])).toBeCloseTo(1, 2);
});

test.each(['plus', 'minus'] as const)('the readings of the %s rail are those of the simulator', (rail) => {
  const leak = { rail, phase: 'W', ohms: 30e3 } as const;
  const leads = rail === 'plus' ? { red: 'DC+', black: 'drive.W' } : { red: 'drive.W', black: 'DC-' };
  const again = measure(leakyStage(leak), leadsOffAt20, exactInstruments, 'ohms', leads, middle);
  const { readings, verdict } = sixReadings(leak);
  expect(readings[rail].W).toEqual(again);
  expect(verdict).toBe('no-go');
});

test('a worse leak never turns the verdict towards go', () => {
  const rank = { go: 0, undecided: 1, 'no-go': 2 };
  const ranks = [Number.POSITIVE_INFINITY, 3e6, 1e6, 300e3, 100e3, 30e3, 10e3, 3e3, 1e3, 100, 1].map(
    (leak) => rank[sixReadings({ ...sound, ohms: leak }).verdict],
  );
  expect(ranks).toEqual([...ranks].sort());
  expect(new Set(ranks).size).toBe(3);
});
