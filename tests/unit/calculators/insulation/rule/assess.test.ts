import { describe, expect, it } from 'vitest';
import type { InsulationInput } from '../../../../../src/calculators/insulation/rule/input.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { assess, codes, find, sound, steps } from './sound.ts';

describe('a sound winding after a trip', () => {
  it('is go, phase by phase and with its PE pin', () => {
    expect(assess({}).verdict).toBe('go');
    expect(codes({}).slice(0, 4)).toEqual(['phase-good', 'phase-good', 'phase-good', 'pe-short']);
  });

  it('has the warnings of the test', () => {
    expect(codes({})).toEqual(
      expect.arrayContaining(['never-on-drive', 'discharge-after-test', 'charts-do-not-apply']),
    );
  });

  it('is kept as a baseline', () => {
    expect(steps({})).toEqual(['keep-as-baseline']);
  });
});

describe('the numbers of a phase', () => {
  it('are the raw value, the factor, the corrected value and the limit', () => {
    const change = { windingTemperature: typed('40 °C', 'temperature') };
    expect(find(change, 'phase-good')).toMatchObject({
      phase: 'U',
      limitOhms: 100e6,
      referenceCelsius: 20,
      ohms: 700e6,
      corrected: { ohms: 2.8e9, factor: 4 },
    });
  });

  it('of an over-range or under-range are its bound', () => {
    expect(find({ readings: typedPhases('>700M | 1G | 1G') }, 'phase-good')).toMatchObject({
      ohms: 700e6,
      kind: 'over',
    });
    expect(find({ readings: typedPhases('<50M | 1G | 1G') }, 'phase-bad')).toMatchObject({
      ohms: 50e6,
      kind: 'under',
    });
  });

  it('without a temperature have neither factor nor corrected value', () => {
    const bad = find({ windingTemperature: missing, readings: typedPhases('1k | 1k | 1k') }, 'phase-bad');
    expect(bad).toMatchObject({ limitOhms: 100e6, referenceCelsius: 20, ohms: 1000 });
    expect(bad.corrected).toBeUndefined();
  });

  it('name the limits that were used', () => {
    expect(find({}, 'phase-good').limits).toEqual([
      'after-trip-point',
      'reference-temperature-after-trip',
      'halving-rule',
      'halving-validity',
    ]);
    const routine = { occasion: 'routine' as const, correction: 'table' as const };
    expect(find(routine, 'phase-good').limits).toEqual([
      'ieee43-minimum-random-wound',
      'reference-temperature-routine',
      'solid-insulation-to-20',
    ]);
  });
});

describe('the two occasions', () => {
  const readings = typedPhases('30M | 30M | 30M');

  it('judge the same readings by different limits', () => {
    expect(assess({ readings }).verdict).toBe('no-go');
    expect(assess({ readings, occasion: 'routine' }).verdict).toBe('go');
  });

  it('only after a trip is it said that condition charts do not apply', () => {
    expect(codes({ occasion: 'routine' })).not.toContain('charts-do-not-apply');
  });

  it('routine corrects to 40 °C, after a trip to 20 °C', () => {
    expect(find({ occasion: 'routine' }, 'phase-good')).toMatchObject({
      referenceCelsius: 40,
      corrected: { factor: 0.25 },
    });
    expect(find({}, 'phase-good')).toMatchObject({ referenceCelsius: 20, corrected: { factor: 1 } });
  });
});

describe('each required reading', () => {
  it.each([
    ['pe', 'pe-missing', 'measure-pe'],
    ['testVoltage', 'test-voltage-missing', 'state-test-voltage'],
    ['ratedVoltage', 'rated-voltage-missing', 'state-rated-voltage'],
    ['windingTemperature', 'temperature-missing', 'measure-temperature'],
  ] as const)('%s missing: %s, %s', (field, code, next) => {
    const change = { [field]: missing };
    expect(assess(change).verdict).toBe('undecided');
    expect(codes(change)).toContain(code);
    expect(steps(change)).toContain(next);
  });

  it('a phase missing is named', () => {
    expect(find({ readings: typedPhases('700M | | ') }, 'phase-missing').readings).toEqual(['V', 'W']);
  });

  it('a temperature without a value counts as missing', () => {
    const over: InsulationInput['windingTemperature'] = { kind: 'over', unit: '°C', atLeast: 40 };
    expect(codes({ windingTemperature: over })).toContain('temperature-missing');
  });

  it('the rated voltage is needed for the minimum of an old winding', () => {
    const old = { occasion: 'routine' as const, machineClass: 'pre-1970' as const, ratedVoltage: missing };
    expect(assess(old).verdict).toBe('undecided');
    expect(codes(old)).not.toContain('phase-good');
    expect(find({ ...old, ratedVoltage: sound.ratedVoltage }, 'phase-good').limitOhms).toBe(1.4e6);
  });
});

describe('the air', () => {
  const air = (ambient: string, humidity: string, winding = '20 °C') => ({
    ambient: typed(ambient, 'temperature'),
    humidity: typed(humidity, 'percent'),
    windingTemperature: typed(winding, 'temperature'),
  });

  it('is optional', () => {
    expect(codes({})).not.toContain('dew-point-incomplete');
  });

  it('with a dew point at or above the winding holds the judgement back, good or bad', () => {
    const wet = air('25 °C', '80 %');
    expect(assess(wet).verdict).toBe('undecided');
    expect(assess({ ...wet, readings: typedPhases('5k | 5k | 5k') }).verdict).toBe('undecided');
    expect(steps(wet)).toEqual(['dry-first']);
    expect(find(wet, 'winding-at-dew-point').dewPointCelsius).toBeCloseTo(21.3, 1);
  });

  it('saturated at the temperature of the winding is just wet', () => {
    expect(codes(air('20 °C', '100 %', '19.9 °C'))).toContain('winding-at-dew-point');
    expect(codes(air('20 °C', '100 %', '20.1 °C'))).not.toContain('winding-at-dew-point');
  });

  it.each([
    ['25 °C', '', '20 °C', 'undecided'],
    ['25 °C', '', '25 °C', 'undecided'],
    ['25 °C', '', '26 °C', 'go'],
    ['', '50 %', '26 °C', 'undecided'],
    ['25 °C', '0 %', '26 °C', 'go'],
    ['70 °C', '50 %', '26 °C', 'undecided'],
  ])('stated by half (“%s”, “%s”), winding at %s: %s', (ambient, humidity, winding, verdict) => {
    const change = air(ambient, humidity, winding);
    expect(codes(change)).toContain('dew-point-incomplete');
    expect(steps(change)).toContain('measure-air');
    expect(assess(change).verdict).toBe(verdict);
  });
});

describe('the methods', () => {
  it.each([
    ['halving', '-1', 'temperature-out-of-validity'],
    ['halving', '101', 'temperature-out-of-validity'],
    ['thermosetting', '9', 'temperature-out-of-validity'],
    ['thermosetting', '86', 'temperature-out-of-validity'],
    ['table', '71', 'temperature-out-of-validity'],
    ['halving', '0', 'phase-good'],
    ['halving', '100', 'phase-good'],
    ['thermosetting', '10', 'phase-good'],
    ['thermosetting', '85', 'phase-good'],
    ['table', '70', 'phase-good'],
  ] as const)('%s at %s °C: %s', (correction, winding, code) => {
    expect(codes({ correction, windingTemperature: typed(winding, 'temperature') })).toContain(code);
  });

  it('that disagree leave the phase undecided, whichever was chosen, and are named', () => {
    const change = {
      occasion: 'routine' as const,
      readings: typedPhases('8M | 8M | 8M'),
      windingTemperature: typed('25', 'temperature'),
    };
    // At 40 °C 6.5 MΩ by the formula, 2.8 MΩ by halving, 4.2 MΩ by the table, against 5 MΩ.
    for (const correction of ['halving', 'thermosetting', 'table'] as const) {
      expect(codes({ ...change, correction })).toContain('phase-methods-differ');
      expect(codes({ ...change, correction })).not.toContain('phase-good');
    }
    expect(find({ ...change, correction: 'thermosetting' }, 'phase-methods-differ').methods).toEqual([
      'halving',
      'table',
    ]);
    expect(find(change, 'phase-methods-differ').methods).toEqual(['thermosetting']);
    expect(steps(change)).toContain('repeat-near-reference');
  });

  it('that agree, or do not hold, are not mentioned', () => {
    expect(codes({})).not.toContain('phase-methods-differ');
    expect(codes({ windingTemperature: typed('90', 'temperature') })).not.toContain('phase-methods-differ');
  });
});

describe('phases that differ', () => {
  it.each([
    ['200M | 210M | 400M', false],
    ['200M | 210M | 401M', true],
    ['200M | >1G | >1G', true],
    ['>1G | >700M | >1.8G', false],
    ['OL | OL | 200M', false],
    ['200M | 900M | ', true],
    ['200M | | ', false],
  ])('%s: %s', (readings, differ) => {
    expect(codes({ readings: typedPhases(readings) }).includes('phases-differ')).toBe(differ);
  });
});

describe('a long protective conductor', () => {
  it('that reads what its length lets expect does not fail', () => {
    const change = { pe: typed('1.2 Ω'), peConductor: { metres: 85, squareMillimetres: 1.5, amperes: 0.2 } };
    expect(assess(change).verdict).toBe('go');
    expect(find(change, 'pe-short').limits).toContain('pe-core-resistance');
    expect(assess({ pe: typed('1.2 Ω') }).verdict).not.toBe('go');
  });
});

describe('the discharge after the test', () => {
  it.each([
    ['1 min', 4],
    ['10 min', 40],
    ['30 s', 2],
    ['', 4],
  ])('of “%s” takes %d minutes', (text, minutes) => {
    const discharge = find({ testMinutes: typed(text, 'duration') }, 'discharge-after-test');
    expect(discharge).toMatchObject({ times: 4, minutes });
  });
});

describe('a failed winding', () => {
  it('is not to be connected, and cable and motor are separated', () => {
    const change = { readings: typedPhases('5k | 5k | 5k') };
    expect(codes(change)).toContain('insulation-failed');
    expect(steps(change)).toEqual(['separate-cable-and-motor']);
  });

  it('with a broken protective conductor has that to be mended', () => {
    expect(steps({ pe: typed('OL') })).toEqual(['mend-pe', 'repeat-after-pe']);
  });
});
