import { describe, expect, it } from 'vitest';
import { coreResistance, coreSections } from '../../src/kernel/electrics/core-resistance.ts';
import { limit } from '../../src/kernel/limits.ts';

/** Source: IEC 60228, plain copper, classes 5 and 6, Ω/km at 20 °C, read in two texts that reprint the tables. */
describe('resistance of flexible copper cores, IEC 60228', () => {
  it.each([
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
  ])('%d mm² has at most %d Ω/km', (section, perKilometre) => {
    expect(coreResistance(1000, section)).toBeCloseTo(perKilometre, 12);
    expect(coreResistance(20, section)).toBeCloseTo(perKilometre / 50, 12);
  });

  it('lists no others', () => {
    expect(coreSections).toEqual([0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35]);
    expect(limit('pe-core-resistance')).toMatchObject({ source: 'iec-60228', unit: 'Ω/km', inputUnit: 'mm²' });
    expect(coreResistance(20, 2.08)).toBeUndefined();
  });

  /**
   * The law itself: R = ρ·L/A with 17.241 nΩ·m of annealed copper (100 % IACS). Stranding, the tolerance of the area and
   * the drawing of thin wires make the permitted maximum 10 to 20 percent higher.
   */
  it.each(coreSections)('%d mm² exceeds the law of annealed copper by 10 to 20 percent', (section) => {
    const law = (17.241e-9 * 1000) / (section * 1e-6);
    const ratio = (coreResistance(1000, section) ?? 0) / law;
    expect(ratio).toBeGreaterThan(1.1);
    expect(ratio).toBeLessThan(1.2);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a length of %d m has no resistance', (metres) => {
    expect(coreResistance(metres, 1.5)).toBeUndefined();
  });
});

/** Source: IEC 60204-1, 18.2.2, read in a text that quotes it. */
it('the test current of the machine standard is 0.2 to 10 A', () => {
  expect(limit('pe-test-current')).toMatchObject({ range: { from: 0.2, to: 10 }, source: 'iec-60204-1' });
});
