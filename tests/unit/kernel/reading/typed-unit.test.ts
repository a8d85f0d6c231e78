import { expect, it } from 'vitest';
import type { Quantity } from '../../../../src/kernel/reading/quantity.ts';
import { typedUnit } from '../../../../src/kernel/reading/typed-unit.ts';

const rows: [string, Quantity, string | undefined][] = [
  ['450k', 'resistance', 'kΩ'],
  ['450 kΩ', 'resistance', 'kΩ'],
  ['2M2', 'resistance', 'MΩ'],
  ['2k2 ohm', 'resistance', 'kΩ'],
  ['>700M', 'resistance', 'MΩ'],
  ['over 2 gig', 'resistance', 'GΩ'],
  ['4.5e5 Ω', 'resistance', 'Ω'],
  ['842 milliohms', 'resistance', 'mΩ'],
  ['1 450 k', 'resistance', 'kΩ'],
  ['450', 'resistance', undefined],
  ['4.5e5', 'resistance', undefined],
  ['OL', 'resistance', undefined],
  ['450m', 'resistance', undefined],
  ['450x', 'resistance', undefined],
  ['', 'resistance', undefined],
  ['512 mV', 'diode', 'mV'],
  ['1 kV', 'voltage', 'kV'],
  ['1500 µF', 'capacitance', 'µF'],
  ['77 °F', 'temperature', undefined],
];
it.each(rows)('the unit in “%s”, a %s, is %s', (text, quantity, symbol) => {
  expect(typedUnit(text, quantity)).toBe(symbol);
});
