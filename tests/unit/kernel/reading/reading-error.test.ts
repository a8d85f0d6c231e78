import { describe, expect, it } from 'vitest';
import { type Quantity, quantityRules } from '../../../../src/kernel/reading/quantity.ts';
import { type ReadingErrorCode, readingError } from '../../../../src/kernel/reading/reading-error.ts';

const codes: ReadingErrorCode[] = [
  'too-long',
  'not-a-reading',
  'not-a-number',
  'ambiguous-comma',
  'milli-or-mega',
  'unit-missing',
  'unit-unknown',
  'other-quantity',
  'negative',
  'out-of-range',
  'no-over-range',
];
const quantities = Object.keys(quantityRules) as Quantity[];
const detail = { typed: '45x', accepted: '0 Ω to 1000 TΩ', length: 3 };

describe('the sentence about an unreadable entry', () => {
  for (const quantity of quantities) {
    it.each(codes)(`${quantity}, %s: says what is wrong, in sentences`, (code) => {
      const { message } = readingError(code, quantity, detail);
      expect(message).toMatch(/[.]$/);
      expect(message).not.toMatch(/undefined|NaN| {2}/);
    });
  }

  it.each(codes.filter((code) => code !== 'too-long'))('%s shows what was typed', (code) => {
    expect(readingError(code, 'resistance', detail).message).toContain('45x');
  });

  it.each(['too-long', 'not-a-reading', 'not-a-number', 'unit-unknown', 'other-quantity', 'no-over-range'] as const)(
    '%s gives an example',
    (code) => {
      expect(readingError(code, 'resistance', detail).message).toContain('450k');
    },
  );

  it('names both quantities if the unit belongs to another', () => {
    const { message } = readingError('other-quantity', 'resistance', { typed: '450 V', other: 'voltage' });
    expect(message).toContain('“450 V” is a voltage, and this field takes a resistance.');
  });

  it('states the range that the field accepts', () => {
    expect(readingError('out-of-range', 'resistance', detail).message).toContain('0 Ω to 1000 TΩ');
  });

  it('carries its code and its suggestions', () => {
    const error = readingError('unit-missing', 'resistance', detail, ['45 Ω']);
    expect(error).toMatchObject({ code: 'unit-missing', suggestions: ['45 Ω'] });
    expect(readingError('negative', 'voltage', detail).suggestions).toEqual([]);
  });
});
