import { describe, expect, it } from 'vitest';
import { formatSeconds } from '../../../../src/kernel/reading/format-reading.ts';

describe('formatSeconds rounds a wait up, never down', () => {
  it.each([
    [0, '0 s'],
    [0.04, '0.1 s'],
    [4.2, '4.2 s'],
    [99.91, '100 s'],
    [100, '1 min 40 s'],
    [151.2, '2 min 32 s'],
    [3599.5, '1 h 0 min'],
    [12_001, '3 h 21 min'],
    [Number.POSITIVE_INFINITY, 'no end'],
  ])('%d', (seconds, text) => {
    expect(formatSeconds(seconds)).toBe(text);
  });
});
