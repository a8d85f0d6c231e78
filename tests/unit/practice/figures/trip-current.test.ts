import { expect, test } from 'vitest';
import {
  demandedAmperes,
  demandSecondsTo,
  loopAmperes,
  loopSecondsTo,
} from '../../../../src/practice/figures/trip-current/current-rise.ts';
import { drive, shortOf, stuck, tripCurrent } from '../../../../src/practice/figures/trip-current/model.ts';

/** L·di/dt = V − R·i, in a million small steps: independent of the closed formula. */
function integrated(
  { volts, henries, ohms }: { volts: number; henries: number; ohms: number },
  seconds: number,
): number {
  const step = seconds / 1e6;
  let amperes = 0;
  for (let count = 0; count < 1e6; count += 1) amperes += (step * (volts - ohms * amperes)) / henries;
  return amperes;
}

test.each([
  ['terminals', 1e-6],
  ['motor-end', 1e-4],
  ['winding', 3e-3],
] as const)('%s after %d s: as the differential equation in small steps', (cause, seconds) => {
  const loop = shortOf(cause, 20);
  expect(loopAmperes(loop, seconds) / integrated(loop, seconds)).toBeCloseTo(1, 5);
});

test('at first the current rises by V/L, and it ends at V/R', () => {
  const loop = { volts: 565, henries: 1e-5, ohms: 0.4 };
  expect(loopAmperes(loop, 1e-9)).toBeCloseTo(0.0565, 5);
  expect(loopAmperes(loop, 1)).toBeCloseTo(1412.5, 6);
  expect(loopSecondsTo(loop, 1500)).toBe(Number.POSITIVE_INFINITY);
});

test('the times are those at which the currents reach the level', () => {
  const loop = shortOf('motor-end', 20);
  expect(loopAmperes(loop, loopSecondsTo(loop, 60))).toBeCloseTo(60, 6);
  expect(demandedAmperes(stuck, demandSecondsTo(stuck, 60))).toBeCloseTo(60, 6);
  // First-order lag: 63 % after one time constant.
  expect(demandedAmperes({ most: 100, seconds: 0.12 }, 0.12)).toBeCloseTo(63.21, 2);
  expect(demandSecondsTo({ most: 50, seconds: 1 }, 60)).toBe(Number.POSITIVE_INFINITY);
});

test('a short trips in microseconds, a winding in less than a millisecond, a load in tenths of a second', () => {
  const [atDrive, atMotor, winding, load] = (['terminals', 'motor-end', 'winding', 'load'] as const).map(
    (cause) => tripCurrent(cause, 20).toTrip,
  ) as [number, number, number, number];
  expect(atDrive).toBeLessThan(1e-6);
  expect(atMotor).toBeGreaterThan(atDrive);
  expect(atMotor).toBeLessThan(1e-5);
  expect(winding).toBeLessThan(1e-3);
  expect(load).toBeGreaterThan(0.1);
});

test('no current is above what the transistors let through, and each course ends there or above the trip level', () => {
  for (const cause of ['terminals', 'motor-end', 'winding', 'load'] as const) {
    const { course, peak } = tripCurrent(cause, 2);
    for (const [, amperes] of course) expect(amperes).toBeLessThanOrEqual(drive.mostAmperes);
    expect(peak).toBeGreaterThanOrEqual(drive.tripAmperes);
  }
});
