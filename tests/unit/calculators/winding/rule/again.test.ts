import { describe, expect, it } from 'vitest';
import { assessWinding, type WindingInput } from '../../../../../src/calculators/winding/rule/assess.ts';
import type { Pairs } from '../../../../../src/calculators/winding/rule/phases.ts';
import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { typed } from '../../../../support/typed.ts';

/** Three readings, separated by bars. */
function three(text: string): Pairs<Reading> {
  const [UV = '', VW = '', WU = ''] = text.split('|').map((one) => one.trim());
  return { UV: typed(UV), VW: typed(VW), WU: typed(WU) };
}

const assess = (first: string, again: string, other: Partial<WindingInput> = {}) =>
  assessWinding({ readings: three(first), again: three(again), leads: 'four', ...other });

const alike = '1.200R | 1.201R | 1.200R';
/** One pair high: no contact at one terminal does that. */
const high = '1.200R | 1.200R | 1.500R';
/** Two pairs high: a contact at V does that. */
const low = '1.500R | 1.500R | 1.200R';
const coarse = '1.2R | 1.2R | 1.2R';
const none = ' | | ';

// Agreement of 5 % between the sets, 0.05 Ω of contact with two leads: project judgement, no source.
describe('a second set beside the first', () => {
  it.each([
    // First, second, leads, verdict, cause, code of the comparison.
    [high, none, 'four', 'no-go', 'open', 'winding-not-confirmed'],
    [high, high, 'four', 'no-go', 'winding', 'winding-again-confirms'],
    [high, '1.210R | 1.205R | 1.520R', 'four', 'no-go', 'winding', 'winding-again-confirms'],
    // 1.500 to 1.300 Ω, still beyond 5 % of unbalance: it moved by 13 %.
    [high, '1.200R | 1.200R | 1.300R', 'four', 'no-go', 'contact', 'winding-again-differs'],
    [high, '1.500R | 1.200R | 1.200R', 'four', 'no-go', 'contact', 'winding-again-differs'],
    [high, low, 'four', 'no-go', 'contact', 'winding-again-differs'],
    [high, alike, 'four', 'undecided', 'contact', 'winding-again-passes'],
    [high, coarse, 'four', 'no-go', 'open', 'winding-again-unclear'],
    [high, '1.200R | | 1.500R', 'four', 'no-go', 'open', 'winding-again-unclear'],
    [alike, none, 'four', 'go', 'none', undefined],
    [alike, alike, 'four', 'go', 'none', 'winding-again-confirms'],
    [alike, high, 'four', 'undecided', 'contact', 'winding-again-fails'],
    [alike, coarse, 'four', 'undecided', 'open', 'winding-again-unclear'],
    [alike, '1.200R | | ', 'four', 'undecided', 'open', 'winding-again-unclear'],
    [coarse, high, 'four', 'no-go', 'contact', 'winding-again-fails'],
    [coarse, alike, 'four', 'undecided', 'open', 'winding-again-unclear'],
    // Two pairs that share a terminal: with two leads the tips are in it, with four they are not.
    [low, low, 'four', 'no-go', 'winding', 'winding-again-confirms'],
    [low, low, 'zeroed', 'no-go', 'open', 'winding-again-confirms'],
    [high, high, 'zeroed', 'no-go', 'winding', 'winding-again-confirms'],
    // 5 % of 1.5 Ω and 0.05 Ω are 0.125 Ω: with two leads that is no other reading yet.
    [high, '1.200R | 1.200R | 1.610R', 'zeroed', 'no-go', 'winding', 'winding-again-confirms'],
    [high, '1.200R | 1.200R | 1.610R', 'four', 'no-go', 'contact', 'winding-again-differs'],
    // Open windings.
    ['OL | 1.200R | OL', 'OL | 1.210R | OL', 'zeroed', 'no-go', 'winding', 'winding-again-confirms'],
    ['OL | 1.200R | OL', 'OL | OL | 1.200R', 'four', 'no-go', 'contact', 'winding-again-differs'],
    ['OL | 1.200R | OL', alike, 'four', 'undecided', 'contact', 'winding-again-passes'],
    ['OL | 1.200R | OL', high, 'four', 'no-go', 'contact', 'winding-again-differs'],
    // No winding is open between one pair alone, however often it is read.
    ['OL | 1.200R | 1.200R', 'OL | 1.200R | 1.200R', 'four', 'no-go', 'contact', 'winding-again-confirms'],
  ] as const)('%s, then %s, leads %s: %s, cause %s', (first, again, leads, verdict, cause, code) => {
    const assessment = assess(first, again, { leads });
    expect(assessment).toMatchObject({ verdict, cause, joint: 'not-measured' });
    const said = assessment.findings.map((one) => one.code).filter((one) => /again|not-confirmed/.test(one));
    expect(said).toEqual(code === undefined ? [] : [code]);
  });

  it('is compared by name, and shown by name', () => {
    expect(found(assess(high, high).findings, 'winding-again-confirms')).toMatchObject({
      severity: 'note',
      readings: ['againUV', 'againVW', 'againWU'],
      limits: ['winding-again-agreement'],
    });
  });

  it('that passes leaves no failing finding', () => {
    const { findings } = assess(high, alike);
    expect(findings.map(({ severity }) => severity)).not.toContain('fail');
    expect(found(findings, 'winding-unbalanced').severity).toBe('undecided');
  });

  it.each([
    [high, none, ['read-pairs-again', 'measure-at-motor']],
    [high, high, ['measure-at-motor']],
    [high, alike, ['find-contact']],
    [alike, high, ['find-contact']],
    [high, low, ['find-contact', 'measure-at-motor']],
  ])('%s, then %s asks for %j', (first, again, steps) => {
    expect(assess(first, again).next.map(({ code }) => code)).toEqual(steps);
  });

  it('two leads and two pairs high ask for four', () => {
    const { findings, next } = assess(low, low, { leads: 'zeroed' });
    expect(findings.map(({ code }) => code)).toContain('winding-contact-possible');
    expect(next.map(({ code }) => code)).toContain('use-four-leads');
    expect(assess(low, low).findings.map(({ code }) => code)).not.toContain('winding-contact-possible');
  });
});

// A contact of 0.05 Ω, or half of what the odd lead has in excess: project judgement, no source.
describe('across the mated connector', () => {
  const joint = (first: string, across: string, leads: WindingInput['leads'] = 'four') => {
    const { verdict, cause, joint: state, findings } = assess(first, first, { acrossJoint: typed(across), leads });
    return [verdict, cause, state, findings.find(({ code }) => code.startsWith('winding-joint'))?.code];
  };

  it.each([
    [low, '', 'four', 'no-go', 'winding', 'not-measured', undefined],
    [low, '4.0 mΩ', 'four', 'no-go', 'winding', 'good', 'winding-joint-good'],
    [low, '300 mΩ', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    [low, '51.0 mΩ', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    [low, '50.0 mΩ', 'four', 'no-go', 'winding', 'unclear', 'winding-joint-unclear'],
    [low, 'OL', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    // 40 mΩ of excess: more than half of that in the connector explains it.
    ['0.440R | 0.440R | 0.400R', '25.0 mΩ', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    ['0.440R | 0.440R | 0.400R', '5.0 mΩ', 'four', 'no-go', 'winding', 'good', 'winding-joint-good'],
    // With two leads, 0.05 Ω of their own contact is in it.
    [low, '4 mΩ', 'zeroed', 'no-go', 'open', 'unclear', 'winding-joint-unclear'],
    [low, '0.08 Ω', 'zeroed', 'no-go', 'open', 'unclear', 'winding-joint-unclear'],
    [low, '0.30 Ω', 'zeroed', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    // A connector that gets hot, though the windings are alike; and one that is only measured coarsely.
    [alike, '80 mΩ', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
    [alike, '4 mΩ', 'four', 'go', 'none', 'good', 'winding-joint-good'],
    [alike, '<0.1 Ω', 'four', 'undecided', 'open', 'unclear', 'winding-joint-unclear'],
    [alike, '0.1 Ω', 'four', 'undecided', 'open', 'unclear', 'winding-joint-unclear'],
    // Too coarse a set has no excess that a connector could explain.
    [coarse, '4 mΩ', 'four', 'undecided', 'open', 'good', 'winding-joint-good'],
    ['OL | 1.200R | OL', '4 mΩ', 'four', 'no-go', 'winding', 'good', 'winding-joint-good'],
    ['OL | 1.200R | OL', 'OL', 'four', 'no-go', 'contact', 'bad', 'winding-joint-bad'],
  ] as const)(
    '%s with %s, leads %s: %s, cause %s, connector %s',
    (first, across, leads, verdict, cause, state, code) => {
      expect(joint(first, across, leads)).toEqual([verdict, cause, state, code]);
    },
  );

  it('asks to mend a bad one', () => {
    const { next, findings } = assess(low, low, { acrossJoint: typed('300 mΩ') });
    expect(next.map(({ code }) => code)).toEqual(['mend-joint', 'measure-at-motor']);
    expect(found(findings, 'winding-joint-bad')).toMatchObject({
      severity: 'fail',
      readings: ['acrossJoint'],
      limits: ['winding-joint'],
      limitOhms: 0.05,
    });
  });
});
