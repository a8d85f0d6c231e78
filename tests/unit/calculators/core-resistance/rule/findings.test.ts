import { describe, expect, it } from 'vitest';
import { celsius, metres, missing, ohms, overOhms } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change } from './sound.ts';

// Table: IEC 60228, class 5. The allowances are the project's judgement.

const marks = 'pe-core-resistance pe-core-tolerance pe-contacts pe-dead-short';

describe('what is found, which readings it names, and what comes next', () => {
  const fits = `core-fits pass reading: ${marks}`;
  const rows: [what: string, Change, lines: string[], next: string[]][] = [
    ['sound', {}, [fits], []],
    [
      'way not stated',
      { way: 'not-stated' },
      ['core-way-not-stated undecided way', 'core-data-missing undecided metres squareMillimetres'],
      ['state-core-way', 'measure-core-data'],
    ],
    [
      'meter not stated',
      { meter: 'not-stated' },
      ['core-meter-not-stated undecided meter', fits],
      ['state-core-meter'],
    ],
    ['on at both ends', { end: 'on' }, ['core-other-path-possible undecided end', fits], ['take-one-end-off']],
    ['end not stated', { end: 'not-stated' }, ['core-end-not-stated undecided end', fits], ['take-one-end-off']],
    [
      'length not known',
      { metres: missing },
      ['core-data-missing undecided metres squareMillimetres'],
      ['measure-core-data'],
    ],
    [
      'a length of zero',
      { metres: metres(0) },
      ['core-data-missing undecided metres squareMillimetres'],
      ['measure-core-data'],
    ],
    [
      'a core of 240 m and 0.75 mm² passes with 6.24 Ω',
      { metres: metres(240), squareMillimetres: 0.75, reading: ohms(6.24) },
      [fits],
      [],
    ],
    ['not measured', { reading: missing }, ['core-reading-missing undecided reading'], ['measure-core']],
    [
      'open',
      { reading: overOhms() },
      [`core-open fail reading: ${marks} open-on-any-range`],
      ['clean-and-repeat', 'divide-the-run'],
    ],
    ['over a low range', { reading: overOhms(1) }, ['core-over-range undecided reading'], ['note-core-range']],
    [
      'too high',
      { reading: ohms(9) },
      [`core-too-high fail reading: ${marks}`],
      ['clean-and-repeat', 'divide-the-run'],
    ],
    ['above', { reading: ohms(1) }, [`core-above-expected undecided reading: ${marks}`], ['clean-and-repeat']],
    ['below', { reading: ohms(0.1) }, [`core-below-expected undecided reading: ${marks}`], ['look-for-other-path']],
    ['warm', { temperature: celsius(75) }, [fits, 'core-at-temperature note temperature: winding-zero-copper'], []],
    [
      'warm, and nothing known',
      { temperature: celsius(75), metres: missing },
      ['core-data-missing undecided metres squareMillimetres'],
      ['measure-core-data'],
    ],
    [
      'by multimeter',
      { meter: 'multimeter' },
      [fits, 'core-by-multimeter caution meter: continuity-current'],
      ['use-continuity-tester'],
    ],
    ['a core by multimeter', { meter: 'multimeter', way: 'core' }, [fits.replace('pe-contacts', 'winding-joint')], []],
    ['with four leads', { meter: 'four-leads' }, [fits], []],
    ['impossible', { reading: ohms(-1) }, ['figure-impossible undecided reading'], ['read-figure-again']],
  ];
  it.each(rows)('%s', (_, change, lines, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits)).toEqual(lines);
    expect(assessment.next.map(({ code }) => code)).toEqual(next);
  });

  it('the marks of one core and of two', () => {
    // 0.532 Ω; · 1.25 + 0.15 for PE, + 0.05 for another; · 1.25 + 1.
    const one = assess({}).marks;
    expect([one?.table, one?.most, one?.beyond].map((ohms) => ohms?.toFixed(3))).toEqual(['0.532', '0.815', '1.665']);
    const two = assess({ way: 'pair' }).marks;
    expect([two?.table, two?.most, two?.beyond].map((ohms) => ohms?.toFixed(3))).toEqual(['1.064', '1.430', '3.330']);
    expect(assess({ way: 'not-stated' }).marks).toBeUndefined();
    expect(found(assess({ reading: ohms(9) }).findings, 'core-too-high')).toMatchObject(one ?? {});
  });

  it('at the marks themselves', () => {
    const { table = 0, most = 0, beyond = 0 } = assess({}).marks ?? {};
    const codes = [table / 2, most, beyond].map((figure) => assess({ reading: ohms(figure) }).findings[0]?.code);
    expect(codes).toEqual(['core-fits', 'core-fits', 'core-above-expected']);
  });

  it('a length beyond all figures has no marks', () => {
    expect(assess({ metres: metres(1e308), way: 'pair', squareMillimetres: 0.75 }).marks).toBeUndefined();
  });

  it('a statement that nobody knows counts as not made', () => {
    const unknown = 'perhaps' as 'not-stated';
    const codes = assess({ way: unknown, end: unknown, meter: unknown }).findings.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(['core-way-not-stated', 'core-end-not-stated', 'core-meter-not-stated']),
    );
  });

  it('the highest reading of the meter is its range, if it is stated', () => {
    const stated = { reading: overOhms(), meter: 'four-leads' as const };
    expect(assess({ ...stated, instrument: { upperLimit: 2 } }).verdict).toBe('no-go');
    expect(assess({ ...stated, instrument: { upperLimit: 1 } }).verdict).toBe('undecided');
    expect(assess({ ...stated, meter: 'multimeter', instrument: { upperLimit: 1 } }).verdict).toBe('undecided');
  });
});
