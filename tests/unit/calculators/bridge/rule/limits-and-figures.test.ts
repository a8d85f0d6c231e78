import { describe, expect, it } from 'vitest';
import type { BridgeFinding } from '../../../../../src/calculators/bridge/rule/findings.ts';
import { missing, ohms } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { assess, type Change, find, minus, plus, worst } from './stage.ts';

const open = plus('OL | OL | OL');

describe('the limits that a finding used', () => {
  const rows: [code: BridgeFinding['code'], Change, limits: string[]][] = [
    ['rail-balanced', {}, ['bridge-tolerance']],
    ['rail-short', plus('470k | 0.3 Ω | 471k'), ['bridge-short']],
    ['rail-all-short', plus('8 Ω | 8 Ω | 8 Ω'), ['bridge-short']],
    ['rail-short-possible', plus('470k | <500k | 471k'), ['bridge-short']],
    ['rail-short-both-ways', { ...plus('8 Ω | 8 Ω | 8 Ω'), plusExchanged: typed('8 Ω') }, ['bridge-short']],
    ['rail-read-forward', { ...plus('8 Ω | 8 Ω | 8 Ω'), plusExchanged: typed('470k') }, ['bridge-short']],
    ['rail-uneven', plus('470k | 410k | 471k'), ['bridge-tolerance', 'bridge-clearly-off']],
    ['rail-unbalanced', plus('470k | 2k | 471k'), ['bridge-tolerance', 'bridge-clearly-off', 'bridge-switch-leak']],
    ['rail-first-odd', plus('300k | 470k | 471k', ''), ['bridge-tolerance']],
    ['rail-still-climbing', plus('470k | 600k | 800k', '900k'), ['bridge-tolerance']],
    ['rail-first-contradicts', plus('0.3 Ω | 470k | 471k', '470k'), ['bridge-metal']],
    ['rail-open', open, ['bridge-open-from']],
    ['rail-range-too-low', plus('>100k | >100k | >100k'), ['bridge-open-from']],
    ['rail-too-close', { ...plus('470k | 480k | 500k'), instrument: { percent: 2 } }, ['bridge-tolerance']],
    ['rail-lower-than-usual', minus('4.7k | 4.7k | 4.7k'), ['bridge-dc-minus-typical']],
    ['all-open', { ...open, ...minus('OL | OL | OL') }, ['tips-together']],
  ];
  it.each(rows)('%s', (code, change, limits) => {
    expect(find(change, code).limits).toEqual(limits);
  });
});

describe('the figures of a finding', () => {
  it('are the lowest of the shorts', () => {
    expect(find(plus('2 Ω | 0.3 Ω | 471k'), 'rail-short')).toMatchObject({
      rail: 'plus',
      suspects: ['plusU', 'plusV'],
      lowestOhms: 0.3,
    });
    expect(find(plus('470k | <1 Ω | 471k'), 'rail-short')).not.toHaveProperty('lowestOhms');
  });

  it('are spread and deviation, and the ones that are odd', () => {
    const uneven = find(plus('470k | 410k | 471k'), 'rail-uneven');
    expect(uneven).toMatchObject({ rail: 'plus', tolerancePercent: 10, high: false, odd: ['plusV'] });
    expect(uneven.differences?.spreadPercent).toBeCloseTo(14.88, 2);
    expect(uneven.differences?.deviationPercent).toBeCloseTo(8.96, 2);
    expect(find(plus('470k | 900k | 471k'), 'rail-uneven')).toMatchObject({ high: true, odd: ['plusV'] });
    const sister = { ...plus('470k | 410k | 471k'), ...worst('411k'), sister: 'alike' as const };
    expect(find(sister, 'rail-as-sister')).toMatchObject({ rail: 'plus', high: false, odd: ['plusV'] });
    expect(find(sister, 'rail-as-sister').differences).toEqual(uneven.differences);
  });

  it('are the suspects, and those of them that leak', () => {
    expect(find(plus('470k | 2k | 471k'), 'rail-unbalanced')).toMatchObject({ suspects: ['plusV'], leaks: ['plusV'] });
    const unlike = { ...plus('470k | 410k | 471k'), ...worst('411k'), sister: 'differs' as const };
    expect(find(unlike, 'rail-unbalanced')).toMatchObject({ suspects: ['plusV'], leaks: [], tolerancePercent: 10 });
  });

  it('are the possible spreads', () => {
    const { range } = find({ ...plus('470k | 480k | 500k'), instrument: { percent: 2 } }, 'rail-too-close');
    expect(range?.leastPercent).toBeCloseTo(2.21, 1);
    expect(range?.mostPercent).toBeCloseTo(10.72, 1);
  });

  it('name the terminal whose short shows on the other rail', () => {
    const change = { ...plus('470k | 0.3 Ω | 471k'), ...minus('47k | 80k | 47k') };
    expect(find(change, 'rail-unbalanced-by-short')).toMatchObject({ rail: 'minus', shorted: ['V'] });
  });

  it('name what a conviction lacks', () => {
    const short = { ...plus('470k | 0.3 Ω | 471k'), ...worst('0.4 Ω') };
    const lacking = (change: Change) => find(change, 'bridge-suspect').lacking;
    expect(lacking({ ...short, motorLeads: 'not-stated' })).toEqual(['motor-leads-off']);
    expect(lacking({ ...short, alsoOnBus: 'something' })).toEqual(['nothing-else-on-bus']);
    expect(lacking({ ...short, ...worst('') })).toEqual(['second-reading']);
  });
});

describe('an impossible figure', () => {
  it('is all that is judged', () => {
    expect(assess({ dcPlus: { ...typedPhases('1k | 1k | 1k'), U: ohms(-1) } })).toEqual({
      verdict: 'undecided',
      findings: [{ code: 'figure-impossible', severity: 'undecided', readings: ['dcPlus.U'], limits: [] }],
      next: [{ code: 'read-figure-again' }],
      drive: 'open',
    });
    expect(assess({ busVoltage: missing }).drive).toBe('open');
  });
});
