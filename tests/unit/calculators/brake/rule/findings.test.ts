import { describe, expect, it } from 'vitest';
import { leads, supplyFields } from '../../../../../src/calculators/brake/fields.ts';
import { celsius, metres, missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, coil, plate, usual } from './sound.ts';

// Ohms of a coil: U²/P. Cores: IEC 60228. The tolerances are common practice or judgement.

it('the plug at the drive is taken off for the ohms, and is not where the voltage of the brake is read', () => {
  const asked = supplyFields.map(({ name }) => name);
  expect(asked).toEqual(['Voltage at the motor’s end', 'Voltage at the source']);
  expect(leads.name).toContain('drive’s end');
});

it('a sound brake, line by line', () => {
  expect(assess({}).findings.map(lineWithLimits)).toEqual(usual);
  expect(assess({}).next).toEqual([]);
});

describe('what is found of statements, plate and coil, and what comes next', () => {
  const temperature = `brake-coil-temperature-missing undecided coilTemperature`;
  const rows: [what: string, Change, lines: string[], next: string[]][] = [
    ['impossible', { toPe: ohms(-1) }, ['figure-impossible undecided toPe'], ['read-figure-again']],
    ['may fall', { axis: 'not-held' }, ['brake-axis-not-held stop axis'], ['support-axis-first']],
    ['not stated', { axis: 'not-stated' }, ['brake-axis-not-stated undecided axis'], ['support-axis-first']],
    ['plug on', { leads: 'connected' }, ['brake-leads-connected undecided leads'], ['take-leads-off']],
    ['leads not stated', { leads: 'not-stated' }, ['brake-leads-not-stated undecided leads'], ['take-leads-off']],
    [
      'bus charged',
      { busVoltage: volts(60) },
      ['bus-not-discharged stop busVoltage: touch-voltage'],
      ['wait-and-measure-bus'],
    ],
    [
      'electronics',
      { circuit: 'electronics' },
      ['brake-electronics undecided circuit'],
      ['look-between', 'ask-brake-manual'],
    ],
    ['circuit not stated', { circuit: 'not-stated' }, ['brake-circuit-not-stated undecided circuit'], ['look-between']],
    ['no plate', { ratedWatts: missing }, [`brake-plate-missing undecided ${plate}`], ['read-plate']],
    [
      'no rated voltage',
      { ratedVolts: missing, ratedOhms: ohms(48) },
      ['brake-plate-missing undecided ratedVolts'],
      ['read-plate'],
    ],
    [
      'a rated voltage of zero',
      { ratedVolts: volts(0), ratedOhms: ohms(48) },
      ['brake-plate-missing undecided ratedVolts'],
      ['read-plate'],
    ],
    [
      'a plate that contradicts',
      { ratedOhms: ohms(96) },
      [`brake-plate-contradicts undecided ${plate}: brake-coil-tolerance`],
      ['read-plate'],
    ],
    ['ohms of zero on the plate count as not stated', { ratedOhms: ohms(0) }, [], []],
    ['a plate that agrees', { ratedOhms: ohms(50) }, [], []],
    [
      'coil low',
      { atMotor: ohms(24), atDrive: missing },
      [`brake-coil-low fail atMotor coilTemperature ${plate}: ${coil}`],
      ['repeat-coil-with-care', 'replace-coil'],
    ],
    [
      'coil high',
      { atMotor: ohms(90), atDrive: missing },
      [`brake-coil-high fail atMotor coilTemperature ${plate}: ${coil}`],
      ['repeat-coil-with-care', 'replace-coil'],
    ],
    [
      'coil open',
      { atMotor: overOhms(), atDrive: missing },
      [`brake-coil-open fail atMotor coilTemperature ${plate}: ${coil} open-on-any-range`],
      ['repeat-coil-with-care', 'replace-coil'],
    ],
    [
      'coil over a low range',
      { atMotor: overOhms(20), atDrive: missing },
      ['brake-coil-over-range undecided atMotor'],
      ['note-range'],
    ],
    [
      'coil close',
      { atMotor: ohms(55), atDrive: missing },
      [`brake-coil-too-close undecided atMotor coilTemperature ${plate}: ${coil}`],
      ['repeat-coil-with-care'],
    ],
    [
      'coil not measured',
      { atMotor: missing, atDrive: missing },
      ['brake-coil-missing undecided atMotor'],
      ['measure-coil'],
    ],
    [
      'no temperature',
      { coilTemperature: missing },
      [temperature, `brake-coil-too-close undecided atMotor coilTemperature ${plate}: ${coil}`],
      ['measure-coil-temperature', 'repeat-coil-with-care'],
    ],
    [
      'a temperature that no coil has',
      { coilTemperature: celsius(300) },
      [temperature, `brake-coil-too-close undecided atMotor coilTemperature ${plate}: ${coil}`],
      ['measure-coil-temperature', 'repeat-coil-with-care'],
    ],
    [
      'no temperature, not measured',
      { coilTemperature: missing, atMotor: missing, atDrive: missing },
      [temperature, 'brake-coil-missing undecided atMotor'],
      ['measure-coil-temperature', 'measure-coil'],
    ],
    [
      'through the cable',
      { atMotor: missing, atDrive: ohms(48) },
      [`brake-coil-fits pass atDrive coilTemperature ${plate}: ${coil}`],
      [],
    ],
    [
      'over a low range through the cable',
      { atMotor: missing, atDrive: overOhms(20) },
      ['brake-coil-over-range undecided atDrive'],
      ['note-range'],
    ],
    [
      'through a cable not known',
      { atMotor: missing, cable: { metres: missing, squareMillimetres: 1 } },
      ['brake-cable-not-stated undecided metres squareMillimetres'],
      ['state-brake-cable'],
    ],
    [
      'cross-section not known',
      { atMotor: missing, cable: { metres: metres(20) } },
      ['brake-cable-not-stated undecided metres squareMillimetres'],
      ['state-brake-cable'],
    ],
  ];
  it.each(rows)('%s', (_, change, lines, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits).filter((one) => !usual.includes(one))).toEqual(lines);
    expect(assessment.next.map(({ code }) => code)).toEqual(next);
  });
});
