import { describe, expect, it } from 'vitest';
import insulation from '../../content/limits/insulation.json' with { type: 'json' };
import { afterTripLeakage, shownAfterTrip } from '../../src/kernel/electrics/after-trip-leakage.ts';
import { type LimitId, limit, limitRange, limitValue } from '../../src/kernel/limits.ts';

/** Common practice, no source: figures of the trade that no standard has. */
describe('common practice, no source', () => {
  const values: [LimitId, number][] = [
    ['bridge-tolerance', 10],
    ['after-trip-point', 100e6],
  ];
  it.each(values)('%s is %d', (id, value) => {
    expect(limitValue(id)).toBe(value);
  });

  it.each(values.map(([id]) => id))('%s says so itself', (id) => {
    expect(limit(id)).toMatchObject({ status: 'common-practice', source: null });
  });
});

it('the after-trip limit has a reason: 500 V over 100 MΩ is a leakage of 5 µA', () => {
  expect(afterTripLeakage * 1e6).toBeCloseTo(5, 12);
  expect(shownAfterTrip).toEqual({ volts: '500 V', leakage: '5 µA' });
  expect(insulation.limits['after-trip-point'].note).toContain(
    'at a test voltage of 500 V the limit is a leakage of 5 µA',
  );
});

/** Project judgement: figures that the project chose, each with its reason in content/limits. */
describe('project judgement', () => {
  const values: [LimitId, number][] = [
    ['bridge-short', 1000],
    ['pe-dead-short', 1],
    ['pe-core-tolerance', 25],
    ['pe-contacts', 0.15],
    ['pe-broken-unknown-length', 3],
    ['winding-again-agreement', 5],
    ['winding-joint', 0.05],
    ['phase-difference', 2],
    ['curve-level-change', 10],
    ['resistance-residual-voltage', 0.1],
    ['reference-temperature-after-trip', 20],
    ['bridge-open-from', 1e6],
  ];
  it.each(values)('%s is %d and says that it is one', (id, value) => {
    expect(limitValue(id)).toBe(value);
    expect(limit(id)).toMatchObject({ status: 'project-judgement', source: null });
  });

  it('what a rail usually reads is the same for both, up to open', () => {
    for (const id of ['bridge-dc-plus-typical', 'bridge-dc-minus-typical'] as const) {
      expect(limitRange(id)).toEqual({ from: 10e3, to: Number.POSITIVE_INFINITY });
      expect(limit(id)).toMatchObject({ status: 'project-judgement', source: null });
    }
  });

  it('the short of a switch lies a decade below the lowest usual reading', () => {
    expect(limitValue('bridge-short') * 10).toBeLessThanOrEqual(limitRange('bridge-dc-minus-typical').from);
  });

  it('the after-trip point is stricter than every minimum for healthy machines below 1 kV', () => {
    const minima: LimitId[] = ['ieee43-minimum-random-wound', 'machine-minimum-60204', 'installation-minimum-500'];
    for (const id of minima) expect(limitValue('after-trip-point')).toBeGreaterThan(limitValue(id));
  });
});

/** Sources: 29 CFR 1910.333(a)(1), read; IEC 60204-1 clause 6.2.4, read. */
describe('touch voltage and discharge', () => {
  it('the site stops at the lower of the published figures', () => {
    expect(limitValue('touch-voltage')).toBe(50);
    expect(limitValue('residual-voltage-60')).toBe(60);
    expect(limit('touch-voltage')).toMatchObject({ status: 'regulation', source: '29-cfr-1910-333' });
  });
});
