import { describe, expect, it } from 'vitest';
import { volts } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, codes, find, minus, plus, said, worst } from './stage.ts';

describe('the odd ones of a rail', () => {
  it('are those that disagree with the most others', () => {
    expect(find(plus('430k | 470k | 480k'), 'rail-uneven')).toMatchObject({ odd: ['plusU', 'plusW'], high: false });
    expect(find(plus('470k | 410k | 471k'), 'rail-uneven')).toMatchObject({ odd: ['plusV'], high: false });
    expect(find(plus('470k | 540k | 471k'), 'rail-uneven')).toMatchObject({ odd: ['plusV'], high: true });
  });

  it('are unbalanced if any two are clearly off, uneven if none are', () => {
    expect(codes(plus('250k | 170k | 100k'))).toContain('rail-unbalanced');
    expect(codes(plus('190k | 140k | 100k'))).toContain('rail-uneven');
  });

  it('leak only if clearly below each of the others', () => {
    expect(find(plus('45k | 20k | 30k'), 'rail-unbalanced').leaks).toEqual([]);
    expect(find(plus('45k | 20k | 44k'), 'rail-unbalanced').leaks).toEqual(['plusV']);
    // More than a leaky switch can have.
    expect(find(plus('470k | 31k | 471k'), 'rail-unbalanced').leaks).toEqual([]);
    expect(find(plus('470k | 30k | 471k'), 'rail-unbalanced').leaks).toEqual(['plusV']);
  });

  it('keep their leaks beside a sister that differs', () => {
    expect(find({ ...plus('470k | 2k | 471k'), sister: 'differs' }, 'rail-unbalanced').leaks).toEqual(['plusV']);
    expect(find({ ...plus('470k | 2k | 471k'), sister: 'alike' }, 'rail-unbalanced').leaks).toEqual(['plusV']);
  });

  it('are those of the model if a second reading of one of them stands', () => {
    expect(codes({ ...plus('430k | 470k | 480k'), sister: 'alike' })).toContain('rail-as-sister');
    expect(codes({ ...plus('430k | 470k | 480k', ''), sister: 'alike' })).not.toContain('rail-as-sister');
  });
});

describe('an over-range among readings', () => {
  it('whose bound does not tell needs a higher range', () => {
    expect(find(plus('470k | >480k | 471k'), 'rail-range-too-low')).toMatchObject({
      readings: ['plusU', 'plusV', 'plusW'],
      limits: ['bridge-tolerance'],
      rail: 'plus',
    });
  });

  it('of three, one on a low range, is not open', () => {
    expect(codes(plus('>100k | >1M | >1M'))).toContain('rail-range-too-low');
    expect(codes(plus('>1M | >1M | >1M'))).not.toContain('rail-range-too-low');
  });

  it('without its range is named once a rail', () => {
    const notNoted = said(plus('470k | OL | OL')).filter((one) => one.startsWith('rail-range-not-noted'));
    expect(notNoted).toEqual(['rail-range-not-noted caution plusV']);
  });
});

describe('a sister that differs', () => {
  const differs = (change: Change) => codes({ ...change, sister: 'differs' }).includes('sister-differs');

  it('is named if a rail passes and nothing fails', () => {
    expect(differs({})).toBe(true);
    expect(differs(plus('300k | 470k | 471k', '470k'))).toBe(true);
    expect(differs({ ...plus('OL | OL | OL'), ...minus('47k | | 47k') })).toBe(true);
    expect(differs({ instrument: { percent: 6 } })).toBe(false);
    expect(differs(plus('470k | 0.3 Ω | 471k'))).toBe(false);
  });
});

describe('U read forward', () => {
  it('is seen at any of the three that reads less than with the leads exchanged', () => {
    expect(codes({ ...minus('4.0k | 4.2k | 4.4k'), minusExchanged: typed('4.7k') })).toContain('rail-read-forward');
    expect(codes({ ...minus('4.4k | 4.4k | 4.4k'), minusExchanged: typed('4.7k') })).not.toContain('rail-read-forward');
  });
});

describe('a second reading', () => {
  it('of U is none of another terminal', () => {
    // U was a short at first and is none at the end: that says nothing of V.
    expect(assess(plus('0.3 Ω | 0.4 Ω | 471k', '470k')).drive).toBe('suspect');
    expect(assess(plus('0.3 Ω | 470k | 471k', '0.4 Ω')).drive).toBe('convicted');
  });

  it('of nothing odd has to agree with all three of one rail', () => {
    expect(codes({ ...plus('470k | 480k | 510k'), ...worst('465k') })).not.toContain('again-does-not-fit');
    expect(codes({ ...plus('470k | 480k | 510k'), ...worst('440k') })).toContain('again-does-not-fit');
    expect(codes(worst('47k'))).not.toContain('again-does-not-fit');
  });
});

describe('what bars every judgement', () => {
  it('are the motor leads on the drive, and leads of which nothing is stated bar go', () => {
    expect(assess({ motorLeads: 'connected' }).findings).toEqual([
      { code: 'motor-leads-connected', severity: 'undecided', readings: ['motorLeads'], limits: [] },
    ]);
    expect(find({ motorLeads: 'not-stated' }, 'motor-leads-not-stated')).toMatchObject({
      severity: 'undecided',
      readings: ['motorLeads'],
    });
  });

  it('is no bus voltage whose sign only shows the polarity of the leads', () => {
    expect(assess({ busVoltage: volts(-0.02) }).verdict).toBe('go');
  });

  it('are tips of more than two ohms if all six are open', () => {
    const open: Change = { ...plus('OL | OL | OL'), ...minus('OL | OL | OL') };
    const tips = (text: string) => assess({ ...open, tipsTogether: typed(text) }).verdict;
    expect([tips('2.0 Ω'), tips('2.1 Ω')]).toEqual(['go', 'undecided']);
  });

  it('are the limits of the bus, which are named', () => {
    expect(find({ dcBus: typed('10 Ω') }, 'bus-shorted').limits).toEqual(['bridge-metal']);
    expect(find({ dcBus: typed('11 Ω') }, 'bus-low').limits).toEqual(['bridge-short']);
    expect(find({ dcBus: typed('1001 Ω') }, 'bus-not-shorted').limits).toEqual(['bridge-short']);
  });
});
