import { describe, expect, it } from 'vitest';
import { judgePe } from '../../../../src/kernel/assessment/protective-conductor.ts';
import { typed } from '../../../support/typed.ts';

describe('a protective conductor', () => {
  it.each([
    ['0.1 Ω', 'short'],
    ['0,2 Ω', 'short'],
    ['1 Ω', 'short'],
    ['1.0 Ω', 'short'],
    ['300 mΩ', 'short'],
    ['0', 'short'],
    ['0.0 Ω', 'short'],
    ['0 Ω', 'short'],
    ['<1 Ω', 'short'],
    ['<0.5 Ω', 'short'],
  ])('“%s” is a dead short: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it.each([
    ['1.1 Ω', 'not-short'],
    ['5 Ω', 'not-short'],
    ['450k', 'not-short'],
    ['700M', 'not-short'],
    ['OL', 'not-short'],
    ['>1 Ω', 'not-short'],
    ['>700M', 'not-short'],
  ])('“%s” is no dead short: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it.each([
    ['0 kΩ', 'not-proven'],
    ['0 MΩ', 'not-proven'],
    ['0.00 MΩ', 'not-proven'],
    ['<1 MΩ', 'not-proven'],
    ['<2 Ω', 'not-proven'],
    ['under range', 'not-proven'],
    ['>0.5 Ω', 'not-proven'],
    ['>0', 'not-proven'],
  ])('“%s” proves neither: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it('is missing if nothing was read', () => {
    expect(judgePe(typed(''))).toBe('missing');
    expect(judgePe(typed('-'))).toBe('missing');
  });
});
