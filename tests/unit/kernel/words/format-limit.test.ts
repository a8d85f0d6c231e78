import { describe, expect, it } from 'vitest';
import { limit, limitIds } from '../../../../src/kernel/limits.ts';
import { formatColumn, formatFigure, formatLimit } from '../../../../src/kernel/words/format-limit.ts';

/** The tests read better with plain spaces than with no-break ones. */
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('formatLimit', () => {
  it.each([
    [{ value: 100e6, unit: 'Ω' }, '100 MΩ'],
    [{ value: 1000, unit: 'Ω' }, '1 kΩ'],
    [{ value: 50, unit: 'V' }, '50 V'],
    [{ value: 0.1, unit: 'V' }, '100 mV'],
    [{ value: 10, unit: '%' }, '10 %'],
    [{ value: 60e-6, unit: 'C' }, '60 µC'],
    [{ value: 0.001, unit: 'A' }, '1 mA'],
    [{ value: 5, unit: 's' }, '5 s'],
    [{ value: 1, unit: 'min' }, '1 min'],
    [{ value: 4, unit: '×' }, '4 times'],
  ])('a single figure %o is %s', (figure, text) => {
    expect(spaced(formatLimit(figure))).toBe(text);
  });

  it.each([
    [{ range: { from: 100e3 }, unit: 'Ω' }, '100 kΩ up to open'],
    [{ range: { from: 100 }, unit: 'V' }, '100 V or more'],
    [{ range: { to: 2500 }, unit: 'V' }, 'up to 2.5 kV'],
    [{ range: { from: 10e3, to: 100e3 }, unit: 'Ω' }, '10 to 100 kΩ'],
    [{ range: { from: 100e3, to: 2e6 }, unit: 'Ω' }, '100 kΩ to 2 MΩ'],
    [{ range: { from: 500, to: 1000 }, unit: 'V' }, '500 V to 1 kV'],
    [{ range: { from: 500, to: 500 }, unit: 'V' }, '500 V'],
    [{ range: { from: -20, to: 60 }, unit: '°C' }, '−20 to 60 °C'],
    [{ range: { from: 0, to: 20e3 }, unit: 'V' }, '0 to 20 kV'],
    [{ range: { from: 0, to: 1000 }, unit: '×' }, '0 to 1000 times'],
  ])('a range %o is %s', (figure, text) => {
    expect(spaced(formatLimit(figure))).toBe(text);
  });

  it('says how many points a published table has and what they span', () => {
    const points: [number, number][] = [
      [-5, 0.4],
      [20, 1],
      [70, 10],
    ];
    expect(spaced(formatLimit({ points, unit: '×', inputUnit: '°C' }))).toBe('3 points, −5 to 70 °C');
  });

  it('names the constants of a formula', () => {
    expect(spaced(formatLimit({ constants: { a: 17.625, b: -243.04 }, unit: '°C' }))).toBe('a = 17.625, b = −243.04');
  });

  it('says in which range a formula of temperature is valid', () => {
    expect(spaced(formatLimit({ constants: { k: 4230, from: 40, to: 85 }, unit: '×' }))).toBe(
      'k = 4230, from 40 to 85 °C',
    );
    expect(spaced(formatLimit({ constants: { k: 2, from: -10, to: -5 }, unit: '×' }))).toBe('k = 2, from −10 to −5 °C');
  });

  it('gives the factors of one column equally many decimals', () => {
    expect(formatColumn([0.4, 2.05, 10], '×')).toEqual(['0.40', '2.05', '10.00']);
    expect(formatColumn([1e6, 2.5e6], 'Ω').map(spaced)).toEqual(['1 MΩ', '2.5 MΩ']);
  });

  it('keeps a number and its unit on one line', () => {
    expect(formatFigure(450e3, 'Ω')).toBe('450\u00a0kΩ');
  });

  it.each(limitIds)('prints limit %s without a gap', (id) => {
    const text = formatLimit(limit(id));
    expect(text).toMatch(/\d/);
    expect(text).not.toMatch(/undefined|NaN|Infinity|-/);
  });
});
