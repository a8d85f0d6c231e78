import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../../../src/kernel/reading/decimal.ts';

const number = (digits: string, decimals: number) => ({ kind: 'number', digits, decimals });
const ambiguous = (...meanings: string[]) => ({ kind: 'ambiguous', meanings, zeroLeads: false });
const zeroLeads = (...meanings: string[]) => ({ kind: 'ambiguous', meanings, zeroLeads: true });
const invalid = { kind: 'invalid' };

const tables: Record<string, [typed: string, meaning: object][]> = {
  'a plain numeral': [
    ['0', number('0', 0)],
    ['7', number('7', 0)],
    ['450', number('450', 0)],
    ['1000', number('1000', 0)],
    ['007', number('007', 0)],
  ],
  'a single point is the decimal mark, as on every display': [
    ['0.45', number('0.45', 2)],
    ['2.2', number('2.2', 1)],
    ['1.000', number('1.000', 3)],
    ['12.345', number('12.345', 3)],
    ['.5', number('.5', 1)],
    ['5.', number('5.', 0)],
  ],
  'a single comma is a decimal mark where it cannot part thousands': [
    ['0,45', number('0.45', 2)],
    ['2,2', number('2.2', 1)],
    ['1,0', number('1.0', 1)],
    ['1,00', number('1.00', 2)],
    ['1,0000', number('1.0000', 4)],
    ['1000,000', number('1000.000', 3)],
    [',5', number('.5', 1)],
    ['5,', number('5.', 0)],
  ],
  'a leading zero never leads thousands': [
    ['0,100', number('0.100', 3)],
    ['00,100', number('00.100', 3)],
  ],
  'a comma before three digits can be both': [
    ['1,000', ambiguous('1000', '1.000')],
    ['2,200', ambiguous('2200', '2.200')],
    ['12,345', ambiguous('12345', '12.345')],
    ['999,999', ambiguous('999999', '999.999')],
  ],
  'a zero before a group is a lost digit or a slipped mark': [
    ['0 500', zeroLeads('500', '0.500')],
    ["0'500", zeroLeads('500', '0.500')],
    ['0.500.000', zeroLeads('500000', '0.500000')],
    ['0,500,000', zeroLeads('500000', '0.500000')],
    ['07,152', zeroLeads('7152', '7.152')],
    ['007,152', zeroLeads('7152', '7.152')],
    ['07 152', zeroLeads('7152', '7.152')],
    ['0 000', zeroLeads('0', '0.000')],
  ],
  'two marks of one kind part thousands': [
    ['1,000,000', number('1000000', 0)],
    ['1.000.000', number('1000000', 0)],
    ['12.345.678', number('12345678', 0)],
  ],
  'two kinds of mark: the last is the decimal mark': [
    ['1,234.5', number('1234.5', 1)],
    ['1.234,5', number('1234.5', 1)],
    ['1,234,567.89', number('1234567.89', 2)],
    ['1.234.567,89', number('1234567.89', 2)],
  ],
  'spaces and apostrophes part thousands': [
    ['1 000', number('1000', 0)],
    ['1 000 000', number('1000000', 0)],
    ["12'345", number('12345', 0)],
    ['1 234,5', number('1234.5', 1)],
    ["1'234.50", number('1234.50', 2)],
  ],
  'what no rule covers is invalid': [
    ['', invalid],
    ['0,500.25', invalid],
    ['0 500,25', invalid],
    ['07.152,5', invalid],
    ['.', invalid],
    [',', invalid],
    [' ', invalid],
    ['1..2', invalid],
    ['1,,2', invalid],
    ['1.2.3', invalid],
    ['1,2,3', invalid],
    ['1.00.000', invalid],
    ['1,2.3,4', invalid],
    ['1.234,5.6', invalid],
    ['1234,567.8', invalid],
    ["1 000'000", invalid],
    ['1 2', invalid],
    ['12 34', invalid],
    ['1 000 00', invalid],
    ['1 000.', invalid],
    ['1 000.5 5', invalid],
    ["1 000'000.0.0", invalid],
    ['1e3', invalid],
    ['-1', invalid],
    ['abc', invalid],
    ['٣', invalid],
  ],
};

for (const [rule, rows] of Object.entries(tables)) {
  describe(rule, () => {
    it.each(rows)('“%s”', (text, meaning) => {
      expect(parseDecimal(text)).toEqual(meaning);
    });
  });
}
