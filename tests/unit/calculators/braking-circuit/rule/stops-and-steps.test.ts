import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change } from './sound.ts';

// Common practice, no source.

const zero = volts(0.002);
const below = volts(-0.2);
const steps = (change: Change) => assess(change).next.map(({ code }) => code);

describe('what stops everything else', () => {
  const rows: [what: string, Change, line: string, next: string[]][] = [
    ['an impossible figure', { ohms: ohms(-1) }, 'figure-impossible undecided ohms', ['read-figure-again']],
    [
      'an impossible figure beside a charged bus',
      { ohms: ohms(-1), busVoltage: volts(320) },
      'figure-impossible undecided ohms',
      ['read-figure-again'],
    ],
    [
      'a charged bus',
      { busVoltage: volts(50) },
      'bus-not-discharged stop busVoltage: touch-voltage',
      ['wait-and-measure-bus'],
    ],
    [
      'a charged bus and a reading below zero',
      { busVoltage: volts(50), upperBlocking: below },
      'bus-not-discharged stop busVoltage: touch-voltage',
      ['wait-and-measure-bus'],
    ],
    [
      'a bus not measured',
      { busVoltage: missing },
      'bus-not-measured undecided busVoltage: touch-voltage',
      ['measure-bus'],
    ],
    [
      'a bus with some volts',
      { busVoltage: volts(0.11) },
      'bus-residual-voltage undecided busVoltage: resistance-residual-voltage',
      ['wait-and-measure-bus'],
    ],
  ];
  it.each(rows)('%s', (_, change, line, next) => {
    expect(assess(change).findings.map(lineWithLimits)).toEqual([line]);
    expect(assess(change).verdict).toBe('undecided');
    expect(steps(change)).toEqual(next);
  });

  it.each(['upperConducting', 'upperBlocking', 'lowerConducting', 'lowerBlocking'])(
    '%s below zero, whatever was measured of the bus',
    (field) => {
      for (const busVoltage of [volts(0.03), volts(2), missing]) {
        const { verdict, findings, next } = assess({ [field]: below, busVoltage });
        expect(findings.map(lineWithLimits)).toEqual([`chopper-negative stop ${field}`]);
        expect(verdict).toBe('undecided');
        expect(next[0]?.code).toBe('wait-and-measure-bus');
      }
    },
  );

  it('names every reading below zero', () => {
    const { findings } = assess({ upperBlocking: below, lowerConducting: below });
    expect(findings.map(lineWithLimits)).toEqual(['chopper-negative stop upperBlocking lowerConducting']);
  });

  it('zero itself is not below zero', () => {
    expect(assess({ upperBlocking: volts(0) }).findings.map(({ code }) => code)).toContain('chopper-short');
  });
});

describe('what a second reading makes of a fail', () => {
  const atResistor = ['read-at-resistor', 'replace-resistor'];
  const unproven = ['measure-chopper', 'compare-chopper'];
  const rows: [what: string, Change, next: string[]][] = [
    ['lead jumps', { lead: 'jumps' }, ['read-at-resistor']],
    ['open', { ohms: overOhms() }, atResistor],
    ['low', { ohms: ohms(35) }, atResistor],
    ['high', { ohms: ohms(59) }, atResistor],
    ['a path', { toHousing: ohms(80_000) }, atResistor],
    ['breaks down', { insulation: ohms(300_000) }, atResistor],
    ['thermal switch open', { thermalOhms: overOhms() }, ['look-at-thermal']],
    ['short to DC+', { upperConducting: zero, upperBlocking: zero }, unproven],
    ['short to DC+ one way', { upperBlocking: zero }, unproven],
    ['short to DC−', { lowerConducting: zero, lowerBlocking: zero }, ['replace-drive']],
    ['short to DC− one way', { lowerBlocking: zero }, unproven],
    ['leaks to DC+', { upperBlocking: volts(0.5) }, ['compare-chopper']],
    ['leaks to DC−', { lowerBlocking: volts(0.5) }, ['compare-chopper']],
    [
      'open, and short to DC−',
      { ohms: overOhms(), lowerConducting: zero, lowerBlocking: zero },
      [...atResistor, 'replace-drive'],
    ],
    ['no fail', {}, []],
    ['undecided', { ohms: ohms(55) }, ['read-at-resistor']],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(steps({ ...change, again: true })).toEqual([...next, 'measure-bus-again']);
  });

  it('a fail read once is read again first', () => {
    for (const [, change, next] of rows.filter(([what]) => !['no fail', 'undecided'].includes(what))) {
      expect([next, steps(change)]).toEqual([next, ['read-twice', 'measure-bus-again']]);
    }
  });
});

describe('the bus is measured again after a diode test only', () => {
  it('no path was measured', () => {
    const neither = { upperConducting: missing, lowerBlocking: missing };
    expect(steps(neither)).toEqual(['measure-chopper']);
  });

  it('one path was', () => {
    expect(steps({ upperConducting: missing })).toEqual(['measure-chopper', 'measure-bus-again']);
    expect(steps({ lowerConducting: missing })).toEqual(['measure-chopper', 'measure-bus-again']);
  });
});
