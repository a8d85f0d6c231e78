import { describe, expect, it } from 'vitest';
import { assess, minus, plus, worst } from './stage.ts';

describe('a leak convicts the drive only if both readings are leaks beside two that agree', () => {
  // 30 kΩ is the most that counts as the leak of a switch.
  const barely = { ...plus('450k | 455k | 29.5k'), ...worst('31k') };

  it('29.5 kΩ and then 31 kΩ agree, but only one of them is a leak', () => {
    expect(assess(barely).drive).toBe('suspect');
    expect(assess({ ...plus('450k | 455k | 29.5k'), ...worst('29.8k') }).drive).toBe('convicted');
  });

  it('unless a sound sister reads otherwise', () => {
    expect(assess({ ...barely, sister: 'not-compared' }).drive).toBe('suspect');
    expect(assess({ ...barely, sister: 'differs' }).drive).toBe('convicted');
  });

  it('one other reading of the rail is too few', () => {
    expect(assess({ ...minus('45k | 9k | '), ...worst('9.1k') }).drive).not.toBe('convicted');
    expect(assess({ ...minus('45k | 9k | 46k'), ...worst('9.1k') }).drive).toBe('convicted');
  });

  it('nor do two that differ from one another', () => {
    expect(assess({ ...minus('45k | 9k | 90k'), ...worst('9.1k') }).drive).not.toBe('convicted');
  });
});
