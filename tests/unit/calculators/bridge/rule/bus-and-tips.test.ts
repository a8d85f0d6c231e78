import { describe, expect, it } from 'vitest';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, codes, find, minus, plus, steps } from './stage.ts';

describe('DC+ to DC−', () => {
  it.each([
    ['', [], 'go'],
    ['0.3 Ω', ['bus-shorted fail'], 'no-go'],
    ['10 Ω', ['bus-shorted fail'], 'no-go'],
    ['11 Ω', ['bus-low undecided'], 'undecided'],
    ['1000 Ω', ['bus-low undecided'], 'undecided'],
    ['1001 Ω', ['bus-not-shorted pass'], 'go'],
    ['OL', ['bus-not-shorted pass'], 'go'],
  ] as const)('“%s”: %s', (text, said, verdict) => {
    const { findings, verdict: given } = assess({ dcBus: typed(text) });
    const ofBus = findings.filter(({ readings }) => readings.join() === 'dcBus');
    expect(ofBus.map(({ code, severity }) => `${code} ${severity}`)).toEqual(said);
    expect(given).toBe(verdict);
  });

  it('that reads low is cleared and read again', () => {
    expect(steps({ dcBus: typed('11 Ω') })).toEqual(['clear-the-bus', 'read-bus-again']);
    expect(steps({ dcBus: typed('0.3 Ω') }).slice(0, 2)).toEqual(['clear-the-bus', 'read-bus-again']);
  });
});

describe('the tips held together', () => {
  const open: Change = { ...plus('OL | OL | OL'), ...minus('OL | OL | OL') };

  it('are asked for if all six are open', () => {
    expect(find(open, 'all-open')).toMatchObject({ severity: 'undecided', readings: ['tipsTogether'] });
    expect(assess(open).verdict).toBe('undecided');
    expect(steps(open)).toContain('hold-tips-together');
    expect(codes(plus('OL | OL | OL'))).not.toContain('all-open');
  });

  it('prove the leads if they read next to nothing', () => {
    const proven = { ...open, tipsTogether: typed('0.3 Ω') };
    expect(find(proven, 'tips-together-proven')).toMatchObject({
      severity: 'pass',
      readings: ['tipsTogether'],
      limits: ['tips-together'],
    });
    expect(assess(proven).verdict).toBe('go');
    for (const text of ['OL', '470k']) expect(assess({ ...open, tipsTogether: typed(text) }).verdict).toBe('undecided');
  });
});

describe('a rail that reads lower than usual', () => {
  const low = minus('4.7k | 4.7k | 4.7k');

  it.each<[what: string, Change, severity: string, next: string[]]>([
    ['alone', {}, 'undecided', ['exchange-leads', 'compare-known-good']],
    ['with a sister that is alike', { sister: 'alike' }, 'caution', ['compare-known-good', 'test-insulation-next']],
    [
      'with the leads exchanged no higher',
      { minusExchanged: typed('4.6k') },
      'caution',
      ['compare-known-good', 'test-insulation-next'],
    ],
  ])('%s', (_, change, severity, next) => {
    expect(find({ ...low, ...change }, 'rail-lower-than-usual')).toMatchObject({
      severity,
      readings: ['minusU', 'minusV', 'minusW'],
      rail: 'minus',
      usual: 'bridge-dc-minus-typical',
    });
    expect(steps({ ...low, ...change })).toEqual(next);
  });

  it('was read forward if it reads more with the leads exchanged', () => {
    const change = { ...low, minusExchanged: typed('47k') };
    expect(find(change, 'rail-read-forward')).toMatchObject({
      severity: 'undecided',
      readings: ['minusU', 'minusV', 'minusW', 'minusExchanged'],
      limits: ['bridge-dc-minus-typical'],
    });
    expect(assess(change).verdict).toBe('undecided');
  });
});
