import { describe, expect, it } from 'vitest';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
  volts,
} from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change } from './sound.ts';

// Ohms of a coil: U²/P. Copper: NBS Handbook 100. The tolerances are common practice or judgement.

/** A coil of 48 Ω that passes from 43.2 to 52.8 Ω, fails below 36 and above 60 Ω. */
const alone = (atMotor: Reading): Change => ({ atMotor, atDrive: missing, sourceVolts: missing });
const anyTemperature = (atMotor: Reading): Change => ({ ...alone(atMotor), coilTemperature: missing });
const throughCores = (atDrive: Reading): Change => ({ atMotor: missing, atDrive });
const at = (temperature: number, atMotor: number): Change => ({
  ...alone(ohms(atMotor)),
  coilTemperature: celsius(temperature),
});

describe('the coil at its marks', () => {
  const rows: [what: string, Change, code: string][] = [
    // 10 · 1.1 is 11 in binary fractions too.
    ['10 % high of 10 Ω', { ...alone(ohms(11)), ratedWatts: missing, ratedOhms: ohms(10) }, 'brake-coil-fits'],
    ['by a coarse digit', alone(ohms(52.5, 1)), 'brake-coil-too-close'],
    ['by a coarse digit, low', alone(ohms(43.5, 1)), 'brake-coil-too-close'],
    ['by a coarse digit, far too low', alone(ohms(35.8, 1)), 'brake-coil-too-close'],
    ['by a coarse digit, far too high', alone(ohms(60.2, 1)), 'brake-coil-too-close'],
    ['by a meter of 2 %', { ...alone(ohms(52)), instrument: { percent: 2 } }, 'brake-coil-too-close'],
    ['under a range above its low end', alone(underOhms(36)), 'brake-coil-too-close'],
    ['under a range below that', alone(underOhms(35.9)), 'brake-coil-low'],
    ['beyond a meter up to 80 Ω', { ...alone(ohms(90)), instrument: { upperLimit: 80 } }, 'brake-coil-too-close'],
    ['OL of a meter up to 80 Ω', { ...alone(overOhms()), instrument: { upperLimit: 80 } }, 'brake-coil-open'],
    ['OL of a meter up to 50 Ω', { ...alone(overOhms()), instrument: { upperLimit: 50 } }, 'brake-coil-over-range'],
    ['over its high end', alone(overOhms(60)), 'brake-coil-over-range'],
    ['over more', alone(overOhms(60.1)), 'brake-coil-open'],
    // 254.5 / 414.5 at the hottest and 254.5 / 214.5 at the coldest: surely off only below 30.34 and above 97.72 Ω.
    ['low at any temperature', anyTemperature(ohms(30.3)), 'brake-coil-low'],
    ['not quite', anyTemperature(ohms(30.4)), 'brake-coil-too-close'],
    ['high at any temperature', anyTemperature(ohms(97.8)), 'brake-coil-high'],
    ['not quite', anyTemperature(ohms(97.7)), 'brake-coil-too-close'],
    ['open at any temperature', anyTemperature(overOhms(97.8)), 'brake-coil-open'],
    ['not quite', anyTemperature(overOhms(97.7)), 'brake-coil-over-range'],
    // 48 Ω · 414.5 / 254.5 and · 214.5 / 254.5.
    ['as hot as copper may be', at(180, 78.18), 'brake-coil-fits'],
    ['hotter', at(180.1, 78.18), 'brake-coil-too-close'],
    ['hotter, and low at any temperature', at(180.1, 30.3), 'brake-coil-low'],
    ['as cold as it may be', at(-20, 40.46), 'brake-coil-fits'],
    ['colder', at(-20.1, 40.46), 'brake-coil-too-close'],
    // The cores have 0 to 1.275 Ω.
    ['through the cores, at the upper mark', throughCores(ohms(52.8)), 'brake-coil-fits'],
    ['more', throughCores(ohms(52.9)), 'brake-coil-too-close'],
    ['through the cores, at the lower mark', throughCores(ohms(44.5)), 'brake-coil-fits'],
    ['less', throughCores(ohms(44.4)), 'brake-coil-too-close'],
    ['through the cores, at the low end', throughCores(ohms(36)), 'brake-coil-too-close'],
    ['less', throughCores(ohms(35.9)), 'brake-coil-low'],
    ['through the cores, at the high end', throughCores(ohms(61.2)), 'brake-coil-too-close'],
    ['more', throughCores(ohms(61.3)), 'brake-coil-high'],
    // An open core reads the same.
    ['open through the cores', throughCores(overOhms()), 'brake-coil-over-range'],
  ];
  it.each(rows)('%s: %j', (_, change, code) => {
    const said = assess(change).findings.map((one) => one.code);
    expect(said.filter((one) => one.startsWith('brake-coil-') && !one.endsWith('-missing'))).toEqual([code]);
  });

  const plates: [stated: number, agrees: boolean][] = [
    [43.7, true],
    [43.6, false],
    [53.3, true],
    [53.4, false],
  ];
  it.each(plates)('24 V and 12 W are 48 Ω; the plate says %d Ω', (stated, agrees) => {
    const codes = assess({ ratedOhms: ohms(stated) }).findings.map(({ code }) => code);
    expect(codes.includes('brake-plate-contradicts')).toBe(!agrees);
  });

  it('the ohms of the plate come before those of its watts', () => {
    const { findings } = assess({ ...alone(ohms(50)), ratedOhms: ohms(50) });
    expect(findings.find(({ code }) => code === 'brake-coil-fits')).toMatchObject({ expectedOhms: 50 });
  });

  it('a bound on the plate is no figure', () => {
    for (const change of [{ ratedWatts: { kind: 'over', unit: 'W', atLeast: 12 } }, { ratedVolts: missing }] as const)
      expect(assess(change).findings.map(({ code }) => code)).toContain('brake-plate-missing');
    expect(assess({ ratedOhms: overOhms(90) }).verdict).toBe('go');
    expect(assess({ ratedVolts: volts(0) }).findings.map(({ code }) => code)).toContain('brake-plate-missing');
  });
});
