import { expect, test } from 'vitest';
import { voltageAfter, voltageHalfOpen } from '../../../../src/kernel/electrics/discharge-law.ts';
import { balancedAxis, discharge } from '../../../../src/practice/figures/bus-discharge/model.ts';
import { leadsOffAt20 } from '../../../../src/practice/figures/middle-axis.ts';
import { afterWaiting } from '../../../../src/practice/simulator/discharge.ts';

const times = Array.from({ length: 21 }, (_, half) => half * 30);
/** Each half has 1.2 mF and 100 kΩ. */
const tau = 120;
const bus = 565;

test('with both resistors whole the bus follows V0·exp(−t/RC), and its halves stay alike', () => {
  for (const { seconds, upper, lower } of discharge('whole', times)) {
    expect(Math.abs(upper + lower - voltageAfter(bus, seconds, tau))).toBeLessThan(1);
    expect(upper).toBeCloseTo(lower, 3);
  }
});

test.each(['lower-open', 'upper-open'] as const)('%s: that half stands, and the bus stops at about half', (kind) => {
  const course = discharge(kind, times);
  for (const { seconds, upper, lower } of course) {
    expect(Math.abs(upper + lower - voltageHalfOpen(bus, seconds, tau))).toBeLessThan(5);
  }
  const last = course[course.length - 1];
  expect(kind === 'lower-open' ? last?.lower : last?.upper).toBeGreaterThan(275);
  expect(kind === 'lower-open' ? last?.upper : last?.lower).toBeLessThan(5);
});

test('step by step it ends where the simulator ends in one wait', () => {
  for (const kind of ['whole', 'lower-open'] as const) {
    const axis = balancedAxis(kind);
    const waited = afterWaiting(axis, { ...leadsOffAt20, busVolts: axis.parameters.supplyVolts }, 300);
    const { upper, lower } = discharge(kind, times)[10] ?? { upper: 0, lower: 0 };
    expect(upper + lower).toBeCloseTo(waited.busVolts, 0);
    expect(lower).toBeCloseTo(waited.lowerBusVolts ?? 0, 0);
  }
});
