import { describe, expect, it } from 'vitest';
import { leadsOf } from '../../../../../src/calculators/winding/rule/leads.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, celsius, find, high, said, steps } from './measured.ts';

const tips = (text: string): Change => ({ leadOhms: typed(text) });

describe('the test leads', () => {
  const rows: [what: string, Change, verdict: string, first: string, next: string | undefined][] = [
    ['not stated', { leads: 'not-stated' }, 'undecided', 'winding-leads-not-stated undecided leads', 'state-leads'],
    [
      'to be subtracted, and not read',
      { leads: 'subtract' },
      'undecided',
      'winding-leads-missing undecided leadOhms',
      'read-leads-together',
    ],
    ['subtracted', { leads: 'subtract', ...tips('0.30 Ω') }, 'go', 'winding-leads-subtracted note leadOhms', undefined],
    [
      'more than the readings',
      { leads: 'subtract', ...tips('30.0 Ω') },
      'undecided',
      'winding-leads-exceed undecided leadOhms',
      'read-leads-together',
    ],
    [
      'four, and yet something',
      { leads: 'four', ...tips('0.3 Ω') },
      'undecided',
      'winding-leads-contradict undecided leadOhms',
      'read-leads-together',
    ],
    [
      'zeroed, and yet something',
      { leads: 'zeroed', ...tips('0.3 Ω') },
      'undecided',
      'winding-leads-contradict undecided leadOhms',
      'read-leads-together',
    ],
    [
      'over-range',
      { leads: 'subtract', ...tips('OL') },
      'undecided',
      'winding-leads-contradict undecided leadOhms',
      'read-leads-together',
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, first, next) => {
    expect(said({ ...high, ...change })[0]).toBe(first);
    expect(assess({ ...high, ...change }).verdict).toBe(verdict);
    expect(steps({ ...high, ...change })[0]).toBe(next);
  });

  it('name their figure, if there is one', () => {
    expect(find({ ...high, leads: 'subtract', ...tips('0.30 Ω') }, 'winding-leads-subtracted').leadOhms).toBe(0.3);
    expect(find({ ...high, leads: 'four', ...tips('0.3 Ω') }, 'winding-leads-contradict').leadOhms).toBe(0.3);
    expect(find({ ...high, leads: 'subtract', ...tips('OL') }, 'winding-leads-contradict')).not.toHaveProperty(
      'leadOhms',
    );
  });

  it('may have added what they read, or anything up to the lowest reading', () => {
    const added = (handling: Parameters<typeof leadsOf>[0], text: string) =>
      leadsOf(handling, text === '' ? missing : typed(text), {}, 2).interval;
    expect(added('not-stated', '')).toEqual({ lo: 0, hi: 0 });
    expect(added('not-stated', '0.3 Ω')).toEqual({ lo: 0, hi: 0.3 });
    expect(added('not-stated', '<0.3 Ω')).toEqual({ lo: 0, hi: 2 });
    expect(added('subtract', '')).toEqual({ lo: 0, hi: 2 });
    expect(added('subtract', 'OL')).toEqual({ lo: 0, hi: 2 });
    expect(added('subtract', '0.3 Ω')).toEqual({ lo: 0.3, hi: 0.3 });
    expect(added('four', '0.3 Ω')).toEqual({ lo: 0, hi: 0.3 });
    expect(added('four', '')).toEqual({ lo: 0, hi: 0 });
  });

  it('that read just as much as the lowest do not exceed it', () => {
    const [first] = leadsOf('subtract', typed('2 Ω'), {}, 2).findings;
    expect(first).toMatchObject({ code: 'winding-leads-subtracted', severity: 'note' });
  });
});

describe('the readings at another temperature', () => {
  it('are corrected by the conductor, to 20 °C or to 25 °C', () => {
    const copper = find({ temperature: celsius('40') }, 'winding-corrected');
    expect(copper).toMatchObject({
      severity: 'note',
      readings: ['windingTemperature'],
      limits: ['winding-zero-copper', 'winding-reference-20'],
      fromCelsius: 40,
      toCelsius: 20,
    });
    // IEC 60034-1: 235 + 20 to 235 + 40 is the usual pair for copper; here by the limit of the table.
    const factor = copper.ohms.UV / 2;
    expect(factor).toBeCloseTo(0.927, 3);
    expect(copper.ohms.VW / 2.004).toBeCloseTo(factor, 9);
    expect(copper.ohms.WU / 2.002).toBeCloseTo(factor, 9);
    const aluminium: Change = { temperature: celsius('40'), conductor: 'aluminium', correctTo: 'to-25' };
    expect(find(aluminium, 'winding-corrected')).toMatchObject({
      limits: ['winding-zero-aluminium', 'winding-reference-25'],
      toCelsius: 25,
    });
  });

  it('outside the validity are not, which is a caution', () => {
    expect(find({ temperature: celsius('300') }, 'winding-not-corrected')).toEqual({
      code: 'winding-not-corrected',
      severity: 'caution',
      readings: ['windingTemperature'],
      limits: ['winding-temperature-validity'],
    });
    expect(steps({ temperature: celsius('300') })).toEqual(['note-temperatures']);
    expect(assess({ temperature: celsius('300') }).verdict).toBe('go');
  });
});

describe('a nameplate or earlier value', () => {
  const at = (reference: string, own = '20', of = '20'): Change => ({
    reference: typed(reference),
    temperature: celsius(own),
    referenceTemperature: celsius(of),
  });
  const rows: [what: string, Change, verdict: string, line: string, next: string[]][] = [
    ['that matches', at('2.0 Ω'), 'go', 'winding-reference-matches pass reference', []],
    ['that is lower', at('1.5 Ω'), 'undecided', 'winding-reference-differs undecided reference', ['compare-at-motor']],
    ['that is higher', at('3 Ω'), 'undecided', 'winding-reference-differs undecided reference', ['compare-at-motor']],
    [
      'whose bound does not tell',
      at('<2.2 Ω'),
      'undecided',
      'winding-reference-too-close undecided reference',
      ['compare-at-motor'],
    ],
    [
      'without temperatures',
      { reference: typed('2.0 Ω') },
      'undecided',
      'winding-reference-no-temperature undecided reference',
      ['note-temperatures'],
    ],
    [
      'whose own temperature is impossible',
      at('2.0 Ω', '20', '300'),
      'undecided',
      'winding-not-corrected undecided referenceTemperature',
      ['note-temperatures'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, line, next) => {
    expect(said(change)).toContain(line);
    expect(assess(change).verdict).toBe(verdict);
    expect(steps(change)).toEqual(next);
  });

  it('beside a winding outside the validity names the winding', () => {
    expect(said(at('2.0 Ω', '300'))).toContain('winding-not-corrected undecided windingTemperature');
  });

  it('names its temperature, the tolerance and how far it is off', () => {
    const limits = ['winding-reference-difference', 'winding-zero-copper'];
    expect(find(at('2.0 Ω'), 'winding-reference-matches')).toMatchObject({
      limits,
      atCelsius: 20,
      tolerancePercent: 10,
    });
    const higher = find(at('1.5 Ω'), 'winding-reference-differs');
    expect(higher).toMatchObject({ limits, atCelsius: 20, tolerancePercent: 10 });
    expect(higher.apartPercent).toBeCloseTo(33.4, 1);
    expect(find(at('3 Ω'), 'winding-reference-differs').apartPercent).toBeCloseTo(-33.2, 1);
    expect(find(at('<1.5 Ω'), 'winding-reference-differs')).not.toHaveProperty('apartPercent');
  });

  it('is compared at its own temperature', () => {
    // 2.002 Ω at 40 °C are 1.856 Ω at 20 °C: 10 % of 1.70 Ω reaches that, 10 % of 1.65 Ω does not.
    expect(said(at('1.70 Ω', '40'))).toContain('winding-reference-matches pass reference');
    expect(said(at('1.65 Ω', '40'))).toContain('winding-reference-differs undecided reference');
    expect(said(at('2.1 Ω', '40'))).not.toContain('winding-reference-matches pass reference');
  });
});
