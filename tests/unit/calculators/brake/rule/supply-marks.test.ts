import { describe, expect, it } from 'vitest';
import { metres, missing, ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { assess, type Change } from './sound.ts';

// Common practice, no source, worked out by hand.

const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });
const under = (atMost: number): Reading => ({ kind: 'under', unit: 'V', atMost });
const over = (atLeast: number): Reading => ({ kind: 'over', unit: 'V', atLeast });
const plug = (plugVolts: Reading, tolerance: Reading = missing): Change => ({
  plugVolts,
  sourceVolts: missing,
  supplyTolerance: tolerance,
});
const source = (sourceVolts: Reading, more: Change = {}): Change => ({ plugVolts: missing, sourceVolts, ...more });
/** Rated volts, and ohms of the plate. */
const of = (rated: number, coil: number): Change => ({
  ratedVolts: volts(rated),
  ratedWatts: missing,
  ratedOhms: ohms(coil),
});
/** A metre of 0.75 mm²: 0.052 Ω in both cores, 2.065 Ω at the end. */
const short: Change = { cable: { metres: metres(1), squareMillimetres: 0.75 } };
const between = (sourceVolts: number, plugVolts: number, step?: number): Change => ({
  sourceVolts: volts(sourceVolts, step),
  plugVolts: volts(plugVolts, step),
});

describe('the voltage at its marks', () => {
  const rows: [what: string, Change, code: string][] = [
    ['by the manual, 5 % low', plug(volts(22.8), percent(5)), 'brake-supply-fits'],
    ['less', plug(volts(22.7), percent(5)), 'brake-supply-low'],
    ['by the manual, 5 % high', plug(volts(25.2), percent(5)), 'brake-supply-fits'],
    ['more', plug(volts(25.3), percent(5)), 'brake-supply-high'],
    ['the widest manual, 25 % low', plug(volts(18), percent(60)), 'brake-supply-fits'],
    ['less', plug(volts(17.9), percent(60)), 'brake-supply-low'],
    // 10 · 1.1 is 11 in binary fractions too.
    ['10 % high of 10 V', { ...plug(volts(11)), ...of(10, 48) }, 'brake-supply-fits'],
    ['under 18 V', plug(under(18)), 'brake-supply-too-close'],
    ['under less', plug(under(17.9)), 'brake-supply-low'],
    ['over 30 V', plug(over(30)), 'brake-supply-too-close'],
    ['over more', plug(over(30.1)), 'brake-supply-high'],
    ['10 % low by tenths', plug(volts(21.7, 0.1)), 'brake-supply-fits'],
    ['less by tenths', plug(volts(21.6, 0.1)), 'brake-supply-too-close'],
    ['10 % high by tenths', plug(volts(26.4, 0.1)), 'brake-supply-too-close'],
    ['25 % low by volts', plug(volts(17.8, 1)), 'brake-supply-too-close'],
    ['25 % high by volts', plug(volts(30.2, 1)), 'brake-supply-too-close'],
    ['0.0 kV', plug(volts(0, 100)), 'brake-supply-too-close'],
    ['in kilovolts', plug(volts(20, 10), percent(25)), 'brake-supply-too-close'],
    ['in kilovolts at the source', source(volts(20, 10), { supplyTolerance: percent(25) }), 'brake-supply-too-close'],
    ['at the source only', source(volts(24)), 'brake-supply-fits'],
    // 22.1 · 48 / 49.275 = 21.53 V may be at the brake.
    ['at the source only, low', source(volts(22.1)), 'brake-supply-too-close'],
    ['at the source only, 22.2 V', source(volts(22.2)), 'brake-supply-fits'],
    ['at the source only, high', source(volts(26.5)), 'brake-supply-too-close'],
    ['at the source only, far too low', source(volts(17.9)), 'brake-supply-low'],
    ['a bound at the source', source(over(24)), 'brake-supply-missing'],
    ['at the source only, cores close', source(volts(24), { atDrive: ohms(49.6) }), 'brake-supply-missing'],
    ['at the source only, cores not known', source(volts(24), { cable: { metres: missing } }), 'brake-supply-missing'],
    ['at the source only, no watts', source(volts(24), { ratedWatts: missing }), 'brake-supply-missing'],
  ];
  it.each(rows)('%s: %j', (_, change, code) => {
    const said = assess(change).findings.map((one) => one.code);
    expect(said.filter((one) => one.startsWith('brake-supply-'))).toEqual([code]);
  });

  it('a bound below has half of it as its figure, a bound above none', () => {
    expect(found(assess(plug(under(16))).findings, 'brake-supply-low').volts).toBe(8);
    expect(found(assess(plug(over(31))).findings, 'brake-supply-high')).not.toHaveProperty('volts');
  });
});

describe('what is lost on the way, at its marks', () => {
  const rows: [what: string, Change, code: string][] = [
    // The cores take at most 24 / 36 · 2.975 = 1.983 V.
    ['1.98 V', between(24, 22.02), 'brake-drop'],
    ['more', between(24, 22.01), 'brake-drop-unclear'],
    // And two readings differ by 0.48 V.
    ['2.46 V', between(24, 21.54), 'brake-drop-unclear'],
    ['more', between(24, 21.53), 'brake-drop-high'],
    ['2.5 V by tenths', between(24, 21.5, 0.1), 'brake-drop-unclear'],
    ['2.6 V by tenths', between(24, 21.4, 0.1), 'brake-drop-high'],
    // The rated voltage counts if the source has less, and the source if it has more: 27 / 36 · 2.975 = 2.231 V.
    ['1.8 V of a low source', between(20, 18.2), 'brake-drop'],
    ['2.2 V of a high source', between(27, 24.8), 'brake-drop'],
    ['2.3 V of a high source', between(27, 24.7), 'brake-drop-unclear'],
    // 12 / 7.5 · 2.065 = 3.304 V, and 15 / 7.5 · 2.065 + 0.2 = 4.33 V, in binary fractions too.
    ['3.304 V of 12 V', { ...short, ...of(10, 10), ...between(12, 8.696) }, 'brake-drop'],
    ['4.33 V of 15 V', { ...short, ...of(10, 10), ...between(15, 10.67) }, 'brake-drop-unclear'],
    ['2 V above its source of 20 V', { ...of(20, 48), ...between(19, 21) }, 'brake-drop'],
    ['more', { ...of(20, 48), ...between(19, 21.1) }, 'brake-drop-contradicts'],
    ['3 V of cores not known', { ...between(24, 21), cable: { metres: missing } }, 'brake-drop'],
    ['3 V of a coil not known', { ...between(24, 21), ratedWatts: missing }, 'brake-drop'],
  ];
  it.each(rows)('%s: %j', (_, change, code) => {
    const said = assess(change).findings.map((one) => one.code);
    expect(said.filter((one) => one.startsWith('brake-drop') && one !== 'brake-drop-expected')).toEqual([code]);
  });

  it('a bound says nothing of what is lost', () => {
    for (const change of [{ sourceVolts: over(24) }, { plugVolts: under(24) }, { plugVolts: over(1) }])
      expect(assess(change).findings.map(({ code }) => code)).not.toContain('brake-drop');
  });

  it('nothing is expected of a coil or of cores that are not known', () => {
    for (const change of [{ ratedWatts: missing }, { cable: { metres: missing } }])
      expect(assess(change).findings.map(({ code }) => code)).not.toContain('brake-drop-expected');
  });

  it('what the cores take by the table is a caution above a tenth', () => {
    // 0.78 Ω of cores: a tenth of the whole beside 7.02 Ω.
    const drop = (coil: number) =>
      found(assess({ ratedWatts: missing, ratedOhms: ohms(coil) }).findings, 'brake-drop-expected');
    expect(drop(7.1)).toMatchObject({ severity: 'note', percent: expect.closeTo(9.898, 3) });
    expect(drop(6.9)).toMatchObject({ severity: 'caution', percent: expect.closeTo(10.156, 3) });
    // 0.052 Ω beside 0.468 Ω are a tenth in binary fractions too.
    const { findings } = assess({ ...short, ...of(10, 0.468) });
    expect(found(findings, 'brake-drop-expected')).toMatchObject({ severity: 'note', percent: 10 });
    expect(drop(7.1).volts).toBeCloseTo(2.3756, 4);
  });
});
