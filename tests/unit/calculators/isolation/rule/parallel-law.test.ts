import { describe, expect, it } from 'vitest';
import { ohms, overOhms } from '../../../../../src/kernel/reading/reading.ts';
import {
  assess,
  badJoined,
  type Change,
  cable,
  celsius,
  codes,
  goodCable,
  goodMotor,
  joined,
  motor,
} from './separated.ts';

describe('the parallel law', () => {
  const compared = (change: Change) => codes(change).filter((code) => /^(fit$|joined-(too|needs)|implied)/.test(code));

  it('compares both stages at the same temperature as read, inside the methods or not', () => {
    const alike = { ...badJoined, ...goodCable, ...goodMotor };
    expect(compared({ ...alike, windingTemperature: celsius('110') })).toContain('joined-too-low');
    const bound = {
      motorTemperature: { kind: 'over', unit: '°C', atLeast: 40 },
    } as const;
    expect(compared({ ...alike, ...bound })).toContain('joined-too-low');
  });

  it('finds that everything fits only if every reading is there', () => {
    expect(compared({ ...joined('2G | 2G | 2G'), ...goodCable, ...goodMotor })).toEqual(['fit']);
    expect(compared({ ...joined('2G | 2G | 2G'), ...cable('5G | 5G | ', '5G | 5G | 5G'), ...goodMotor })).toEqual([]);
    expect(compared({ ...joined('2G | 2G | 2G'), ...goodCable, ...motor('5G | 5G | ') })).toEqual([]);
  });

  it('implies a part only from a complete row of the other', () => {
    expect(compared({ ...badJoined, ...goodMotor })).toEqual(['implied-cable']);
    expect(compared({ ...badJoined, ...motor('5G | 5G | ') })).toEqual([]);
    expect(compared({ ...badJoined, ...goodCable })).toEqual(['implied-motor']);
    expect(compared({ ...badJoined, ...cable('5G | 5G | ', '5G | 5G | 5G') })).toEqual([]);
  });

  describe('allows the joined reading one step of the display', () => {
    const row = (value: number, resolution?: number) => {
      const one = ohms(value, resolution);
      return { U: one, V: one, W: one };
    };
    const over = { kind: 'over', unit: 'Ω', atLeast: 1e12 } as const;
    const parts = (value: number): Change => ({
      cable: { ...row(value), PE: over },
      bonded: row(value),
      motor: { U: over, V: over, W: over, PE: ohms(0.1) },
    });
    const read = (value: number, resolution?: number): Change => ({
      joined: { ...row(value, resolution), PE: ohms(0.2) },
    });

    it('above a short, and no more', () => {
      expect(compared({ ...read(1e4, 1e4), ...parts(0) })).not.toContain('joined-too-high');
      expect(compared({ ...read(2e4, 1e4), ...parts(0) })).toContain('joined-too-high');
      expect(compared({ ...read(1e4), ...parts(0) })).toContain('joined-too-high');
    });

    it('up to the minimum of the machine standard', () => {
      expect(compared({ ...read(0.7e6, 0.3e6), ...parts(0.34e6) })).not.toContain('joined-too-high');
      expect(compared({ ...read(0.71e6, 0.3e6), ...parts(0.34e6) })).toContain('joined-too-high');
    });

    it('not to a bound', () => {
      const bound = overOhms(1e4);
      const change = {
        joined: { U: bound, V: bound, W: bound, PE: ohms(0.2) },
        ...parts(0),
      };
      expect(compared(change)).toContain('joined-too-high');
    });
  });

  it('of parts that together reach exactly the after-trip point bars no go', () => {
    // With the 30 % of a tester, two of 153.8 MΩ in parallel are 100 MΩ at most.
    const at = (ohm: number) => {
      const one = ohms(ohm);
      const three = { U: one, V: one, W: one };
      const parts = {
        cable: { ...three, PE: overOhms(5e9) },
        bonded: three,
        motor: { ...three, PE: ohms(0.1) },
      };
      return assess({ ...joined('2G | 2G | 2G'), ...parts }).verdict;
    };
    expect([at(2e8 / 1.3), at(1.99e8 / 1.3)]).toEqual(['go', 'undecided']);
  });
});
