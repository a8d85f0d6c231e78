import { describe, expect, it } from 'vitest';
import { ohms, overOhms, type Reading, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change } from './sound.ts';

// Marks: common practice, no source, but the machine's minimum of IEC 60204-1, recalled. Figures worked out by hand.

const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });
/** A plate of 100 Ω: passes from 90 to 110 Ω, fails below 75 and above 125 Ω. */
const of100 = (reading: Reading): Change => ({ plate: ohms(100), ohms: reading });
const within = (tolerance: number, reading: number): Change => ({
  ...of100(ohms(reading)),
  plateTolerance: percent(tolerance),
});

describe('at the marks', () => {
  const rows: [what: string, Change, code: string][] = [
    ['10 % high', of100(ohms(110)), 'resistor-fits'],
    ['more', of100(ohms(110.1)), 'resistor-too-close'],
    ['10 % low', of100(ohms(90)), 'resistor-fits'],
    ['less', of100(ohms(89.9)), 'resistor-too-close'],
    ['25 % high', of100(ohms(125)), 'resistor-too-close'],
    ['more', of100(ohms(125.1)), 'resistor-high'],
    ['25 % low', of100(ohms(75)), 'resistor-too-close'],
    ['less', of100(ohms(74.9)), 'resistor-low'],
    ['a coarse digit beside the lower mark', of100(ohms(90, 1)), 'resistor-too-close'],
    ['a coarse digit beside the upper mark', of100(ohms(110, 1)), 'resistor-too-close'],
    ['a coarse digit at the lower end', of100(ohms(74, 2)), 'resistor-too-close'],
    ['a coarse digit at the upper end', of100(ohms(126, 2)), 'resistor-too-close'],
    ['a plate of 5 %', within(5, 95), 'resistor-fits'],
    ['less', within(5, 94.9), 'resistor-too-close'],
    ['a plate of 5 %, high', within(5, 105), 'resistor-fits'],
    ['more', within(5, 105.1), 'resistor-too-close'],
    ['a plate of 20 %', within(20, 80), 'resistor-fits'],
    ['a plate of 60 % allows a quarter', within(60, 75), 'resistor-fits'],
    ['less', within(60, 74.9), 'resistor-low'],
    ['over the range of its upper end', of100(overOhms(125)), 'resistor-over-range'],
    ['over more', of100(overOhms(125.1)), 'resistor-open'],
    ['under the range of its lower end', of100(underOhms(75)), 'resistor-too-close'],
    ['under less', of100(underOhms(74.9)), 'resistor-low'],
    ['under a range not noted', of100(underOhms()), 'resistor-too-close'],
    [
      'beyond the highest figure of the meter',
      { ohms: ohms(100), instrument: { upperLimit: 80 } },
      'resistor-too-close',
    ],
    ['OL of a meter up to 80 Ω', { ohms: overOhms(), instrument: { upperLimit: 80 } }, 'resistor-open'],
    ['OL of a meter up to 50 Ω', { ohms: overOhms(), instrument: { upperLimit: 50 } }, 'resistor-over-range'],
    ['a meter of 1 %', { ...of100(ohms(109.5)), instrument: { percent: 1 } }, 'resistor-too-close'],
    ['a megohm to the housing', { toHousing: ohms(1e6) }, 'housing-free'],
    ['less', { toHousing: ohms(999_999) }, 'housing-path'],
    ['a megohm by a coarse digit', { toHousing: ohms(1e6, 1e5) }, 'housing-unclear'],
    ['over a megohm', { toHousing: overOhms(1e6) }, 'housing-free'],
    ['over less', { toHousing: overOhms(999_999) }, 'housing-unclear'],
    ['by a meter of 9 %', { toHousing: ohms(1.05e6), instrument: { percent: 9 } }, 'housing-unclear'],
    ['an insulation of a megohm', { insulation: ohms(1e6) }, 'housing-free'],
    ['less', { insulation: ohms(999_999) }, 'housing-insulation-bad'],
    ['over a megohm', { insulation: overOhms(1e6) }, 'housing-free'],
    ['over less', { insulation: overOhms(999_999) }, 'housing-insulation-unclear'],
    // The tester is another instrument.
    ['the error of the multimeter', { insulation: ohms(1.02e6, 1e4), instrument: { percent: 9 } }, 'housing-free'],
    ['a contact of 2 Ω', { thermalOhms: ohms(2) }, 'thermal-closed'],
    ['more', { thermalOhms: ohms(2.1) }, 'thermal-unclear'],
    ['under 2 Ω', { thermalOhms: underOhms(2) }, 'thermal-closed'],
    ['under a range not noted', { thermalOhms: underOhms() }, 'thermal-unclear'],
    ['over 2 Ω', { thermalOhms: overOhms(2) }, 'thermal-unclear'],
    ['over more', { thermalOhms: overOhms(2.1) }, 'thermal-open'],
    ['OL of a meter up to 1 Ω', { thermalOhms: overOhms(), instrument: { upperLimit: 1 } }, 'thermal-unclear'],
    ['a contact by a meter of 9 %', { thermalOhms: ohms(1.9), instrument: { percent: 9 } }, 'thermal-unclear'],
    ['a short of 0.1 V', { lowerBlocking: volts(0.1) }, 'chopper-short'],
    ['more', { lowerBlocking: volts(0.101) }, 'chopper-leaky'],
    ['blocks with 1.5 V', { lowerBlocking: volts(1.5) }, 'chopper-sound'],
    ['less', { lowerBlocking: volts(1.499) }, 'chopper-leaky'],
    ['by a meter of 9 %', { lowerBlocking: volts(1.5), instrument: { percent: 9 } }, 'chopper-unclear'],
  ];
  it.each(rows)('%s: %j is %s', (_, change, code) => {
    const { findings } = assess(change);
    const part = findings.filter((one) => one.code.split('-')[0] === code.split('-')[0]);
    // The path to DC− is the last one.
    expect(part[part.length - 1]?.code).toBe(code);
  });
});

describe('figures of the sentences', () => {
  const rows: [what: string, Change, code: string, figures: object][] = [
    ['fits', {}, 'resistor-fits', { ohms: 46, plateOhms: 47, tolerancePercent: 10 }],
    ['fits a plate of 5 %', within(5, 96), 'resistor-fits', { ohms: 96, plateOhms: 100, tolerancePercent: 5 }],
    ['fits the widest plate', within(60, 96), 'resistor-fits', { tolerancePercent: 25 }],
    ['low', { ohms: ohms(35) }, 'resistor-low', { ohms: 35, plateOhms: 47 }],
    ['under 30 Ω', { ohms: underOhms(30) }, 'resistor-low', { ohms: 15, plateOhms: 47 }],
    ['high', { ohms: ohms(60, 2) }, 'resistor-high', { ohms: 60, plateOhms: 47 }],
    ['too close', { ohms: ohms(55) }, 'resistor-too-close', { plateOhms: 47, tolerancePercent: 10 }],
    ['too close, 5 %', within(5, 94), 'resistor-too-close', { plateOhms: 100, tolerancePercent: 5 }],
    ['a path', { toHousing: ohms(1) }, 'housing-path', { leastOhms: 1e6 }],
    ['not clear', { toHousing: overOhms() }, 'housing-unclear', { leastOhms: 1e6 }],
    ['breaks down', { insulation: ohms(1) }, 'housing-insulation-bad', { leastOhms: 1e6 }],
    ['insulation not clear', { insulation: overOhms() }, 'housing-insulation-unclear', { leastOhms: 1e6 }],
    ['free', {}, 'housing-free', { leastOhms: 1e6 }],
  ];
  it.each(rows)('%s', (_, change, code, figures) => {
    expect(assess(change).findings.find((one) => one.code === code)).toMatchObject(figures);
  });
});
