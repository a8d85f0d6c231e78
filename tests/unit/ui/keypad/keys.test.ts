import { describe, expect, it, test } from 'vitest';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { type Quantity, quantityRules } from '../../../../src/kernel/reading/quantity.ts';
import { markOf } from '../../../../src/ui/keypad/decimal-mark.ts';
import { keypadLayout } from '../../../../src/ui/keypad/keys.ts';
import { typeKey } from '../../../../src/ui/keypad/type-key.ts';

const capsOf = (quantity: Quantity, units = quantityRules[quantity].units) => {
  const layout = keypadLayout(quantity, units, '.');
  const caps = (keys: typeof layout.digits) => keys.map((one) => one?.cap ?? '').join(' ');
  return { units: caps(layout.units), digits: caps(layout.digits), signs: caps(layout.signs).trim() };
};

describe('only what a quantity knows has a key', () => {
  it.each([
    ['resistance', 'Ω kΩ MΩ', '. 0 ', 'OL > <'],
    ['voltage', 'mV V kV', '. 0 ', 'OL > <'],
    ['diode', 'V mV', '. 0 −', 'OL > <'],
    ['temperature', '°C °F', '. 0 −', ''],
    ['percent', '', '. 0 ', ''],
    ['counts', '', ' 0 ', ''],
    ['duration', 's min', '. 0 ', ''],
    ['seconds', 's min h', '. 0 ', ''],
    ['capacitance', 'µF mF', '. 0 ', ''],
    ['length', 'm ft', '. 0 ', ''],
    ['diameter', 'mm in', '. 0 ', ''],
    ['power', 'W kW', '. 0 ', ''],
  ] as const)('%s', (quantity, units, last, signs) => {
    expect(capsOf(quantity)).toEqual({ units, digits: `1 2 3 4 5 6 7 8 9 ${last}`, signs });
  });
});

test('a figure with any unit key reads, in the unit on the key', () => {
  const all: readonly (readonly [Quantity, readonly string[]])[] = [
    ...(Object.keys(quantityRules) as Quantity[]).map((quantity) => [quantity, quantityRules[quantity].units] as const),
    ['resistance', ['mΩ', 'Ω', 'kΩ', 'MΩ', 'GΩ', 'TΩ']],
  ];
  for (const [quantity, units] of all) {
    for (const { cap, key } of keypadLayout(quantity, units, '.').units) {
      const { text } = typeKey({ text: '5', start: 1, end: 1 }, key);
      const [read, asTyped] = [parseReading(text, quantity), parseReading(`5 ${cap}`, quantity)];
      expect(read.ok, `${quantity}: ${text}`).toBe(true);
      expect(read).toEqual(asTyped);
    }
  }
});

test('every key has a name that begins with what stands on it', () => {
  for (const quantity of Object.keys(quantityRules) as Quantity[]) {
    const { units, digits, signs } = keypadLayout(quantity, quantityRules[quantity].units, ',');
    for (const one of [...units, ...digits, ...signs])
      if (one !== undefined) expect((one.name ?? one.cap).startsWith(one.cap)).toBe(true);
    for (const unit of units) expect(unit.name, unit.cap).toBeDefined();
  }
});

test.each([
  [[], '.'],
  [['450k', ''], '.'],
  [['0.4', '0,5'], ','],
  [['1,234.5'], '.'],
  [['2,2 MΩ'], ','],
])('the decimal mark of whoever typed %j is %s', (texts, mark) => {
  expect(markOf(texts)).toBe(mark);
});
