import { describe, expect, it } from 'vitest';
import { missing, ohms } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { alike, assess, type Change, codes, find, winding } from './sound.ts';

describe('an impossible figure', () => {
  it('is all that is judged', () => {
    const change = { readings: { ...typedPhases('1G | 1G | 1G'), V: ohms(-5) } };
    expect(assess(change)).toEqual({
      verdict: 'undecided',
      findings: [{ code: 'figure-impossible', severity: 'undecided', readings: ['readings.V'], limits: [] }],
      next: [{ code: 'read-figure-again' }],
    });
  });
});

describe('the joined reading', () => {
  const none = typedPhases(' | | ');
  const together = typed('700M');

  it('stands for all three if none was read singly', () => {
    expect(assess({ readings: none, together }).verdict).toBe('go');
    expect(find({ readings: none, together }, 'phase-good')).toMatchObject({
      phase: 'together',
      readings: ['together'],
    });
    expect(codes({ readings: none, together })).not.toContain('phase-missing');
  });

  it('does not stand for single ones that were begun', () => {
    const change = { readings: typedPhases('700M | | '), together };
    expect(assess(change).verdict).toBe('undecided');
    expect(find(change, 'phase-missing')).toMatchObject({ severity: 'undecided', readings: ['V', 'W'] });
  });

  it('is the one that lacks if the row is joined and nothing was read', () => {
    const change = { readings: none, rowKind: 'joined' as const };
    expect(find(change, 'together-missing')).toMatchObject({ severity: 'undecided', readings: ['together'] });
    expect(codes(change)).not.toContain('phase-missing');
    expect(codes({ readings: none, rowKind: 'single' })).not.toContain('together-missing');
    expect(codes({ readings: typedPhases('700M | | '), rowKind: 'joined' })).not.toContain('together-missing');
  });

  it('is judged beside single readings, and the worse counts', () => {
    expect(assess({ together: typed('5k') }).verdict).toBe('no-go');
  });
});

describe('a terminal', () => {
  it('is named by its reading', () => {
    const judged = assess({}).findings.filter(({ code }) => code === 'phase-good');
    expect(judged.map(({ readings }) => readings)).toEqual([['U'], ['V'], ['W']]);
  });

  it('has no figure if the range of an over-range was not noted', () => {
    const { ohms: figure, corrected, kind } = find(alike('OL'), 'phase-bound-too-low');
    expect([figure, corrected, kind]).toEqual([undefined, undefined, 'over']);
    expect(find(alike('under range'), 'phase-bound-too-low')).not.toHaveProperty('ohms');
  });

  it('read through a filter is not judged', () => {
    for (const text of ['5k', '700M']) {
      const change: Change = { filter: 'fitted', ...alike(text) };
      expect(assess(change).verdict).toBe('undecided');
      expect(codes(change).filter((code) => code.startsWith('phase'))).toEqual([]);
    }
  });
});

describe('the temperature', () => {
  it('that lacks leaves the verdict open and is named', () => {
    expect(find({ windingTemperature: missing }, 'temperature-missing')).toMatchObject({
      severity: 'undecided',
      readings: ['windingTemperature'],
    });
  });

  it('outside the validity names the method, its limits and its range', () => {
    expect(find(winding('101 °C'), 'temperature-out-of-validity')).toEqual({
      code: 'temperature-out-of-validity',
      severity: 'undecided',
      readings: [],
      limits: ['halving-rule', 'halving-validity'],
      method: 'halving',
      fromCelsius: 0,
      toCelsius: 100,
    });
  });
});

describe('the PE pin', () => {
  it.each([
    ['0.2 Ω', 'pe-short', 'pass', 'go'],
    ['1 Ω', 'pe-short', 'pass', 'go'],
    ['2 Ω', 'pe-higher-than-expected', 'undecided', 'undecided'],
    ['OL', 'pe-not-short', 'fail', 'no-go'],
    ['0 MΩ', 'pe-not-proven', 'undecided', 'undecided'],
    ['', 'pe-missing', 'undecided', 'undecided'],
  ] as const)('“%s”: %s, %s', (text, code, severity, verdict) => {
    const change = { pe: typed(text) };
    expect(find(change, code)).toMatchObject({ severity, readings: ['PE'] });
    expect(assess(change).verdict).toBe(verdict);
  });

  it('that is open says what else has to be known of the frame', () => {
    expect(codes({ pe: typed('OL') })).toContain('pe-frame-not-stated');
    expect(codes({ pe: typed('OL'), frameEarthed: 'only-pe' })).toContain('pe-frame-only-by-pe');
    expect(codes({ pe: typed('OL'), frameEarthed: 'only-pe' })).not.toContain('pe-frame-not-stated');
  });
});

describe('phases that differ', () => {
  it('are a caution that names them and its limit', () => {
    expect(find({ readings: typedPhases('200M | 210M | 401M') }, 'phases-differ')).toEqual({
      code: 'phases-differ',
      severity: 'caution',
      readings: ['U', 'V', 'W'],
      limits: ['phase-difference'],
      ratio: 2,
    });
  });

  it('through a filter say nothing', () => {
    expect(codes({ filter: 'fitted', readings: typedPhases('200M | 210M | 401M') })).not.toContain('phases-differ');
  });
});

describe('a form-wound machine', () => {
  const volts = (text: string) => ({ ratedVoltage: typed(text, 'voltage') });
  const routine = { occasion: 'routine', machineClass: 'form-wound' } as const;

  it.each<[Change, boolean]>([
    [{ ...routine, ...volts('400 V') }, true],
    [{ ...routine, ...volts('999 V') }, true],
    [{ ...routine, ...volts('1000 V') }, false],
    [{ ...routine, ...volts('') }, false],
    [{ ...routine, ...volts('400 V'), machineClass: 'random-wound' }, false],
    [{ ...routine, ...volts('400 V'), occasion: 'after-trip' }, false],
  ])('below 1 kV is unlikely: case %#', (change, unlikely) => {
    expect(codes(change).includes('form-wound-below-1-kv')).toBe(unlikely);
  });

  it('is a caution with the limit of the other class', () => {
    expect(find({ ...routine, ...volts('400 V') }, 'form-wound-below-1-kv')).toEqual({
      code: 'form-wound-below-1-kv',
      severity: 'caution',
      readings: [],
      limits: ['ieee43-minimum-random-wound'],
    });
  });
});

describe('the rated voltage', () => {
  it('that lacks does not keep a bad winding of a class without it from being no-go', () => {
    const change: Change = { occasion: 'routine', ratedVoltage: missing, ...alike('1k') };
    expect(codes(change)).toContain('phase-bad');
    expect(assess(change).verdict).toBe('no-go');
  });
});

describe('what is said of the whole', () => {
  it('is all that is said of a sound winding', () => {
    const test = ['never-on-drive', 'discharge-after-test'];
    const cable = ['pe-short', 'pe-by-multimeter', 'idle-cores-at-pe', 'insulation-passed'];
    const three = ['phase-good', 'phase-good', 'phase-good'];
    expect(codes({})).toEqual([...three, ...cable, 'charts-do-not-apply', ...test]);
    expect(codes({ occasion: 'routine' })).toEqual([...three, ...cable, ...test]);
    const together = { readings: typedPhases(' | | '), together: typed('700M') };
    expect(codes(together)).toEqual(['phase-good', ...cable, 'charts-do-not-apply', ...test]);
  });

  const severities = (change: Change) =>
    assess(change).findings.flatMap(({ code, severity }) => (severity === 'note' ? [code] : []));

  it('is a note and decides nothing', () => {
    const always = ['never-on-drive', 'discharge-after-test'];
    expect(severities({})).toEqual(['pe-by-multimeter', 'insulation-passed', 'charts-do-not-apply', ...always]);
    expect(severities({ occasion: 'routine' })).toEqual(['pe-by-multimeter', 'insulation-passed', ...always]);
    expect(severities(alike('5k'))).toEqual([
      'pe-by-multimeter',
      'insulation-failed',
      'charts-do-not-apply',
      ...always,
    ]);
  });
});
