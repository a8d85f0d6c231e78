import { describe, expect, it } from 'vitest';
import { assessWinding, type WindingInput } from '../../../../../src/calculators/winding/rule/assess.ts';
import { found as finding } from '../../../../support/found.ts';
import { typed as read } from '../../../../support/typed.ts';

/** With four leads, unless the test is about two. */
function winding(uv: string, vw: string, wu: string, other: Partial<WindingInput> = {}): WindingInput {
  return { readings: { UV: read(uv), VW: read(vw), WU: read(wu) }, leads: 'four', ...other };
}

describe('two leads', () => {
  const verdicts = (uv: string, vw: string, wu: string) =>
    (['four', 'zeroed'] as const).map((leads) => assessWinding(winding(uv, vw, wu, { leads })).verdict);

  it.each([
    ['12.3 mΩ', '12.4 mΩ', '12.3 mΩ', 'go', 'alike, but the tips alone change more than 12 mΩ'],
    ['12.3 mΩ', '12.4 mΩ', '15.3 mΩ', 'no-go', '15 % away, and a tenth of what a tip may add'],
    ['0.842 Ω', '0.845 Ω', '0.843 Ω', 'go', 'below one ohm 2 % is 17 mΩ'],
    ['0.842 Ω', '0.845 Ω', '0.690 Ω', 'no-go', '13 % away, 0.15 Ω: 0.05 Ω on each of two readings leave 4 %'],
  ])('%s, %s, %s is %s with four leads and undecided with two (%s)', (uv, vw, wu, withFour) => {
    expect(verdicts(uv, vw, wu)).toEqual([withFour, 'undecided']);
    const { next } = assessWinding(winding(uv, vw, wu, { leads: 'zeroed' }));
    expect(next.map(({ code }) => code)).toContain('use-four-leads');
  });

  it.each([
    ['5.820 Ω', '5.822 Ω', '5.819 Ω', 'go'],
    ['3.500 Ω', '3.500 Ω', '3.500 Ω', 'go'],
    ['1.820 Ω', '1.910 Ω', '2.140 Ω', 'no-go'],
    ['0.40 Ω', '1.20 Ω', '1.20 Ω', 'no-go'],
  ])('%s, %s, %s is %s either way: a difference that no contact explains', (uv, vw, wu, verdict) => {
    expect(verdicts(uv, vw, wu)).toEqual([verdict, verdict]);
  });

  it.each([
    // One reading 0.05 Ω less, two 0.05 Ω more: 0.0667 Ω from the mean, which is 2 % of 3.33 Ω.
    ['1.820 Ω', 'undecided'],
    ['3.200 Ω', 'undecided'],
    ['3.500 Ω', 'go'],
  ])('three times %s with two leads is %s: the contacts count on a pass too', (text, verdict) => {
    const { verdict: found, next } = assessWinding(winding(text, text, text, { leads: 'zeroed' }));
    expect(found).toBe(verdict);
    expect(next.map(({ code }) => code)).toEqual(verdict === 'go' ? [] : ['use-four-leads']);
    expect(assessWinding(winding(text, text, text)).verdict).toBe('go');
  });
});

describe('the leads', () => {
  const codesWith = (leads: WindingInput['leads'], leadOhms: string, uv = '5.02R', vw = '5.02R', wu = '5.03R') => {
    const { verdict, findings } = assessWinding(
      winding(uv, vw, wu, { leadOhms: read(leadOhms), ...(leads && { leads }) }),
    );
    return [verdict, ...findings.map(({ code }) => code)];
  };

  it('are subtracted from each reading, so that the difference counts for more', () => {
    // 1.40, 1.40 and 1.52 are left: mean 1.44, 5.6 % away; as read, 2.00, 2.00 and 2.12 deviate by 3.9 %.
    const { findings } = assessWinding(
      winding('2.00R', '2.00R', '2.12R', { leads: 'subtract', leadOhms: read('0.60R') }),
    );
    const { leastPercent, mostPercent } = finding(findings, 'winding-too-coarse');
    expect(leastPercent).toBeGreaterThan(3.9);
    expect(leastPercent).toBeLessThan(5.5556);
    expect(mostPercent).toBeGreaterThan(5.5556);
  });

  it.each([
    ['subtract', '0.20R', 'go', 'winding-leads-subtracted'],
    ['not-stated', '0.20R', 'undecided', 'winding-leads-not-stated'],
    ['not-stated', '', 'undecided', 'winding-leads-not-stated'],
    ['subtract', '', 'undecided', 'winding-leads-missing'],
    ['subtract', 'OL', 'undecided', 'winding-leads-contradict'],
    ['four', '0.20R', 'undecided', 'winding-leads-contradict'],
    ['zeroed', '0.20R', 'undecided', 'winding-leads-contradict'],
    ['subtract', '5.50R', 'undecided', 'winding-leads-exceed'],
  ] as const)('%s, %s: %s by %s', (leads, leadOhms, verdict, code) => {
    const [found, ...codesFound] = codesWith(leads, leadOhms);
    expect(found).toBe(verdict);
    expect(codesFound).toContain(code);
  });

  it('zeroed leads that still read nothing contradict nothing', () => {
    expect(codesWith('zeroed', '0.00R')[0]).toBe('go');
  });

  it('a contradiction never lifts a no-go', () => {
    expect(codesWith('four', '0.10R', '2.00R', '2.00R', '3.00R')[0]).toBe('no-go');
    expect(codesWith('subtract', '', '2.00R', '2.00R', '3.00R')[0]).toBe('no-go');
  });
});
