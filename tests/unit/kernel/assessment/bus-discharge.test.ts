import { describe, expect, it } from 'vitest';
import { judgeDischarge } from '../../../../src/kernel/assessment/bus-discharge.ts';
import { typed } from '../../../support/typed.ts';

describe('the DC bus before any resistance is read', () => {
  it.each([
    ['', 'bus-not-measured', 'undecided'],
    ['0', 'bus-discharged', 'pass'],
    ['0.02', 'bus-discharged', 'pass'],
    ['20 mV', 'bus-discharged', 'pass'],
    ['0.1', 'bus-discharged', 'pass'],
    ['<0.1', 'bus-discharged', 'pass'],
    ['0.11', 'bus-residual-voltage', 'undecided'],
    ['1.5', 'bus-residual-voltage', 'undecided'],
    ['<1', 'bus-residual-voltage', 'undecided'],
    ['49.9', 'bus-residual-voltage', 'undecided'],
    ['49', 'bus-residual-voltage', 'undecided'],
    ['0.00 kV', 'bus-residual-voltage', 'undecided'],
    ['0.0 kV', 'bus-not-discharged', 'stop'],
    ['0 kV', 'bus-not-discharged', 'stop'],
    ['50', 'bus-not-discharged', 'stop'],
    ['565', 'bus-not-discharged', 'stop'],
    ['1 kV', 'bus-not-discharged', 'stop'],
    ['<60', 'bus-not-discharged', 'stop'],
    ['under range', 'bus-not-discharged', 'stop'],
    ['OL', 'bus-not-discharged', 'stop'],
    ['>600', 'bus-not-discharged', 'stop'],
    ['>0', 'bus-not-discharged', 'stop'],
  ])('“%s” volts: %s', (text, code, severity) => {
    expect(judgeDischarge(typed(text, 'voltage'))).toMatchObject({ code, severity, readings: ['busVoltage'] });
  });

  it('names the limit that decided', () => {
    expect(judgeDischarge(typed('565', 'voltage')).limits).toEqual(['touch-voltage']);
    expect(judgeDischarge(typed('5', 'voltage')).limits).toEqual(['resistance-residual-voltage']);
    expect(judgeDischarge(typed('0', 'voltage')).limits).toEqual(['resistance-residual-voltage']);
  });

  it('has the figures that the meter showed, and no others', () => {
    const charged = { code: 'bus-not-discharged', touchVolts: 50 };
    expect(judgeDischarge(typed('565', 'voltage'))).toMatchObject({ ...charged, volts: 565 });
    expect(judgeDischarge(typed('<60', 'voltage'))).toMatchObject({ ...charged, volts: 60 });
    expect(judgeDischarge(typed('OL', 'voltage'))).toMatchObject(charged);
    expect(judgeDischarge(typed('OL', 'voltage'))).not.toHaveProperty('volts');
    expect(judgeDischarge(typed('5', 'voltage'))).toMatchObject({ volts: 5, falsifyingVolts: 0.1 });
  });
});
