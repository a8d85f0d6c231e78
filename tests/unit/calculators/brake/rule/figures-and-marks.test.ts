import { describe, expect, it } from 'vitest';
import { celsius, metres, missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change, percent, sound } from './sound.ts';

// Ohms of a coil: U²/P. Cores: IEC 60228. The tolerances are common practice or judgement.

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
    // 24.05 · 48 / 49.275 = 23.428 V behind the cores at the least, 24.15 V at the most.
    ['computed', { plugVolts: missing }, 'brake-supply-fits', { volts: expect.closeTo(23.7889, 3), computed: true }],
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
