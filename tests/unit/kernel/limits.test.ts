import { describe, expect, it } from 'vitest';
import { limitLabels } from '../../../src/kernel/limit-labels.ts';
import { limit, limitConstant, limitIds, limitPoints, limitRange, limitValue } from '../../../src/kernel/limits.ts';

describe('the limits as the calculations read them', () => {
  it('have the figures of the trade and the standards in base units', () => {
    expect(limitValue('bridge-tolerance')).toBe(10);
    expect(limitValue('bridge-short')).toBe(1000);
    expect(limitValue('after-trip-point')).toBe(100e6);
    expect(limitValue('ieee43-minimum-random-wound')).toBe(5e6);
    expect(limitValue('pe-dead-short')).toBe(1);
    expect(limitValue('touch-voltage')).toBe(50);
    expect(limitValue('discharge-after-test')).toBe(4);
  });

  it('leave an open end of a range unbounded', () => {
    expect(limitRange('bridge-dc-plus-typical')).toEqual({ from: 10e3, to: Number.POSITIVE_INFINITY });
  });

  it('give a published table as pairs in rising order', () => {
    const points = limitPoints('solid-insulation-to-20');
    expect(points[0]).toEqual([0, 0.4]);
    expect(points.at(-1)).toEqual([70, 10]);
    const inputs = points.map(([input]) => input);
    expect(inputs).toEqual([...inputs].sort((a, b) => a - b));
  });

  it('give the constants of a formula by name', () => {
    expect(limitConstant('magnus', 'a')).toBe(17.625);
    expect(limitConstant('thermosetting-hot', 'k')).toBe(4230);
  });

  it('throw at a mistake in code, naming the limit', () => {
    expect(() => limitValue('bridge-dc-plus-typical')).toThrow('bridge-dc-plus-typical');
    expect(() => limitRange('bridge-tolerance')).toThrow('bridge-tolerance');
    expect(() => limitPoints('bridge-tolerance')).toThrow('bridge-tolerance');
    expect(() => limitConstant('magnus', 'c')).toThrow('c');
    expect(() => limitConstant('bridge-tolerance', 'a')).toThrow('bridge-tolerance');
  });

  it('have unique ids', () => {
    expect(new Set(limitIds).size).toBe(limitIds.length);
  });

  it.each(limitIds)('%s has a label, a unit, a status, and a source or the statement that there is none', (id) => {
    const { label, status, source } = limitLabels[id];
    expect(label).not.toBe('');
    expect(limit(id).unit).not.toBe('');
    const unsourced = status === 'common-practice' || status === 'project-judgement';
    expect(source === null).toBe(unsourced);
  });
});
