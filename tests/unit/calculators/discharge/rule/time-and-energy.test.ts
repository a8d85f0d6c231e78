import { describe, expect, it } from 'vitest';
import { judgeEnergy } from '../../../../../src/calculators/discharge/rule/energy.ts';
import {
  capacitanceOf,
  hull,
  statedTimeConstant,
} from '../../../../../src/calculators/discharge/rule/time-constant.ts';
import { missing, volts } from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change, farads, find, nothing, pair, percent, said, seconds, values } from './bus.ts';

const stated = (change: Change) => statedTimeConstant({ ...nothing, ...change }).timeConstant;

describe('the time constant', () => {
  it('of values is that of both parts with their tolerances', () => {
    const { lo = 0, hi = 0 } =
      stated({ ...values, capacitanceTolerance: percent(20), bleederTolerance: percent(5) }) ?? {};
    expect(lo).toBeCloseTo(49.5 * 0.8 * 0.95, 9);
    expect(hi).toBeCloseTo(49.5 * 1.2 * 1.05, 9);
  });

  it('that is stated itself has the same tolerances', () => {
    const { lo = 0, hi = 0 } = stated({ timeConstant: seconds(50) }) ?? {};
    expect(lo).toBeCloseTo(50 * 0.8 * 0.95, 9);
    expect(hi).toBeCloseTo(50 * 1.2 * 1.05, 9);
    const exact = stated({ timeConstant: seconds(50), capacitanceTolerance: percent(0), bleederTolerance: percent(0) });
    expect(exact).toEqual({ lo: 50, hi: 50 });
  });

  it('given in both ways spans both', () => {
    const both = stated({ ...values, timeConstant: seconds(60) });
    expect(both?.lo).toBeCloseTo(49.5, 9);
    expect(both?.hi).toBeCloseTo(60, 9);
    expect(
      hull([
        { lo: 3, hi: 4 },
        { lo: 1, hi: 2 },
      ]),
    ).toEqual({ lo: 1, hi: 4 });
  });

  it('needs both capacitance and bleeder', () => {
    expect(stated({ ...values, bleeder: missing })).toBeUndefined();
    expect(stated({ ...values, capacitance: missing })).toBeUndefined();
  });

  it.each(['capacitance', 'bleeder', 'timeConstant'] as const)('of a %s of zero is none', (field) => {
    const zero = {
      kind: 'value',
      value: 0,
      unit: field === 'bleeder' ? 'Ω' : field === 'capacitance' ? 'F' : 's',
    } as const;
    expect(stated({ ...values, [field]: zero })).toBeUndefined();
    expect(said({ ...values, [field]: zero })).toContain('value-impossible undecided');
  });

  it('has no capacitance where none was stated, or zero', () => {
    expect(capacitanceOf({ ...nothing, capacitance: farads(0) })).toBeUndefined();
    expect(capacitanceOf(nothing)).toBeUndefined();
    expect(capacitanceOf({ ...nothing, capacitance: farads(1e-3), capacitanceTolerance: percent(10) })).toEqual({
      lo: 0.9e-3,
      hi: 1.1e-3,
    });
  });
});

describe('a pair of readings', () => {
  it('that may be equal within a step of the display does not rise', () => {
    expect(said(pair(400, 402, 10))[1]).toMatch(/^no-fall-shown/);
    expect(said(pair(400, 403, 10))[1]).toMatch(/^voltage-rises/);
  });

  it('makes the start the higher of stated and read', () => {
    expect(assess({ ...values, ...pair(600, 400, 20) }).charged).toMatchObject({
      start: { lo: 599, hi: 601 },
      fromReading: true,
    });
    expect(assess({ ...values, ...pair(500, 400, 20) }).charged).toMatchObject({
      start: { lo: 564, hi: 566 },
      fromReading: false,
    });
    expect(assess({ ...values, ...pair(565, 400, 20) }).charged?.fromReading).toBe(false);
    expect(assess(values).charged?.fromReading).toBe(false);
  });
});

describe('the rows of waits', () => {
  const rows = (change: Change) => assess({ ...values, ...change }).waits.map(({ limit, within }) => [limit, within]);

  it('have the limits in their order, with the time that the standard gives', () => {
    expect(rows({})).toEqual([
      ['residual-voltage-60', 'residual-voltage-time'],
      ['capacitor-voltage-50', 'capacitor-time'],
      ['touch-voltage', undefined],
      ['residual-charge-exempt', undefined],
    ]);
    expect(assess(values).waits.map((wait) => 'within' in wait)).toEqual([true, true, false, false]);
  });

  it('of a capacitor above 1000 V have another time', () => {
    expect(rows({ startVoltage: volts(999, 1) })[1]).toEqual(['capacitor-voltage-50', 'capacitor-time']);
    expect(rows({ startVoltage: volts(1000, 1) })[1]).toEqual(['capacitor-voltage-50', 'capacitor-time-high']);
  });

  it('end at the voltage of 60 µC with the largest capacitance', () => {
    const last = assess({ ...values, capacitanceTolerance: percent(20) }).waits[3];
    expect(last?.volts).toBeCloseTo(60e-6 / 1.8e-3, 12);
  });
});

describe('the energy', () => {
  // Joules by C · V² / 2; each class begins at its energy, the reflex above its voltage.
  it.each([
    ['energy-arc', 100, 2, ['capacitor-shock-voltage', 'capacitor-arc-energy']],
    ['energy-shock', 100, 1.999, ['capacitor-shock-voltage', 'capacitor-shock-energy-later']],
    ['energy-shock', 100, 2e-4, ['capacitor-shock-voltage', 'capacitor-shock-energy-later']],
    ['energy-below', 100, 1.999e-4, undefined],
    ['energy-burn', 99.9, 2.1, ['capacitor-shock-voltage', 'capacitor-burn-energy']],
    ['energy-burn', 10, 2, ['capacitor-shock-voltage', 'capacitor-burn-energy']],
    ['energy-below', 10, 1.999, undefined],
    ['energy-below', 400, 5e-6, undefined],
    ['energy-reflex', 500, 2e-6, ['capacitor-reflex-voltage', 'capacitor-reflex-energy']],
    ['energy-below', 500, 1.99e-6, undefined],
  ] as const)('is %s at %d V and %d F', (code, at, size, limits) => {
    const finding = judgeEnergy(size, at);
    expect(finding).toMatchObject({ code, readings: ['capacitance', 'startVoltage'], volts: at });
    expect(finding.joules).toBeCloseTo((size * at ** 2) / 2, 9);
    expect(finding.severity).toBe(code === 'energy-below' ? 'note' : 'caution');
    const below = ['capacitor-shock-voltage', 'capacitor-shock-energy-later', 'capacitor-reflex-energy'];
    expect(finding.limits).toEqual(limits ?? below);
  });
});

describe('a bus that stands', () => {
  const stands = (start: number, at: number) =>
    said({ startVoltage: volts(start, 1), ...pair(at, at, 60) }).some((one) => one.startsWith('stands-near-half'));

  it('between 40 and 60 % of its start is near half, with a step of the display', () => {
    expect([stands(600, 239), stands(600, 238)]).toEqual([true, false]);
    expect([stands(600, 361), stands(600, 362)]).toEqual([true, false]);
  });

  it('is not named below the touch limit, and is at it', () => {
    expect([stands(102, 51), stands(102, 50)]).toEqual([true, false]);
  });

  it('has to stand, and to have a start', () => {
    const half = pair(283, 283, 60);
    expect(find({ startVoltage: volts(565, 1), ...half }, 'stands-near-half').standsVolts).toBe(283);
    expect(said({ ...half, startVoltage: { kind: 'over', unit: 'V', atLeast: 565 } }).join()).not.toContain(
      'near-half',
    );
  });
});
