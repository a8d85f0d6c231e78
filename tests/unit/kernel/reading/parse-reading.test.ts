import { describe, expect, it } from 'vitest';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../../../src/kernel/reading/quantity.ts';
import { failure, read } from '../../../support/read-or-fail.ts';

describe('a value in ohms, with the step of its last digit', () => {
  const rows: [typed: string, ohms: number, step: number][] = [
    ['450k', 450e3, 1e3],
    ['450 k', 450e3, 1e3],
    ['450 kΩ', 450e3, 1e3],
    ['450kohm', 450e3, 1e3],
    ['450 K', 450e3, 1e3],
    ['450 kilohm', 450e3, 1e3],
    ['2,2 MΩ', 2.2e6, 1e5],
    ['2.2 MΩ', 2.2e6, 1e5],
    ['2M2', 2.2e6, 1e5],
    ['2M20', 2.2e6, 1e4],
    ['4k7', 4700, 100],
    ['4K7', 4700, 100],
    ['4R7', 4.7, 0.1],
    ['0R47', 0.47, 0.01],
    ['1Ω5', 1.5, 0.1],
    ['2G2Ω', 2.2e9, 1e8],
    ['2M2 ohm', 2.2e6, 1e5],
    ['0.45 Mohm', 450e3, 1e4],
    ['0,45M', 450e3, 1e4],
    ['.45M', 450e3, 1e4],
    ['450 meg', 450e6, 1e6],
    ['450 megohm', 450e6, 1e6],
    ['2 GΩ', 2e9, 1e9],
    ['2.00 GΩ', 2e9, 1e7],
    ['1 TΩ', 1e12, 1e12],
    ['0.3 Ω', 0.3, 0.1],
    ['0,3 ohm', 0.3, 0.1],
    ['0.3 R', 0.3, 0.1],
    ['300 mΩ', 0.3, 1e-3],
    ['300 milliohm', 0.3, 1e-3],
    ['50 µΩ', 50e-6, 1e-6],
    ['50 μΩ', 50e-6, 1e-6],
    ['450 k\u2126', 450e3, 1e3],
    ['450\u00a0kΩ', 450e3, 1e3],
    ['  450   kΩ  ', 450e3, 1e3],
    ['\t450 kΩ\n', 450e3, 1e3],
    ['+450k', 450e3, 1e3],
    ['450e3 Ω', 450e3, 1e3],
    ['4.5e5 Ω', 450e3, 1e4],
    ['4.5E5Ω', 450e3, 1e4],
    ['1e-3 kΩ', 1, 1],
    ['1.000 MΩ', 1e6, 1e3],
    ['1,000,000 Ω', 1e6, 1],
    ['1 000 kΩ', 1e6, 1e3],
    ["1'000 kΩ", 1e6, 1e3],
    ['1’000 kΩ', 1e6, 1e3],
    ['1.234,5 kΩ', 1234.5e3, 100],
    ['0,100 MΩ', 100e3, 1e3],
    ['0 Ω', 0, 1],
    ['0.00 MΩ', 0, 1e4],
    ['1e15 Ω', 1e15, 1e15],
    ['1000 TΩ', 1e15, 1e12],
  ];
  it.each(rows)('“%s” is %d Ω', (text, value, resolution) => {
    expect(read(text)).toEqual({ kind: 'value', value, unit: 'Ω', resolution });
  });

  it('is the same number however its prefix is written', () => {
    for (const text of ['2200k', '2.2M', '2200000 Ω', '0.0022G', '2M2', '2,2 MΩ', '2.2e6 Ω', '2200e3Ω']) {
      expect(read(text)).toMatchObject({ value: 2_200_000 });
    }
  });

  it('needs no unit for zero alone: it is the same in all of them', () => {
    expect(read('0')).toEqual({ kind: 'value', value: 0, unit: 'Ω' });
    expect(read('0.0')).toEqual({ kind: 'value', value: 0, unit: 'Ω' });
    expect(read('0,00')).toEqual({ kind: 'value', value: 0, unit: 'Ω' });
  });
});

describe('over-range and under-range', () => {
  const words = ['OL', 'ol', 'Ol', '0L', 'O.L', 'O.L.', '0.L', '.OL', 'OL MΩ', 'OL k', 'OLΩ', '∞', 'inf', 'infinity'];
  const displays = [
    'OFL',
    'ofl',
    'OFLO',
    'OVLD',
    'OVL',
    'O L',
    '0 L',
    '1.OL',
    '1.0L',
    '0.OL',
    'overflow',
    'OL.',
    'inf.',
  ];
  const people = ['open', 'OPEN', 'Open.', 'open circuit', 'open line', 'ОL', 'ＯＬ', 'OFL MΩ', 'OVLD kΩ'];
  it.each([
    ...words,
    ...displays,
    ...people,
    'overload',
    'over load',
    'over range',
    'over-range',
    'overrange',
    'OVER RANGE',
  ])('“%s”', (text) => {
    expect(read(text)).toEqual({ kind: 'over', unit: 'Ω' });
  });

  it.each([
    ['>430M', 430e6],
    ['> 700 MΩ', 700e6],
    ['>1.8 GΩ', 1.8e9],
    ['> 1.8 GΩ', 1.8e9],
    ['>=3G', 3e9],
    ['≥ 3 GΩ', 3e9],
    ['over 700M', 700e6],
    ['above 1 G', 1e9],
    ['>2G2', 2.2e9],
    ['>720k', 720e3],
    ['>0,5 GΩ', 5e8],
    ['>0', 0],
  ])('“%s” is at least %d Ω', (text, atLeast) => {
    expect(read(text)).toEqual({ kind: 'over', unit: 'Ω', atLeast });
  });

  it.each([
    ['<1k', 1e3],
    ['< 0.5 Ω', 0.5],
    ['<=1M', 1e6],
    ['≤ 1M', 1e6],
    ['under 1 k', 1e3],
    ['below 50k', 50e3],
  ])('“%s” is at most %d Ω', (text, atMost) => {
    expect(read(text)).toEqual({ kind: 'under', unit: 'Ω', atMost });
  });

  it.each(['under range', 'under-range', 'UNDERRANGE'])('“%s” has no figure', (text) => {
    expect(read(text)).toEqual({ kind: 'under', unit: 'Ω' });
  });

  it('exists for a voltage too', () => {
    expect(read('OL', 'voltage')).toEqual({ kind: 'over', unit: 'V' });
    expect(read('>600 V', 'voltage')).toEqual({ kind: 'over', unit: 'V', atLeast: 600 });
    expect(read('<0.1', 'voltage')).toEqual({ kind: 'under', unit: 'V', atMost: 0.1 });
  });
});

describe('a missing reading', () => {
  it.each(['', ' ', '\t\n', '-', '–', '—', '---', '\u00a0', '--', '----', '- -', '\u2212', '\u2212\u2212', '‐', '_'])(
    '“%s”',
    (text) => {
      expect(read(text)).toEqual({ kind: 'missing' });
      expect(read(text, 'voltage')).toEqual({ kind: 'missing' });
    },
  );
});

describe('the other quantities', () => {
  const rows: [Quantity, string, number, number, string][] = [
    ['voltage', '0.02', 0.02, 0.01, 'V'],
    ['voltage', '0,02 V', 0.02, 0.01, 'V'],
    ['voltage', '20 mV', 0.02, 1e-3, 'V'],
    ['voltage', '500', 500, 1, 'V'],
    ['voltage', '500 V DC', 500, 1, 'V'],
    ['voltage', '1 kV', 1000, 1000, 'V'],
    ['voltage', '0.48 kV', 480, 10, 'V'],
    ['temperature', '25', 25, 1, '°C'],
    ['temperature', '25 °C', 25, 1, '°C'],
    ['temperature', '25.5C', 25.5, 0.1, '°C'],
    ['temperature', '-5', -5, 1, '°C'],
    ['temperature', '\u22125 °C', -5, 1, '°C'],
    ['temperature', '\u20135,5 °C', -5.5, 0.1, '°C'],
    ['temperature', '25°', 25, 1, '°C'],
    ['temperature', '-0', 0, 1, '°C'],
    ['percent', '10', 10, 1, '%'],
    ['percent', '1.5 %', 1.5, 0.1, '%'],
    ['percent', '55 % RH', 55, 1, '%'],
    ['counts', '3', 3, 1, 'counts'],
    ['counts', '3 digits', 3, 1, 'counts'],
    ['duration', '1', 1, 1, 'min'],
    ['duration', '10 min', 10, 1, 'min'],
  ];
  it.each(rows)('%s: “%s”', (quantity, text, value, resolution, unit) => {
    expect(read(text, quantity)).toEqual({ kind: 'value', value, unit, resolution });
  });

  it('converts Fahrenheit with its step', () => {
    const reading = read('77 °F', 'temperature');
    expect(reading).toMatchObject({ kind: 'value', value: 25, unit: '°C' });
    expect(reading.kind === 'value' && reading.resolution).toBeCloseTo(5 / 9, 12);
  });

  it('reads a bare number in the unit chosen in the form, and a written unit as written', () => {
    expect(read('77', 'temperature', '°F')).toMatchObject({ value: 25 });
    expect(read('77°', 'temperature', '°F')).toMatchObject({ value: 25 });
    expect(read('25 °C', 'temperature', '°F')).toMatchObject({ value: 25 });
    expect(read('60 s', 'duration')).toMatchObject({ value: 1 });
    expect(read('2 h', 'duration')).toMatchObject({ value: 120 });
  });
});

describe('what can’t be read without guessing', () => {
  const rows: [Quantity, string, string, string[]][] = [
    ['resistance', '450', 'unit-missing', ['450 Ω', '450 kΩ', '450 MΩ']],
    ['resistance', '0.45', 'unit-missing', ['0.45 Ω', '0.45 kΩ', '0.45 MΩ']],
    ['resistance', '>700', 'unit-missing', ['>700 Ω', '>700 kΩ', '>700 MΩ']],
    ['resistance', '5000000000', 'unit-missing', ['5000000000 Ω', '5000000000 kΩ']],
    ['resistance', '450m', 'milli-or-mega', ['450 mΩ', '450 MΩ']],
    ['resistance', '450 m Ω', 'milli-or-mega', ['450 mΩ', '450 MΩ']],
    ['resistance', '450 mohm', 'milli-or-mega', ['450 mΩ', '450 MΩ']],
    ['resistance', '2m2', 'milli-or-mega', ['2.2 mΩ', '2.2 MΩ']],
    ['resistance', '>700m', 'milli-or-mega', ['>700 mΩ', '>700 MΩ']],
    ['voltage', '20m', 'milli-or-mega', ['20 mV']],
    ['resistance', '1,000 k', 'ambiguous-comma', ['1000 k', '1.000 k']],
    ['resistance', '1,000e3 Ω', 'ambiguous-comma', ['1000e3 Ω', '1.000e3 Ω']],
    ['resistance', '<1,000 Ω', 'ambiguous-comma', ['<1000 Ω', '<01.000 Ω']],
    ['voltage', '1,000', 'ambiguous-comma', ['1000', '01.000']],
    ['temperature', '-1,000', 'ambiguous-comma', ['-1.000']],
    ['percent', '1,000', 'ambiguous-comma', ['1.000']],
    ['resistance', '450 V', 'other-quantity', []],
    ['resistance', '25 °C', 'other-quantity', []],
    ['resistance', '10 %', 'other-quantity', []],
    ['voltage', '450 kΩ', 'other-quantity', []],
    ['voltage', '450 M', 'other-quantity', []],
    ['temperature', '500 V', 'other-quantity', []],
    ['resistance', '450 kV', 'other-quantity', []],
    ['resistance', '450 parsec', 'unit-unknown', []],
    ['resistance', '450 MM', 'unit-unknown', []],
    ['resistance', '5 U', 'unit-unknown', []],
    ['resistance', '450 k 5', 'unit-unknown', []],
    ['resistance', '-450k', 'negative', []],
    ['resistance', '\u2212450k', 'negative', []],
    ['voltage', '-0.02', 'negative', []],
    ['percent', '-5', 'negative', []],
    ['resistance', '2000 TΩ', 'out-of-range', []],
    ['resistance', '1e99 Ω', 'out-of-range', []],
    ['voltage', '450k', 'out-of-range', []],
    ['temperature', '700', 'out-of-range', []],
    ['temperature', '-100', 'out-of-range', []],
    ['percent', '110', 'out-of-range', []],
    ['duration', '25 h', 'out-of-range', []],
    ['temperature', 'OL', 'no-over-range', []],
    ['temperature', '>40', 'no-over-range', []],
    ['percent', 'under range', 'no-over-range', []],
    ['resistance', 'abc', 'not-a-reading', []],
    ['resistance', 'k', 'not-a-reading', []],
    ['resistance', 'Ω', 'not-a-reading', []],
    ['resistance', '>', 'not-a-reading', []],
    ['resistance', '>OL', 'not-a-reading', []],
    ['resistance', '>>5k', 'not-a-reading', []],
    ['resistance', 'NaN', 'not-a-reading', []],
    ['voltage', 'open', 'not-a-reading', []],
    ['temperature', 'OFL', 'no-over-range', []],
    ['resistance', '10²k', 'unit-unknown', []],
    ['resistance', '450 M M.', 'unit-unknown', []],
    ['resistance', 'undefined', 'not-a-reading', []],
    ['resistance', '.', 'not-a-reading', []],
    ['resistance', '٤٥٠', 'not-a-reading', []],
    ['resistance', '<script>alert(1)</script>', 'not-a-reading', []],
    ['resistance', '0,500.5 k', 'not-a-number', []],
    ['resistance', '1.2.3k', 'not-a-number', []],
    ['resistance', '1..2k', 'not-a-number', []],
    ['resistance', '4 5 k', 'not-a-number', []],
    ['resistance', '1,2,3 k', 'not-a-number', []],
    ['resistance', `${'9'.repeat(41)} Ω`, 'too-long', []],
  ];
  it.each(rows)('%s “%s”: %s', (quantity, text, code, suggestions) => {
    const error = failure(text, quantity);
    expect(error.code).toBe(code);
    expect(error.suggestions).toEqual(suggestions);
  });

  it('offers the unit together with the meaning of the comma if both are open', () => {
    const { code, suggestions } = failure('1,000');
    expect(code).toBe('ambiguous-comma');
    expect(suggestions).toEqual(['1000 Ω', '1000 kΩ', '1000 MΩ', '01.000 Ω', '1.000 kΩ', '1.000 MΩ']);
  });
});

describe('a paste into the wrong place', () => {
  it.each([
    ['digits', '9'.repeat(10_000)],
    ['letters', 'x'.repeat(10_000)],
    ['readings', '450k '.repeat(2000)],
    ['spaces inside', `5${' '.repeat(10_000)}kV and the rest`],
    ['a reading with a tail', `5 V${' '.repeat(9_990)}or not`],
    ['commas', ','.repeat(10_000)],
    ['signs', '>'.repeat(10_000)],
    ['emoji', '😀'.repeat(5000)],
  ])('10,000 characters of %s are refused, none of them is read', (_, text) => {
    const result = parseReading(text, 'voltage');
    expect(result.ok).toBe(false);
  });

  it('is described by its length, not shown completely', () => {
    const { code, message } = failure('x'.repeat(10_000));
    expect(code).toBe('too-long');
    expect(message).toContain('10000');
    expect(message.length).toBeLessThan(200);
  });

  it('of only blanks is an empty field', () => {
    expect(read(' '.repeat(10_000))).toEqual({ kind: 'missing' });
    expect(read(`${' '.repeat(10_000)}450k`)).toMatchObject({ value: 450e3 });
  });
});
