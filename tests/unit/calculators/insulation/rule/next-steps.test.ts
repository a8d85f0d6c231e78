import { describe, expect, it } from 'vitest';
import { missing, ohms } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { air, alike, assess, type Change, steps, winding } from './sound.ts';

const none = typedPhases(' | | ');

describe('what lacks is asked for, and nothing else', () => {
  const rows: [what: string, Change, next: string[]][] = [
    ['single readings', { readings: none }, ['measure-phases']],
    ['the joined reading', { readings: none, rowKind: 'joined' }, ['measure-together']],
    ['idle cores that hang free', { idleCores: 'free' }, ['join-idle-cores']],
    ['idle cores of which nothing is stated', { idleCores: 'not-stated' }, ['join-idle-cores']],
    ['a filter', { filter: 'fitted' }, ['take-filter-off']],
    ['PE not read', { pe: missing }, ['measure-pe']],
    ['PE zero in megohms', { pe: typed('0 MΩ') }, ['measure-pe-low-range']],
    ['PE higher than expected', { pe: typed('2 Ω') }, ['measure-pe-low-range']],
    ['no temperature', { windingTemperature: missing }, ['measure-temperature']],
    ['no temperature of a bad one', { ...alike('1k'), windingTemperature: missing }, ['measure-temperature']],
    ['a temperature outside the method', winding('101 °C'), ['other-method-or-temperature']],
    ['a test voltage of a multimeter', { testVoltage: typed('9 V', 'voltage') }, ['use-insulation-tester']],
    ['the humidity', air('25 °C', ''), ['measure-air']],
    ['an over-range without its range', alike('OL'), ['note-range']],
    ['an under-range above the after-trip limit', alike('<1G'), ['repeat-more-exactly']],
    ['an impossible figure', { readings: { ...typedPhases('1G | 1G | 1G'), U: ohms(-5) } }, ['read-figure-again']],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(assess(change).verdict).not.toBe('go');
    const withoutFail = steps(change).filter((code) => code !== 'separate-cable-and-motor');
    expect(withoutFail).toEqual(next);
  });

  it('air that is not stated beside a cold winding is asked for although it passes', () => {
    expect(steps(winding('19 °C'))).toEqual(['measure-air', 'keep-as-baseline']);
    expect(steps(winding('20 °C'))).toEqual(['keep-as-baseline']);
  });

  it('phases that differ are looked into although they pass', () => {
    expect(steps({ readings: typedPhases('200M | 210M | 401M') })).toEqual(['find-contact', 'keep-as-baseline']);
  });
});

describe('another temperature', () => {
  it('of a winding that only its warmth fails, or only its cold passes', () => {
    expect(steps({ ...alike('60M'), ...winding('40 °C') })).toEqual(['let-cool']);
    expect(steps({ ...alike('150M'), ...winding('10 °C') })).toEqual(['measure-air', 'let-warm']);
  });

  it('of one that the methods judge differently: towards room temperature', () => {
    const thermosetting = { correction: 'thermosetting' as const };
    expect(steps({ ...thermosetting, ...alike('30M'), ...winding('40 °C') })).toEqual(['let-cool']);
    expect(steps({ ...thermosetting, ...alike('150M'), ...winding('10 °C') })).toEqual(['measure-air', 'let-warm']);
    const routine = { occasion: 'routine' as const, ...alike('8M'), ...winding('25 °C') };
    expect(steps(routine)).toEqual(['repeat-near-reference']);
  });

  it('of one that is too close to the point as read, if it is clear at room temperature', () => {
    // 25 MΩ at 40 °C is 100 MΩ at 20 °C by halving: just the point. 200 MΩ at 10 °C is 100 MΩ: not below it.
    const at40 = (text: string, counts: number) =>
      steps({ ...alike(text), ...winding('40 °C'), instrument: { counts } });
    expect(at40('25M', 100)).toEqual(['let-cool', 'repeat-more-exactly']);
    expect(at40('20M', 90)).toEqual(['repeat-more-exactly']);
    const at10 = (text: string, counts: number) =>
      steps({ ...alike(text), ...winding('10 °C'), instrument: { counts } });
    expect(at10('199M', 150)).toEqual(['measure-air', 'let-warm', 'repeat-more-exactly']);
    expect(at10('200M', 150)).toEqual(['measure-air', 'repeat-more-exactly']);
  });

  it.each([
    ['at room temperature, above the after-trip limit', { ...alike('105M') }],
    ['at room temperature, below the after-trip limit', { ...alike('99M') }],
    ['in routine, where the corrected value counts', { occasion: 'routine', ...alike('1.28M'), ...winding('60 °C') }],
  ] as const)('is of no use to one that is too close %s', (_, change) => {
    expect(steps({ ...change, instrument: { percent: 10 } })).toEqual(['repeat-more-exactly']);
  });

  it('is of no use to one that passes or fails at its own', () => {
    expect(steps(winding('40 °C'))).toEqual(['keep-as-baseline']);
    expect(steps({ ...alike('5k'), ...winding('10 °C') })).toEqual(['measure-air', 'separate-cable-and-motor']);
  });

  it('is not guessed where none was stated', () => {
    const change = { ...alike('105M'), windingTemperature: missing, instrument: { percent: 10 } };
    expect(steps(change)).toEqual(['measure-temperature', 'repeat-more-exactly']);
  });
});
