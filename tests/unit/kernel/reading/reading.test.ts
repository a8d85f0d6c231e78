import { describe, expect, it } from 'vitest';
import { celsius, missing, ohms, overOhms, underOhms, volts } from '../../../../src/kernel/reading/reading.ts';

describe('the makers of readings', () => {
  it('give a value its base unit', () => {
    expect(ohms(450_000)).toEqual({ kind: 'value', value: 450_000, unit: 'Ω' });
    expect(volts(0.02)).toEqual({ kind: 'value', value: 0.02, unit: 'V' });
    expect(celsius(-5)).toEqual({ kind: 'value', value: -5, unit: '°C' });
  });

  it('keep the step of the last digit when it is known', () => {
    expect(ohms(450_000, 1000)).toEqual({ kind: 'value', value: 450_000, unit: 'Ω', resolution: 1000 });
    expect(volts(0.02, 0.01)).toEqual({ kind: 'value', value: 0.02, unit: 'V', resolution: 0.01 });
    expect(celsius(25, 1)).toEqual({ kind: 'value', value: 25, unit: '°C', resolution: 1 });
  });

  it('leave the step out rather than set it to undefined, so that readings compare and store alike', () => {
    expect(Object.keys(ohms(1))).toEqual(['kind', 'value', 'unit']);
    expect(Object.keys(overOhms())).toEqual(['kind', 'unit']);
    expect(Object.keys(underOhms())).toEqual(['kind', 'unit']);
  });

  it('distinguish a noted range from one that was not noted', () => {
    expect(overOhms(700e6)).toEqual({ kind: 'over', unit: 'Ω', atLeast: 700e6 });
    expect(overOhms()).toEqual({ kind: 'over', unit: 'Ω' });
    expect(underOhms(1000)).toEqual({ kind: 'under', unit: 'Ω', atMost: 1000 });
    expect(underOhms()).toEqual({ kind: 'under', unit: 'Ω' });
  });

  it('hold a bound of zero as a bound', () => {
    expect(overOhms(0)).toEqual({ kind: 'over', unit: 'Ω', atLeast: 0 });
    expect(underOhms(0)).toEqual({ kind: 'under', unit: 'Ω', atMost: 0 });
  });

  it('have one missing reading', () => {
    expect(missing).toEqual({ kind: 'missing' });
  });
});
