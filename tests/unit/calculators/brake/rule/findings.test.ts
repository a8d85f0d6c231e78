import { describe, expect, it } from 'vitest';
import { leads, supplyFields } from '../../../../../src/calculators/brake/fields.ts';
import {
  celsius,
  metres,
  missing,
  ohms,
  overOhms,
  type Reading,
  volts,
  watts,
} from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, sound } from './sound.ts';

// Ohms of a coil: U²/P. Cores: IEC 60228. The tolerances are common practice or judgement.

const coil = 'brake-coil-tolerance brake-coil-off-plate winding-zero-copper';
const cores = 'pe-core-resistance pe-core-tolerance pe-contacts pe-dead-short';
const plate = 'ratedVolts ratedWatts ratedOhms';
const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });

const usual = [
  'bus-discharged pass busVoltage: resistance-residual-voltage',
  `brake-coil-fits pass atMotor coilTemperature ${plate}: ${coil}`,
  `brake-cores-fit pass atDrive atMotor: ${cores}`,
  'brake-supply-fits pass plugVolts ratedVolts: brake-supply-tolerance brake-supply-off',
  'brake-drop-expected note metres: pe-core-resistance brake-supply-tolerance',
  'brake-drop note sourceVolts plugVolts',
  'brake-cores-free pass: idle-core-free',
  'brake-opens pass release',
];

it('the plug at the drive is taken off for the ohms, and is not where the voltage of the brake is read', () => {
  const asked = supplyFields.map(({ name }) => name);
  expect(asked).toEqual(['Voltage at the motor’s end', 'Voltage at the source']);
  expect(leads.name).toContain('drive’s end');
});

it('a sound brake, line by line', () => {
  expect(assess({}).findings.map(lineWithLimits)).toEqual(usual);
  expect(assess({}).next).toEqual([]);
});

describe('what is found beside that, and what comes next', () => {
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
    [
      'no plate',
      { ratedWatts: missing },
      [`brake-plate-missing undecided ${plate}`, 'brake-drop note sourceVolts plugVolts'].slice(0, 1),
      ['read-plate'],
    ],
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
    [
      'cable not stated',
      { cable: { metres: missing } },
      ['brake-cable-not-stated undecided metres squareMillimetres'],
      ['state-brake-cable'],
    ],
    [
      'core open',
      { atDrive: overOhms() },
      ['brake-core-open fail atDrive atMotor: open-on-any-range'],
      ['separate-cable'],
    ],
    [
      'a low range at the drive',
      { atDrive: overOhms(90) },
      ['brake-coil-over-range undecided atDrive'],
      ['note-range'],
    ],
    [
      'cores touch',
      { atDrive: ohms(30) },
      ['brake-cores-touch fail atDrive atMotor: brake-coil-tolerance'],
      ['separate-cable'],
    ],
    [
      'cores high',
      { atDrive: ohms(60) },
      [`brake-cores-high fail atDrive atMotor: ${cores} winding-again-agreement`],
      ['separate-cable'],
    ],
    [
      'cores close',
      { atDrive: ohms(49.6, 0.1) },
      [`brake-cores-too-close undecided atDrive atMotor: ${cores}`],
      ['separate-cable'],
    ],
    [
      'a path',
      { toPe: ohms(1), coresApart: ohms(1) },
      ['brake-core-path fail coresApart toPe: idle-core-free'],
      ['separate-cable'],
    ],
    [
      'a path, one not clear, one not measured',
      { toPe: ohms(1), toPhases: overOhms(), coresApart: missing },
      [
        'brake-core-path fail toPe: idle-core-free',
        'brake-core-unclear undecided toPhases: idle-core-free',
        'brake-cores-not-measured undecided coresApart: idle-core-free',
      ],
      ['separate-cable', 'note-range', 'measure-brake-cores'],
    ],
    [
      'no voltage',
      { plugVolts: missing, sourceVolts: missing },
      ['brake-supply-missing undecided plugVolts'],
      ['measure-supply'],
    ],
    [
      'low',
      { plugVolts: volts(17), sourceVolts: missing },
      ['brake-supply-low fail plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['find-feed-fault'],
    ],
    [
      'high',
      { plugVolts: volts(31), sourceVolts: missing },
      ['brake-supply-high fail plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['find-feed-fault'],
    ],
    [
      'by the manual',
      { supplyTolerance: percent(5) },
      ['brake-supply-fits pass plugVolts ratedVolts: brake-supply-off'],
      [],
    ],
    [
      'close',
      { plugVolts: volts(20), sourceVolts: missing },
      ['brake-supply-too-close undecided plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['ask-brake-manual'],
    ],
    [
      'at the source',
      { plugVolts: missing },
      ['brake-supply-fits pass sourceVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      [],
    ],
    [
      'above its source',
      { plugVolts: volts(26), sourceVolts: volts(23) },
      ['brake-drop-contradicts undecided sourceVolts plugVolts: brake-supply-tolerance'],
      ['measure-supply'],
    ],
    [
      'lost on the way',
      { plugVolts: volts(21.5), sourceVolts: volts(24.1), supplyTolerance: percent(20) },
      [
        'brake-supply-fits pass plugVolts ratedVolts: brake-supply-off',
        `brake-drop-high fail sourceVolts plugVolts: ${cores} voltage-twice`,
      ],
      ['find-drop'],
    ],
    [
      'perhaps lost on the way',
      { plugVolts: volts(21.7) },
      [`brake-drop-unclear undecided sourceVolts plugVolts: ${cores} voltage-twice`],
      ['measure-supply'],
    ],
    [
      'drop of cores that nobody knows',
      { atDrive: missing, cable: { metres: missing }, sourceVolts: volts(25.8) },
      [],
      [],
    ],
    [
      'source only, cores high',
      { plugVolts: missing, atDrive: ohms(60) },
      [
        `brake-cores-high fail atDrive atMotor: ${cores} winding-again-agreement`,
        'brake-supply-missing undecided plugVolts',
      ],
      ['separate-cable', 'measure-supply'],
    ],
    ['not tried', { release: 'not-tried' }, ['brake-release-not-tried undecided release'], ['listen-to-release']],
    ['drags', { release: 'drags' }, ['brake-drags fail release'], ['have-brake-tested']],
    ['stays shut', { release: 'shut' }, ['brake-stays-shut fail release'], ['have-brake-tested']],
    [
      'mains',
      { ratedVolts: volts(50), ratedWatts: watts(52.1), plugVolts: volts(50), sourceVolts: missing },
      ['brake-not-extra-low caution ratedVolts: touch-voltage'],
      [],
    ],
    [
      'extra-low',
      { ratedVolts: volts(49.9), ratedWatts: watts(51.9), plugVolts: volts(50), sourceVolts: missing },
      [],
      [],
    ],
  ];
  it.each(rows)('%s', (_, change, lines, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits).filter((one) => !usual.includes(one))).toEqual(lines);
    expect(assessment.next.map(({ code }) => code)).toEqual(next);
  });
});

describe('figures of the sentences', () => {
  const rows: [what: string, Change, code: string, figures: object][] = [
    ['coil', { atMotor: ohms(48, 2) }, 'brake-coil-fits', { ohms: 48, expectedOhms: 48, tolerancePercent: 10 }],
    ['coil low', { atMotor: ohms(24), atDrive: missing }, 'brake-coil-low', { ohms: 24, expectedOhms: 48 }],
    [
      'coil close',
      { atMotor: ohms(55), atDrive: missing },
      'brake-coil-too-close',
      { expectedOhms: 48, tolerancePercent: 10 },
    ],
    // The cores of 1.275 Ω at most: 47.725 to 49 Ω.
    ['through the cable', { atMotor: missing, atDrive: ohms(49) }, 'brake-coil-fits', { ohms: 48.3625 }],
    ['plate', { ratedOhms: ohms(96) }, 'brake-plate-contradicts', { byPower: 48, stated: 96 }],
    [
      'cores',
      { atMotor: ohms(48), atDrive: ohms(49) },
      'brake-cores-fit',
      { addedOhms: 1, explainedOhms: expect.closeTo(1.275, 9) },
    ],
    [
      'cores close',
      { atMotor: ohms(48), atDrive: ohms(50) },
      'brake-cores-too-close',
      { explainedOhms: expect.closeTo(1.275, 9) },
    ],
    ['path', { toPe: ohms(1) }, 'brake-core-path', { leastOhms: 1e6 }],
    ['unclear', { toPe: overOhms() }, 'brake-core-unclear', { leastOhms: 1e6 }],
    ['free', {}, 'brake-cores-free', { leastOhms: 1e6 }],
    ['voltage', {}, 'brake-supply-fits', { volts: 23.4, ratedVolts: 24, tolerancePercent: 10, computed: false }],
    ['by the manual', { supplyTolerance: percent(5) }, 'brake-supply-fits', { tolerancePercent: 5 }],
    // 24.1 · 48 / 49.275 = 23.476 V behind the cores at the least.
    ['computed', { plugVolts: missing }, 'brake-supply-fits', { volts: expect.closeTo(23.788, 3), computed: true }],
    ['drop', {}, 'brake-drop', { volts: expect.closeTo(0.7, 9), percent: expect.closeTo(2.9167, 3) }],
    ['no drop below zero', { plugVolts: volts(24.2), sourceVolts: volts(24) }, 'brake-drop', { volts: 0, percent: 0 }],
    ['extra-low', { ratedVolts: volts(50) }, 'brake-not-extra-low', { ratedVolts: 50 }],
    [
      'drop high',
      { plugVolts: volts(17) },
      'brake-drop-high',
      { volts: expect.closeTo(7.1, 9), percent: expect.closeTo(29.58, 2) },
    ],
  ];
  it.each(rows)('%s', (_, change, code, figures) => {
    expect(assess(change).findings.find((one) => one.code === code)).toMatchObject(figures);
  });

  it('a voltage that is only a bound has no figure', () => {
    const over = assess({ plugVolts: { kind: 'over', unit: 'V', atLeast: 20 } }).findings;
    expect(over.find(({ code }) => code === 'brake-supply-too-close')).not.toHaveProperty('volts');
  });
});

describe('at the marks', () => {
  const bare: Change = { atDrive: missing, sourceVolts: missing, ratedWatts: missing, ratedOhms: ohms(100) };
  const rows: [what: string, Change, verdict: string][] = [
    ['coil 10 % high', { ...bare, atMotor: ohms(110) }, 'go'],
    ['coil 10 % low', { ...bare, atMotor: ohms(90) }, 'go'],
    ['coil above that', { ...bare, atMotor: ohms(110.1) }, 'undecided'],
    ['coil below that', { ...bare, atMotor: ohms(89.9) }, 'undecided'],
    ['coil 25 % high', { ...bare, atMotor: ohms(125) }, 'undecided'],
    ['coil above that', { ...bare, atMotor: ohms(125.1) }, 'no-go'],
    ['coil 25 % low', { ...bare, atMotor: ohms(75) }, 'undecided'],
    ['coil below that', { ...bare, atMotor: ohms(74.9) }, 'no-go'],
    // 24² / 12 is 48 Ω.
    ['plate 10 % apart', { ratedOhms: ohms(43.7), atMotor: ohms(46), atDrive: missing, sourceVolts: missing }, 'go'],
    ['more', { ratedOhms: ohms(43.6), atMotor: ohms(46), atDrive: missing, sourceVolts: missing }, 'undecided'],
    ['a megohm', { toPe: ohms(1e6) }, 'go'],
    ['less', { toPe: ohms(999_999) }, 'no-go'],
    ['voltage 10 % high', { sourceVolts: missing, plugVolts: volts(26.4) }, 'go'],
    ['above that', { sourceVolts: missing, plugVolts: volts(26.5) }, 'undecided'],
    ['voltage 10 % low', { sourceVolts: missing, plugVolts: volts(21.6) }, 'go'],
    ['below that', { sourceVolts: missing, plugVolts: volts(21.5) }, 'undecided'],
    ['voltage 25 % high', { sourceVolts: missing, plugVolts: volts(30) }, 'undecided'],
    ['above that', { sourceVolts: missing, plugVolts: volts(30.1) }, 'no-go'],
    ['voltage 25 % low', { sourceVolts: missing, plugVolts: volts(18) }, 'undecided'],
    ['below that', { sourceVolts: missing, plugVolts: volts(17.9) }, 'no-go'],
    ['plug 2.4 V above its source', { plugVolts: volts(25), sourceVolts: volts(22.6) }, 'go'],
    ['more', { plugVolts: volts(25), sourceVolts: volts(22.5) }, 'undecided'],
    ['0.1 V on the bus', { busVoltage: volts(0.1) }, 'go'],
    ['more', { busVoltage: volts(0.11) }, 'undecided'],
    [
      'OL through the cable, twice the coil and the cores are 149 Ω',
      { ratedWatts: missing, ratedOhms: ohms(73), atMotor: ohms(73), atDrive: overOhms(), sourceVolts: missing },
      'no-go',
    ],
    [
      'OL through the cable, they are 151 Ω',
      { ratedWatts: missing, ratedOhms: ohms(74), atMotor: ohms(74), atDrive: overOhms(), sourceVolts: missing },
      'undecided',
    ],
    // At −20 °C copper has 214.5 / 254.5 of its ohms at 20 °C, at 180 °C 1.629 times as many.
    [
      'OL at any temperature',
      { coilTemperature: missing, ...bare, ratedOhms: ohms(74), atMotor: overOhms() },
      'undecided',
    ],
    [
      'OL at any temperature, less',
      { coilTemperature: missing, ...bare, ratedOhms: ohms(73), atMotor: overOhms() },
      'no-go',
    ],
    // Cooler or hotter, 120 Ω may be 100 Ω at 20 °C.
    ['hot', { ...bare, coilTemperature: celsius(70), atMotor: ohms(120) }, 'go'],
  ];
  it.each(rows)('%s: %j', (_, change, verdict) => {
    expect(assess(change).verdict).toBe(verdict);
  });

  it('what cannot be added in a display is not lost on the way', () => {
    const { findings } = assess({ cable: { ...sound.cable, metres: metres(0) } });
    expect(findings.map(({ code }) => code)).toContain('brake-cable-not-stated');
  });
});
