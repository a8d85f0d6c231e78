import { describe, expect, it } from 'vitest';
import { formatQuantity, formatReading, formatRounded } from '../../../../src/kernel/reading/format-reading.ts';
import { missing, ohms, overOhms, type Unit, underOhms } from '../../../../src/kernel/reading/reading.ts';

describe('a quantity with as many digits as it needs', () => {
  const rows: [number, Unit, string][] = [
    [0, 'Ω', '0 Ω'],
    [0.3, 'Ω', '0.3 Ω'],
    [0.1, 'Ω', '0.1 Ω'],
    [0.099, 'Ω', '99 mΩ'],
    [1, 'Ω', '1 Ω'],
    [4.7, 'Ω', '4.7 Ω'],
    [999, 'Ω', '999 Ω'],
    [1000, 'Ω', '1 kΩ'],
    [450e3, 'Ω', '450 kΩ'],
    [999_999, 'Ω', '999.999 kΩ'],
    [1e6, 'Ω', '1 MΩ'],
    [2.2e6, 'Ω', '2.2 MΩ'],
    [100e6, 'Ω', '100 MΩ'],
    [2e9, 'Ω', '2 GΩ'],
    [1e12, 'Ω', '1 TΩ'],
    [1e15, 'Ω', '1000 TΩ'],
    [50e-6, 'Ω', '50 µΩ'],
    [1e-8, 'Ω', '0.01 µΩ'],
    [0.1 + 0.2, 'V', '300.00000000000004 mV'],
    [0.02, 'V', '20 mV'],
    [50, 'V', '50 V'],
    [20_000, 'V', '20 kV'],
    [2_000_000, 'V', '2000 kV'],
    [25, '°C', '25 °C'],
    [-5.5, '°C', '-5.5 °C'],
    [0.5, '°C', '0.5 °C'],
    [1200, '°C', '1200 °C'],
    [10, '%', '10 %'],
    [0.5, '%', '0.5 %'],
    [3, 'counts', '3 counts'],
    [90, 'min', '90 min'],
  ];
  it.each(rows)('%d %s is “%s”', (value, unit, text) => {
    expect(formatQuantity(value, unit)).toBe(text);
  });

  it('names an unbounded quantity', () => {
    expect(formatQuantity(Number.POSITIVE_INFINITY, 'Ω')).toBe('∞');
    expect(formatQuantity(Number.NEGATIVE_INFINITY, '°C')).toBe('−∞');
  });
});

describe('a quantity with the digits that were read', () => {
  const rows: [number, Unit, number, string][] = [
    [450e3, 'Ω', 1e3, '450 kΩ'],
    [450e3, 'Ω', 100, '450.0 kΩ'],
    [450e3, 'Ω', 1e4, '0.45 MΩ'],
    [450e3, 'Ω', 1e5, '0.5 MΩ'],
    [2.2e6, 'Ω', 1e5, '2.2 MΩ'],
    [2e6, 'Ω', 1e4, '2.00 MΩ'],
    [1e6, 'Ω', 1e3, '1.000 MΩ'],
    [0, 'Ω', 1, '0 Ω'],
    [0, 'Ω', 1e4, '0.00 MΩ'],
    [0, 'Ω', 0.1, '0.0 Ω'],
    [0.3, 'Ω', 0.1, '0.3 Ω'],
    [0.3, 'Ω', 1e-3, '0.300 Ω'],
    [0.03, 'Ω', 1e-3, '30 mΩ'],
    [1e9, 'Ω', 1e9, '1 GΩ'],
    [0.02, 'V', 0.01, '0.02 V'],
    [0.02, 'V', 1e-3, '20 mV'],
    [500, 'V', 1, '500 V'],
    [480, 'V', 10, '0.48 kV'],
    [25, '°C', 1, '25 °C'],
    [25, '°C', 0.1, '25.0 °C'],
    [-0.5, '°C', 0.1, '-0.5 °C'],
    [10, '%', 0.5, '10.0 %'],
  ];
  it.each(rows)('%d %s in steps of %d is “%s”', (value, unit, resolution, text) => {
    expect(formatQuantity(value, unit, resolution)).toBe(text);
  });
});

describe('a quantity for a sentence', () => {
  it.each([
    [123_456, 'Ω', '123 kΩ'],
    [999_600, 'Ω', '1 MΩ'],
    [2.19999e6, 'Ω', '2.2 MΩ'],
    [13.8567, '°C', '13.9 °C'],
    [0.012345, 'V', '12.3 mV'],
    [100e6, 'Ω', '100 MΩ'],
  ] as const)('%d %s is “%s”', (value, unit, text) => {
    expect(formatRounded(value, unit)).toBe(text);
  });
});

describe('a reading', () => {
  it('is noted as a person would', () => {
    expect(formatReading(ohms(450e3, 1e3))).toBe('450 kΩ');
    expect(formatReading(overOhms(700e6))).toBe('>700 MΩ');
    expect(formatReading(overOhms())).toBe('OL');
    expect(formatReading(underOhms(1e3))).toBe('<1 kΩ');
    expect(formatReading(underOhms())).toBe('under range');
    expect(formatReading(missing)).toBe('');
  });

  it('of zero keeps the display’s prefix, since zero megohms proves less than zero ohms', () => {
    expect(formatReading(ohms(0, 1e6))).toBe('0 MΩ');
    expect(formatReading(ohms(0, 0.1))).toBe('0.0 Ω');
  });
});

it('no figure is rounded up to infinity', () => {
  expect(formatRounded(Number.MAX_VALUE, 'V')).toMatch(/^\d+ kV$/);
});
