import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, type Lines, linesWith, ol } from './sound.ts';

// Common practice, no source: what a resistor, a thermal switch and a chopper show a meter.

const zero = volts(0.002);
const marks = 'braking-resistor-tolerance braking-resistor-off-plate';
const open = 'resistor-open fail ohms: braking-resistor-off-plate open-on-any-range';
const fits = `resistor-fits pass ohms plate: ${marks}`;
const noPlate = 'resistor-plate-missing undecided plate';

describe('what is found part by part, which readings and limits it names, and what comes next', () => {
  const rows: [what: string, Change, Lines, next: string[]][] = [
    ['sound', {}, {}, []],
    ['leads of the meter the other way round', { busVoltage: volts(-0.03) }, {}, []],
    ['lead jumps', { lead: 'jumps' }, { resistor: ['resistor-lead-jumps fail lead', fits] }, ['read-twice']],
    [
      'lead not stated',
      { lead: 'not-stated' },
      { resistor: ['resistor-lead-not-stated undecided lead', fits] },
      ['measure-resistor'],
    ],
    ['plate not read', { plate: missing }, { resistor: [noPlate] }, ['read-resistor-plate']],
    ['a plate of zero', { plate: ohms(0) }, { resistor: [noPlate] }, ['read-resistor-plate']],
    ['not measured', { ohms: missing }, { resistor: ['resistor-missing undecided ohms'] }, ['measure-resistor']],
    [
      'neither plate nor reading',
      { plate: missing, ohms: missing },
      { resistor: [noPlate, 'resistor-missing undecided ohms'] },
      ['read-resistor-plate', 'measure-resistor'],
    ],
    ['open', { ohms: overOhms() }, { resistor: [open] }, ['read-twice']],
    [
      'open, and the lead jumps',
      { ohms: overOhms(), lead: 'jumps' },
      { resistor: ['resistor-lead-jumps fail lead', open] },
      ['read-twice'],
    ],
    [
      'over a low range, lead not moved',
      { ohms: overOhms(20), lead: 'not-stated' },
      { resistor: ['resistor-lead-not-stated undecided lead', 'resistor-over-range undecided ohms'] },
      ['measure-resistor', 'note-resistor-range'],
    ],
    [
      'over 10 kΩ, plate not read',
      { ohms: overOhms(10_000), plate: missing },
      { resistor: [noPlate, 'resistor-over-range undecided ohms'] },
      ['read-resistor-plate', 'note-resistor-range'],
    ],
    [
      'over more, plate not read',
      { ohms: overOhms(10_001), plate: missing },
      { resistor: [noPlate, open] },
      ['read-resistor-plate', 'read-twice'],
    ],
    ['low', { ohms: ohms(35) }, { resistor: [`resistor-low fail ohms plate: ${marks}`] }, ['read-twice']],
    [
      'low, and the lead jumps',
      { ohms: ohms(35), lead: 'jumps' },
      { resistor: ['resistor-lead-jumps fail lead', `resistor-low fail ohms plate: ${marks}`] },
      ['read-twice'],
    ],
    ['high', { ohms: ohms(59) }, { resistor: [`resistor-high fail ohms plate: ${marks}`] }, ['read-twice']],
    [
      'high, lead not moved',
      { ohms: ohms(59), lead: 'not-stated' },
      { resistor: ['resistor-lead-not-stated undecided lead', `resistor-high fail ohms plate: ${marks}`] },
      ['measure-resistor', 'read-twice'],
    ],
    [
      'too close',
      { ohms: ohms(55) },
      { resistor: [`resistor-too-close undecided ohms plate: ${marks}`] },
      ['read-at-resistor'],
    ],
    [
      'housing not measured',
      { toHousing: missing },
      { housing: ['housing-missing undecided toHousing'] },
      ['measure-housing'],
    ],
    [
      'a path to the housing',
      { toHousing: ohms(80_000) },
      { housing: ['housing-path fail toHousing: braking-resistor-to-pe'] },
      ['read-twice'],
    ],
    [
      'over a range that ends too low',
      { toHousing: overOhms(200_000) },
      { housing: ['housing-unclear undecided toHousing: braking-resistor-to-pe'] },
      ['measure-housing'],
    ],
    [
      'not tested',
      { insulation: missing },
      { housing: ['housing-insulation-missing undecided insulation'] },
      ['test-housing'],
    ],
    [
      'breaks down',
      { insulation: ohms(300_000) },
      { housing: ['housing-insulation-bad fail insulation: machine-minimum-60204'] },
      ['read-twice'],
    ],
    [
      'neither good nor bad, by a coarse digit',
      { insulation: ohms(1e6, 1e6) },
      { housing: ['housing-insulation-unclear undecided insulation: machine-minimum-60204'] },
      ['test-housing'],
    ],
    [
      'a path, and not tested',
      { toHousing: ohms(80_000), insulation: missing },
      {
        housing: [
          'housing-path fail toHousing: braking-resistor-to-pe',
          'housing-insulation-missing undecided insulation',
        ],
      },
      ['test-housing', 'read-twice'],
    ],
    ['no switch', { thermal: 'none', thermalOhms: missing }, { thermal: ['thermal-none note thermal'] }, []],
    [
      'no switch, and it has ohms',
      { thermal: 'none' },
      { thermal: ['thermal-not-stated undecided thermal'] },
      ['look-at-thermal'],
    ],
    ['a sensor', { thermal: 'other' }, { thermal: ['thermal-other undecided thermal'] }, ['look-at-thermal']],
    [
      'a sensor, not measured',
      { thermal: 'other', thermalOhms: missing },
      { thermal: ['thermal-other undecided thermal'] },
      ['look-at-thermal'],
    ],
    [
      'a switch that nobody names',
      { thermal: 'not-stated' },
      { thermal: ['thermal-not-stated undecided thermal'] },
      ['look-at-thermal'],
    ],
    [
      'a switch not measured',
      { thermalOhms: missing },
      { thermal: ['thermal-not-stated undecided thermal'] },
      ['look-at-thermal'],
    ],
    [
      'a switch open',
      { thermalOhms: overOhms() },
      { thermal: ['thermal-open fail thermalOhms: tips-together'] },
      ['read-twice'],
    ],
    [
      'a switch of 5 Ω',
      { thermalOhms: ohms(5) },
      { thermal: ['thermal-unclear undecided thermalOhms: tips-together'] },
      ['look-at-thermal'],
    ],
  ];
  it.each(rows)('%s', (_, change, instead, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits)).toEqual(linesWith(instead));
    expect(assessment.next.map(({ code }) => code)).toEqual([...next, 'measure-bus-again']);
  });
});

describe.each(['upper', 'lower'] as const)('the %s path of the chopper', (path) => {
  const rows: [what: string, conducting: Reading, blocking: Reading, start: string, next: string[]][] = [
    ['short both ways', zero, zero, 'chopper-short fail', ['read-twice']],
    ['short one way', zero, ol, 'chopper-short fail', ['read-twice']],
    ['short the other way', volts(0.46), zero, 'chopper-short fail', ['read-twice']],
    ['leaks', volts(0.46), volts(0.5), 'chopper-leaky fail', ['read-twice']],
    ['open', ol, ol, 'chopper-open undecided', ['compare-chopper']],
    ['exchanged', ol, volts(0.46), 'chopper-exchanged undecided', ['measure-chopper']],
    ['unclear', { kind: 'over', unit: 'V', atLeast: 1 }, ol, 'chopper-unclear undecided', ['measure-chopper']],
    ['one not measured', volts(0.46), missing, 'chopper-missing undecided', ['measure-chopper']],
  ];
  it.each(rows)('%s', (what, conducting, blocking, start, next) => {
    const { findings, next: after } = assess({ [`${path}Conducting`]: conducting, [`${path}Blocking`]: blocking });
    const expected = `${start} ${path}Conducting ${path}Blocking: diode-short diode-blocking`;
    expect(findings.map(lineWithLimits)).toEqual(linesWith({ [path]: [expected] }));
    expect(after.map(({ code }) => code)).toEqual([...next, 'measure-bus-again']);
    const one = findings.find(({ code }) => `${start} `.startsWith(`${code} `));
    expect(one).toMatchObject(what.startsWith('short') ? { path, bothWays: what === 'short both ways' } : { path });
  });
});
