import { describe, expect, it } from 'vitest';
import { assessAbsorption } from '../../src/calculators/absorption/rule/assess.ts';
import type { AbsorptionInput } from '../../src/calculators/absorption/rule/input.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limit, limitRange, limitValue } from '../../src/kernel/limits.ts';
import { celsius, ohms } from '../../src/kernel/reading/reading.ts';

/** A form-wound winding with plain values, to six digits. */
function ratios(megohms: Record<number, number>, thermalClass: AbsorptionInput['thermalClass'] = 'BFH') {
  const readings = Object.fromEntries(Object.entries(megohms).map(([time, value]) => [time, ohms(value * 1e6, 1)]));
  return assessAbsorption({ readings, windingKind: 'form-wound', thermalClass, temperature: celsius(40) });
}

/** Source: IEEE 43-2000, table 2 and cl. 12.2; read in texts that reproduce them. Repeated here on purpose. */
describe('the limits of the polarization index', () => {
  it.each([
    ['polarization-index-a', 1.5],
    ['polarization-index-bfh', 2],
    ['polarization-index-high-value', 5e9],
    ['polarization-index-dry', 8],
  ] as const)('%s', (id, value) => {
    expect(limitValue(id)).toBe(value);
    expect(limit(id)).toMatchObject({ source: 'ieee-43', recalled: false });
  });

  it.each<[number, number, 'A' | 'BFH', string]>([
    [1000, 1490, 'A', 'no-go'],
    [1000, 1510, 'A', 'go'],
    [1000, 1990, 'BFH', 'no-go'],
    [1000, 2010, 'BFH', 'go'],
  ])('%d MΩ to %d MΩ in class %s: %s', (first, last, thermalClass, verdict) => {
    expect(ratios({ 60: first, 600: last }, thermalClass).verdict).toBe(verdict);
  });
});

/** Source: the definition of IEEE 43, R after 10 min over R after 1 min. The readings are invented, each index worked by hand. */
describe('worked indices', () => {
  it.each([
    [640, 2240, 3.5],
    [350, 735, 2.1],
    [270, 351, 1.3],
    [52, 49.4, 0.95],
  ])('%d MΩ after 1 min, %d MΩ after 10 min: %d', (first, last, worked) => {
    const { index } = ratios({ 60: first, 600: last });
    expect(Number(index?.lo.toPrecision(2))).toBe(worked);
    expect(Number(index?.hi.toPrecision(2))).toBe(worked);
  });

  /**
   * Source: the law of absorption currents, I(t) = K · t^−n (textbooks on dielectrics; recalled). Without leakage the
   * index is 10^n and the absorption ratio 2^n; with a leakage current it is less.
   */
  it.each([0.3, 0.5, 0.8, 1])('an absorption current with n = %d has an index of 10^n and a ratio of 2^n', (n) => {
    const at = (seconds: number) => 200 * (seconds / 30) ** n;
    const { index, ratio } = ratios({ 30: at(30), 60: at(60), 600: at(600) });
    expect(index?.lo).toBeCloseTo(10 ** n, 4);
    expect(ratio?.lo).toBeCloseTo(2 ** n, 4);
    const leaking = (seconds: number) => 1 / (1 / at(seconds) + 1 / 300);
    expect(ratios({ 60: leaking(60), 600: leaking(600) }).index?.hi).toBeLessThan(10 ** n);
  });
});

/** Source: trade handbooks, whose limits range from 1.0 to 1.6; no standard has one. Read. */
describe('the dielectric absorption ratio', () => {
  it('has a range of published limits and none of its own', () => {
    expect(limitRange('absorption-ratio-span')).toEqual({ from: 1, to: 1.6 });
    expect(limitLabels['absorption-ratio-span'].status).toBe('textbook');
  });

  it.each([
    [100, 97],
    [100, 105],
    [100, 125],
    [100, 190],
  ])('%d MΩ after 30 s and %d MΩ after 60 s: stated, and nothing is decided by it', (half, whole) => {
    const stated = ratios({ 30: half, 60: whole }).findings.filter(({ code }) => code === 'ratio-stated');
    expect(stated.map(({ severity }) => severity)).toEqual(['note']);
  });
});
