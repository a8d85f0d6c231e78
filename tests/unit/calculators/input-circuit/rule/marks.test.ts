import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, type Reading, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change, drop, ol, sound, three } from './sound.ts';

// Marks: common practice, no source. Figures worked out by hand.

/** A plate of 100 Ω: passes from 90 to 110 Ω, fails below 75 and above 125 Ω. */
const of100 = (reading: Reading): Change => ({ prechargePlate: ohms(100), prechargeOhms: reading });
const of2 = (reading: Reading): Change => ({ prechargePlate: ohms(2), prechargeOhms: reading });
const fuse = (reading: Reading): Change => ({ fuses: three(reading) });
const link = (conducting: number): Change => ({ linkConducting: volts(conducting) });

describe('at the marks', () => {
  const rows: [what: string, Change, code: string][] = [
    ['a fuse of 2 Ω', fuse(ohms(2)), 'fuses-conduct'],
    ['more', fuse(ohms(2.1)), 'fuse-unclear'],
    ['under 2 Ω', fuse(underOhms(2)), 'fuses-conduct'],
    ['under a range not noted', fuse(underOhms()), 'fuse-unclear'],
    ['over 2 Ω', fuse(overOhms(2)), 'fuse-unclear'],
    ['over more', fuse(overOhms(2.1)), 'fuse-open'],
    ['OL of a meter up to 1 Ω', { ...fuse(overOhms()), instrument: { upperLimit: 1 } }, 'fuse-unclear'],
    ['a fuse by a meter of 9 %', { ...fuse(ohms(1.9)), instrument: { percent: 9 } }, 'fuse-unclear'],
    // 0.46 V of one diode and 0.05 V.
    ['one drop and its allowance', link(0.51), 'link-one-drop'],
    ['more', link(0.511), 'link-sound'],
    ['that, by a meter of 1 %', { ...link(0.511), instrument: { percent: 1 } }, 'link-one-drop'],
    ['that, by its last digit', { linkConducting: volts(0.511, 0.01) }, 'link-one-drop'],
    ['beside higher drops to DC+', { ...link(0.53), plusConducting: three(volts(0.5)) }, 'link-sound'],
    ['beside higher drops from DC−', { ...link(0.53), minusConducting: three(volts(0.5)) }, 'link-sound'],
    [
      'beside higher drops all round',
      { ...link(0.53), plusConducting: three(volts(0.5)), minusConducting: three(volts(0.49)) },
      'link-one-drop',
    ],
    ['beside a diode that is open', { ...link(0.42), plusConducting: three(ol, drop, drop) }, 'link-one-drop'],
    [
      'beside a diode that is short',
      { ...link(0.46), plusConducting: three(volts(0.002), drop, drop) },
      'link-one-drop',
    ],
    [
      'beside no drop that was read',
      { ...link(0.42), plusConducting: three(ol), minusConducting: three(missing) },
      'link-sound',
    ],
    [
      'beside a low drop of a line that is not there',
      { ...link(0.5), lines: 'two', plusConducting: three(drop, drop, volts(0.3)) },
      'link-one-drop',
    ],
    ['a bus that blocks with 1.5 V', { linkBlocking: volts(1.5) }, 'link-sound'],
    ['less', { linkBlocking: volts(1.499) }, 'link-leaky'],
    ['by a meter of 1 %', { linkBlocking: volts(1.5), instrument: { percent: 1 } }, 'link-unclear'],
    ['10 % high', of100(ohms(110)), 'precharge-fits'],
    ['more', of100(ohms(110.1)), 'precharge-too-close'],
    // 10 · 1.1 is 11 in binary fractions too.
    ['10 % high of 10 Ω', { prechargePlate: ohms(10), prechargeOhms: ohms(11) }, 'precharge-fits'],
    ['10 % low', of100(ohms(90)), 'precharge-fits'],
    ['less', of100(ohms(89.9)), 'precharge-too-close'],
    ['25 % high', of100(ohms(125)), 'precharge-too-close'],
    ['more', of100(ohms(125.1)), 'precharge-off'],
    ['25 % low', of100(ohms(75)), 'precharge-too-close'],
    ['less', of100(ohms(74.9)), 'precharge-off'],
    ['a coarse digit beside the lower mark', of100(ohms(90, 1)), 'precharge-too-close'],
    ['a coarse digit beside the upper mark', of100(ohms(110, 1)), 'precharge-too-close'],
    ['a coarse digit at the lower end', of100(ohms(74, 2)), 'precharge-too-close'],
    ['a coarse digit at the upper end', of100(ohms(126, 2)), 'precharge-too-close'],
    ['a meter of 1 %', { ...of100(ohms(109.5)), instrument: { percent: 1 } }, 'precharge-too-close'],
    ['over the range of its upper end', of100(overOhms(125)), 'precharge-over-range'],
    ['over more', of100(overOhms(125.1)), 'precharge-open'],
    ['OL of a meter up to 80 Ω', { prechargeOhms: overOhms(), instrument: { upperLimit: 80 } }, 'precharge-open'],
    ['OL of a meter up to 50 Ω', { prechargeOhms: overOhms(), instrument: { upperLimit: 50 } }, 'precharge-over-range'],
    ['beyond a meter up to 80 Ω', { prechargeOhms: ohms(99), instrument: { upperLimit: 80 } }, 'precharge-too-close'],
    ['under the range of its lower end', of100(underOhms(75)), 'precharge-too-close'],
    ['under less', of100(underOhms(74.9)), 'precharge-off'],
    ['under a range not noted', of100(underOhms()), 'precharge-too-close'],
    ['a contact of 2 Ω', of100(ohms(2)), 'precharge-bypassed'],
    ['more', of100(ohms(2.1)), 'precharge-off'],
    // A resistor of 2 Ω fails below 1.5 Ω.
    ['2 Ω of a resistor of 2 Ω', of2(ohms(2)), 'precharge-fits'],
    ['1.5 Ω of a resistor of 2 Ω', of2(ohms(1.5)), 'precharge-too-close'],
    ['1.4 Ω of a resistor of 2 Ω', of2(ohms(1.4)), 'precharge-bypassed'],
  ];
  it.each(rows)('%s: %j is %s', (_, change, code) => {
    const part = code.split('-')[0]?.slice(0, 4) ?? '';
    const { findings } = assess(change);
    expect(findings.find((one) => one.code.startsWith(part))?.code).toBe(code);
  });

  it('what is not read of the third line of a drive on one phase changes nothing', () => {
    const change = { lines: 'two' as const, fuses: three(ohms(0.2), ohms(0.2), overOhms()) };
    expect(assess(change)).toEqual(assess({ ...sound, lines: 'two' }));
  });
});
