import { describe, expect, it } from 'vitest';
import { listed, percent } from '../../../../src/kernel/words/sentences.ts';

describe('a percentage in a sentence', () => {
  it.each([
    [0, '0 %'],
    [2.2222, '2.2 %'],
    [9.94, '9.9 %'],
    [10, '10 %'],
    [10.09, '10.1 %'],
    [51.67, '51.7 %'],
    [100, '100 %'],
    [899.7, '900 %'],
  ])('%d is “%s”', (value, text) => {
    expect(percent(value)).toBe(text);
  });
});

describe('a list in a sentence', () => {
  it.each([
    [[], ''],
    [['U'], 'U'],
    [['U', 'V'], 'U and V'],
    [['U', 'V', 'W'], 'U, V and W'],
  ])('%o is “%s”', (words, text) => {
    expect(listed(words)).toBe(text);
  });
});
