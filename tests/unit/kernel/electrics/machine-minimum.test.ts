import { describe, expect, it } from 'vitest';
import { limitOfClass, machineMinimum } from '../../../../src/kernel/electrics/machine-minimum.ts';
import { limitValue } from '../../../../src/kernel/limits.ts';

describe('the minimum of a machine class', () => {
  it('is the limit of the class, for any rated voltage', () => {
    for (const rated of [0, 400, 690, 3300]) {
      expect(machineMinimum('random-wound', rated)).toBe(limitValue('ieee43-minimum-random-wound'));
      expect(machineMinimum('form-wound', rated)).toBe(limitValue('ieee43-minimum-form-wound'));
    }
  });

  it('of an old winding grows by a megohm for each kilovolt', () => {
    expect(machineMinimum('pre-1970', 0)).toBe(1e6);
    expect(machineMinimum('pre-1970', 400)).toBe(1.4e6);
    expect(machineMinimum('pre-1970', 6000)).toBe(7e6);
  });

  it('names its limit', () => {
    expect(limitOfClass['random-wound']).toBe('ieee43-minimum-random-wound');
    expect(limitOfClass['form-wound']).toBe('ieee43-minimum-form-wound');
    expect(limitOfClass['pre-1970']).toBe('ieee43-minimum-pre-1970-base');
  });
});
