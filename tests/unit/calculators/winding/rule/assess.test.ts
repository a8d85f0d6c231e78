import { describe, expect, it } from 'vitest';
import { assessWinding, type WindingInput } from '../../../../../src/calculators/winding/rule/assess.ts';
import { deviationInterval } from '../../../../../src/calculators/winding/rule/balance.ts';
import { windingFindings } from '../../../../../src/calculators/winding/words.ts';
import { parseReading } from '../../../../../src/kernel/reading/parse-reading.ts';
import { missing, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../../../src/kernel/words/sentences.ts';
import { found as finding } from '../../../../support/found.ts';
import { typed } from '../../../../support/typed.ts';

function read(text: string): Reading {
  const result = parseReading(text, 'resistance');
  if (!result.ok) throw new Error(result.error.message);
  return result.reading;
}

/** With four leads, unless the test is about two. */
function winding(uv: string, vw: string, wu: string, other: Partial<WindingInput> = {}): WindingInput {
  return { readings: { UV: read(uv), VW: read(vw), WU: read(wu) }, leads: 'four', ...other };
}

const codes = (input: WindingInput) => assessWinding(input).findings.map(({ code }) => code);

describe('assessWinding', () => {
  it.each([
    // Three readings, verdict, deciding code, reason.
    ['1.200R', '1.210R', '1.205R', 'go', 'winding-balanced', 'at most 0.5 % from the mean with a step of a milliohm'],
    ['1.100R', '1.100R', '1.232R', 'no-go', 'winding-unbalanced', 'mean 1.144, 0.088 away: 7.7 %, above 5 %'],
    ['1.100R', '1.100R', '1.155R', 'undecided', 'winding-between-limits', 'mean 1.1183, 0.037 away: 3.3 %'],
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
      const input = { ...whole, readings: { ...whole.readings, [pair]: missing } };
      expect(assessWinding(input).verdict).toBe('undecided');
    }
  });

  it('treats a wider accuracy of the meter as less evidence, never as more', () => {
    const input = winding('1.200R', '1.210R', '1.205R');
    const verdicts = [0, 0.5, 1, 2, 5].map((percent) => assessWinding({ ...input, instrument: { percent } }).verdict);
    expect(verdicts).toEqual(['go', 'go', 'go', 'undecided', 'undecided']);
  });

  it('asks for a milliohm meter if the display is too coarse, for the motor alone if it fails', () => {
    expect(assessWinding(winding('1.2R', '1.2R', '1.2R')).next.map(({ code }) => code)).toEqual(['use-milliohm-meter']);
    expect(assessWinding(winding('1.2R', '1.2R', '0.4R')).next.map(({ code }) => code)).toEqual([
      'read-pairs-again',
      'measure-at-motor',
    ]);
  });
});

describe('form coils', () => {
  it('pass up to half of what random-wound coils do', () => {
    // Mean 1.5067, 0.0133 away: 0.88 %; mean 1.5100, 0.0200 away: 1.3 %.
    const verdict = (wu: string, kind: WindingInput['kind']) =>
      assessWinding(winding('1.500R', '1.500R', wu, kind === undefined ? {} : { kind })).verdict;
    expect(verdict('1.520R', 'form-wound')).toBe('go');
    expect(verdict('1.530R', 'form-wound')).toBe('undecided');
    expect(verdict('1.530R', 'random-wound')).toBe('go');
  });
});

describe('open windings', () => {
  it('names the phase that two open pairs share', () => {
    const { findings } = assessWinding(winding('OL', '1.200R', 'OL'));
    expect(finding(findings, 'winding-open-phase').terminal).toBe('U');
  });

  it('doubts a single open pair, which no winding has, and still fails', () => {
    const { verdict, next } = assessWinding(winding('OL', '1.200R', '1.200R'));
    expect(verdict).toBe('no-go');
    expect(next.map(({ code }) => code)).toContain('repeat-pair');
  });

  it('a reading of the other two together is a shorted winding of a star, or an open one of a delta', () => {
    const { findings } = assessWinding(winding('1.200R', '1.200R', '2.400R', { connection: 'star' }));
    expect(finding(findings, 'winding-sum-of-others')).toMatchObject({ pair: 'WU', leftOut: 'V', connection: 'star' });
    expect(sentenceOf(windingFindings, finding(findings, 'winding-sum-of-others'))).toBe(
      'W–U reads as much as the other two together, or nearly. In a star the winding of V then has no resistance: it is shorted. A slip or a loose tip can do it too.',
    );
    const delta = assessWinding(winding('2.400R', '1.200R', '1.200R', { connection: 'delta' })).findings;
    expect(sentenceOf(windingFindings, finding(delta, 'winding-sum-of-others'))).toContain('winding U–V is open');
    const either = assessWinding(winding('2.400R', '1.200R', '1.200R')).findings;
    expect(sentenceOf(windingFindings, finding(either, 'winding-sum-of-others'))).toMatch(
      /winding of W .* U–V is open/,
    );
  });

  it('a reading of more than the other two together is a contact or a slip', () => {
    expect(codes(winding('9.000R', '1.200R', '1.200R'))).toContain('winding-more-than-others');
    expect(codes(winding('9.000R', '1.200R', '1.200R'))).not.toContain('winding-sum-of-others');
    expect(codes(winding('1.500R', '1.200R', '1.200R'))).not.toContain('winding-sum-of-others');
  });
});

describe('temperature and a value to compare with', () => {
  const compared = (temperature: string, reference: string, at: string, other: Partial<WindingInput> = {}) =>
    assessWinding(
      winding('2.010R', '2.012R', '2.011R', {
        temperature: typed(temperature, 'temperature'),
        reference: read(reference),
        referenceTemperature: typed(at, 'temperature'),
        ...other,
      }),
    );
  const found = (...of: Parameters<typeof compared>) => {
    const { verdict, findings } = compared(...of);
    return [verdict, findings.map(({ code }) => code).find((code) => code.startsWith('winding-reference'))];
  };

  it('carries the readings to 20 or 25 °C', () => {
    const corrected = (correctTo: 'to-20' | 'to-25') =>
      finding(compared('45', '', '', { correctTo }).findings, 'winding-corrected').ohms;
    // 2.010 · 254.5/279.5 and 2.010 · 259.5/279.5.
    expect(corrected('to-20').UV).toBeCloseTo(1.83021, 4);
    expect(corrected('to-25').UV).toBeCloseTo(1.86617, 4);
  });

  it.each([
    // 2.011 · 254.5/279.5 = 1.8311 beside 1.84 and 1.60 and 2.10 and 1.68.
    ['45', '1.84R', '20', 'go', 'winding-reference-matches'],
    ['45', '1.60R', '20', 'undecided', 'winding-reference-differs'],
    ['45', '2.10R', '20', 'undecided', 'winding-reference-differs'],
    ['45', '1.664R', '20', 'undecided', 'winding-reference-too-close'],
    ['', '1.84R', '20', 'undecided', 'winding-reference-no-temperature'],
    ['45', '1.84R', '', 'undecided', 'winding-reference-no-temperature'],
    ['45', '', '', 'go', undefined],
  ] as const)('at %s °C beside %s at %s °C: %s by %s', (temperature, reference, at, verdict, code) => {
    expect(found(temperature, reference, at)).toEqual([verdict, code]);
  });

  it('outside the range of the law nothing is corrected, and nothing compared', () => {
    expect(compared('250', '', '').verdict).toBe('go');
    expect(compared('250', '1.84R', '20').verdict).toBe('undecided');
    expect(compared('45', '1.84R', '250').verdict).toBe('undecided');
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

  it('has a minimum of zero if one value fits all three', () => {
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
