import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../../../src/kernel/reading/quantity.ts';
import { failure, read } from '../../../support/read-or-fail.ts';

describe('a point before three digits', () => {
  it.each<[Quantity, string, number]>([
    ['resistance', '1.234 MΩ', 1.234e6],
    ['resistance', '0.450 MΩ', 450e3],
    ['resistance', '1.210 Ω', 1.21],
    ['resistance', '12.345 Ω', 12.345],
    ['resistance', '0.300 Ω', 0.3],
    ['resistance', '45.120 kΩ', 45120],
    ['resistance', '51.234 mΩ', 51.234e-3],
    ['resistance', '01.000 Ω', 1],
    ['resistance', '1R000', 1],
    ['resistance', '1.000.000 Ω', 1e6],
    ['voltage', '0.560 V', 0.56],
    ['voltage', '4.321 V', 4.321],
    ['voltage', '48.300 V', 48.3],
    ['voltage', '1.100 kV', 1100],
    ['voltage', '01.100 V', 1.1],
    ['voltage', '12.345 mV', 0.012345],
    ['diode', '0.512', 0.512],
    ['diode', '.512', 0.512],
    ['diode', '2.345', 2.345],
    ['temperature', '25.125', 25.125],
    ['length', '0.500 km', 500],
    ['diameter', '2.800', 2.8],
  ])('%s “%s” is a decimal mark: %d', (quantity, text, value) => {
    expect(read(text, quantity)).toMatchObject({ kind: 'value', value });
  });

  it.each<[Quantity, string, string[]]>([
    ['resistance', '1.000 Ω', ['1000 Ω', '01.000 Ω']],
    ['resistance', '<1.000 Ω', ['<1000 Ω', '<01.000 Ω']],
    ['resistance', '1.234 mΩ', ['1234 mΩ', '01.234 mΩ']],
    ['resistance', '450.000 Ω', ['450000 Ω', '0450.000 Ω']],
    ['resistance', '100.000 kΩ', ['100000 kΩ', '0100.000 kΩ']],
    ['voltage', '1.000 V', ['1000 V', '01.000 V']],
    ['voltage', '1.100', ['1100', '01.100']],
    ['voltage', '１．１００', ['1100', '01.100']],
    ['voltage', '1.234 mV', ['1234 mV', '01.234 mV']],
    ['diode', '1.234 mV', ['1234 mV', '01.234 mV']],
    ['capacitance', '1.500 µF', ['1500 µF', '01.500 µF']],
    ['seconds', '1.200 s', ['1200 s', '01.200 s']],
    ['length', '1.200 m', ['1200 m', '01.200 m']],
  ])('%s “%s” is asked about', (quantity, text, suggestions) => {
    const error = failure(text, quantity);
    expect(error.code).toBe('ambiguous-point');
    expect(error.suggestions).toEqual(suggestions);
  });

  it('keeps its step in the decimal meaning', () => {
    expect(read('01.234 V', 'voltage')).toEqual({ kind: 'value', value: 1.234, unit: 'V', resolution: 1e-3 });
  });
});

describe('a zero before a group of three digits', () => {
  it.each<[string, string[]]>([
    ['0 500 MΩ', ['500 MΩ', '0.500 MΩ']],
    ["0'500 MΩ", ['500 MΩ', '0.500 MΩ']],
    ['0 500M', ['500 M', '0.500 M']],
    ['07,152 M', ['7152 M', '7.152 M']],
    ['0.500.000 Ω', ['500000 Ω', '0.500000 Ω']],
    ['>0 500 MΩ', ['>500 MΩ', '>0.500 MΩ']],
    ['0 500', ['500 Ω', '500 kΩ', '500 MΩ', '0.500 Ω', '0.500 kΩ', '0.500 MΩ']],
  ])('“%s” is asked about', (text, suggestions) => {
    const error = failure(text);
    expect(error.code).toBe('zero-leads-groups');
    expect(error.suggestions).toEqual(suggestions);
  });

  it.each(['0.500 MΩ', '0,500 MΩ', '00.500 MΩ', '0500 kΩ'])('“%s” is not a group', (text) => {
    expect(read(text)).toMatchObject({ value: 500e3 });
  });
});

describe('a bare number of a diode test', () => {
  it.each([
    ['0.5', 0.5],
    ['0.41', 0.41],
    ['0,412', 0.412],
    ['-0.4', -0.4],
    ['0', 0],
    ['0.000', 0],
  ])('“%s” is in volts: who reads millivolts reads no decimals', (text, value) => {
    expect(read(text, 'diode')).toMatchObject({ kind: 'value', value, unit: 'V' });
  });

  it.each([
    ['2', ['2 V', '2 mV']],
    ['-12', ['-12 V', '-12 mV']],
    ['<2', ['<2 V', '<2 mV']],
    ['512', ['512 mV']],
    ['512.3', ['512.3 mV']],
    ['1,234', ['1234 mV', '1.234']],
  ])('“%s” is asked about', (text, suggestions) => {
    expect(failure(text, 'diode').suggestions).toEqual(suggestions);
  });
});

describe('a lone 1, which is over-range on some displays', () => {
  it.each<[Quantity, string[]]>([
    ['resistance', ['1 Ω', '1 kΩ', '1 MΩ', 'OL']],
    ['voltage', ['1 V', 'OL']],
    ['diode', ['1 V', '1 mV', 'OL']],
  ])('is asked about in a field of %s', (quantity, suggestions) => {
    expect(failure('1', quantity)).toMatchObject({ code: 'lone-one', suggestions });
    expect(failure('1.', quantity)).toMatchObject({ code: 'lone-one', suggestions });
  });

  it('is a number if the unit is known or nothing can be over-range', () => {
    expect(read('1', 'resistance', 'MΩ')).toMatchObject({ value: 1e6 });
    expect(read('1', 'temperature')).toMatchObject({ value: 1 });
    expect(read('1.0', 'voltage')).toMatchObject({ value: 1 });
  });
});
