import { describe, expect, it } from 'vitest';
import {
  assessWinding,
  deviationInterval,
  missing,
  parseReading,
  type Reading,
  type WindingInput,
} from '../../../src/calc/index.ts';

function read(text: string): Reading {
  const result = parseReading(text, 'resistance');
  if (!result.ok) throw new Error(result.error.message);
  return result.reading;
}

function winding(uv: string, vw: string, wu: string): WindingInput {
  return { readings: { UV: read(uv), VW: read(vw), WU: read(wu) } };
}

const codes = (input: WindingInput) => assessWinding(input).findings.map(({ code }) => code);

describe('assessWinding', () => {
  it.each([
    // Three readings, verdict, deciding code, the reasoning.
    ['1.200R', '1.210R', '1.205R', 'go', 'winding-balanced', 'at most 0.5 % from the mean with a step of a milliohm'],
    ['1.000R', '1.000R', '1.120R', 'no-go', 'winding-unbalanced', 'mean 1.040, 0.080 away: 7.7 %, above 5 %'],
    ['1.000R', '1.000R', '1.050R', 'undecided', 'winding-between-limits', 'mean 1.0167, 0.033 away: 3.3 %'],
    [
      '1.2R',
      '1.2R',
      '1.2R',
      'undecided',
      'winding-too-coarse',
      'one step of 0.1 in 1.2 is 8 %: equal figures prove nothing',
    ],
    ['1.2R', '1.2R', '0.4R', 'no-go', 'winding-unbalanced', 'even with one step each, W–U is far from the others'],
    ['OL', '1.200R', '1.200R', 'no-go', 'winding-open', 'no winding of a few ohms is over-range'],
    ['>2k', '1.200R', '1.200R', 'undecided', 'winding-range-not-noted', 'two kilohms do not tell an open circuit'],
    ['>2M', '>2M', '>2M', 'no-go', 'winding-open', 'all open: a broken star point or connector'],
    ['', '1.200R', '1.200R', 'undecided', 'winding-incomplete', 'never judged with a reading missing'],
    ['0.0R', '0.0R', '0.0R', 'undecided', 'winding-too-coarse', 'below one step of the display'],
  ])('%s, %s, %s: %s by %s (%s)', (uv, vw, wu, verdict, code) => {
    expect(assessWinding(winding(uv, vw, wu)).verdict).toBe(verdict);
    expect(codes(winding(uv, vw, wu))).toContain(code);
  });

  it('names the pair that is missing and the pair that is open', () => {
    const { findings } = assessWinding(winding('', 'OL', '1.200R'));
    expect(findings.find(({ code }) => code === 'winding-incomplete')?.readings).toEqual(['UV']);
    expect(findings.find(({ code }) => code === 'winding-open')?.readings).toEqual(['VW']);
  });

  it('is never go with any reading removed', () => {
    const whole = winding('1.200R', '1.200R', '1.200R');
    expect(assessWinding(whole).verdict).toBe('go');
    for (const pair of ['UV', 'VW', 'WU'] as const) {
      const input = { readings: { ...whole.readings, [pair]: missing } };
      expect(assessWinding(input).verdict).toBe('undecided');
    }
  });

  it('takes a wider accuracy of the meter as less evidence, never as more', () => {
    const input = winding('1.200R', '1.210R', '1.205R');
    const verdicts = [0, 0.5, 1, 2, 5].map((percent) => assessWinding({ ...input, instrument: { percent } }).verdict);
    expect(verdicts).toEqual(['go', 'go', 'go', 'undecided', 'undecided']);
  });

  it('asks for a milliohm meter where the display is too coarse, for the motor alone where it fails', () => {
    expect(assessWinding(winding('1.2R', '1.2R', '1.2R')).next.map(({ code }) => code)).toEqual(['use-milliohm-meter']);
    expect(assessWinding(winding('1.2R', '1.2R', '0.4R')).next.map(({ code }) => code)).toEqual(['measure-at-motor']);
  });
});

describe('deviationInterval', () => {
  const exactly = (value: number) => ({ lo: value, hi: value });

  it('is the deviation itself for exact values', () => {
    // Mean 459, largest deviation 9: 1.96 %.
    const { lo, hi } = deviationInterval([exactly(460), exactly(467), exactly(450)]);
    expect(lo).toBeCloseTo(1.9607843, 6);
    expect(hi).toBeCloseTo(1.9607843, 6);
  });

  it('is zero at least where one value fits all three', () => {
    expect(
      deviationInterval([
        { lo: 9, hi: 11 },
        { lo: 10, hi: 12 },
        { lo: 8, hi: 10 },
      ]).lo,
    ).toBe(0);
  });

  it('is greatest at the corners', () => {
    // 8, 8 and 11: mean 9, largest deviation 2.
    expect(
      deviationInterval([
        { lo: 8, hi: 9 },
        { lo: 8, hi: 9 },
        { lo: 10, hi: 11 },
      ]).hi,
    ).toBeCloseTo(22.22222, 4);
  });
});
