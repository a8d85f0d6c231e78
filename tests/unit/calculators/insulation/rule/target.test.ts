import { describe, expect, it } from 'vitest';
import { limitCurve, targetOf } from '../../../../../src/calculators/insulation/rule/target.ts';
import { typed } from '../../../../support/typed.ts';

const ratedVoltage = typed('400 V', 'voltage');
const missing = typed('');

describe('the target', () => {
  it('after a trip is the point, for every machine', () => {
    for (const machineClass of ['random-wound', 'form-wound', 'pre-1970'] as const) {
      const target = targetOf({ occasion: 'after-trip', machineClass, ratedVoltage: missing });
      expect(target).toMatchObject({ ohms: 100e6, reference: 20 });
    }
  });

  it('in routine is the minimum of the class', () => {
    const target = (machineClass: 'random-wound' | 'form-wound' | 'pre-1970') =>
      targetOf({ occasion: 'routine', machineClass, ratedVoltage });
    expect(target('random-wound')).toMatchObject({ ohms: 5e6, reference: 40 });
    expect(target('form-wound')).toMatchObject({ ohms: 100e6, reference: 40 });
    expect(target('pre-1970')).toMatchObject({ ohms: 1.4e6, reference: 40 });
  });

  it('is unknown for an old winding of unknown voltage', () => {
    expect(targetOf({ occasion: 'routine', machineClass: 'pre-1970', ratedVoltage: missing })).toBeUndefined();
  });
});

describe('the curve of the limit over temperature', () => {
  const input = { machineClass: 'random-wound' as const, ratedVoltage, correction: 'halving' as const };
  const at = (occasion: 'after-trip' | 'routine', celsius: number) =>
    limitCurve({ ...input, occasion }).find(({ temperature }) => temperature === celsius);

  it('after a trip is undecided in a wedge on both sides of 20 °C', () => {
    expect(at('after-trip', 20)).toEqual({ temperature: 20, goFrom: 100e6, noGoBelow: 100e6 });
    expect(at('after-trip', 40)).toEqual({ temperature: 40, goFrom: 100e6, noGoBelow: 25e6 });
    expect(at('after-trip', 10)).toEqual({ temperature: 10, goFrom: 200e6, noGoBelow: 100e6 });
  });

  it('in routine is one line', () => {
    expect(at('routine', 40)).toEqual({ temperature: 40, goFrom: 5e6, noGoBelow: 5e6 });
    expect(at('routine', 60)).toEqual({ temperature: 60, goFrom: 1.25e6, noGoBelow: 1.25e6 });
  });

  it('spans the validity of the method, in equal steps', () => {
    const curve = limitCurve({ ...input, occasion: 'routine', correction: 'thermosetting' });
    expect(curve[0]?.temperature).toBe(10);
    expect(curve.at(-1)?.temperature).toBe(85);
    expect(curve.every(({ goFrom }) => Number.isFinite(goFrom))).toBe(true);
    expect(curve).toHaveLength(31);
  });

  it('is empty if the minimum is unknown', () => {
    const old = { ...input, machineClass: 'pre-1970' as const, ratedVoltage: missing };
    expect(limitCurve({ ...old, occasion: 'routine' })).toEqual([]);
  });
});
