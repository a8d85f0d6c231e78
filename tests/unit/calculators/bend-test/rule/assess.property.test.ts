import { describe, expect, it } from 'vitest';
import { assessBendTest } from '../../../../../src/calculators/bend-test/rule/assess.ts';
import { bendFindings, bendSteps } from '../../../../../src/calculators/bend-test/words.ts';
import { ohms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { bendTest as oracle } from '../../../../oracle/bend-test.ts';
import { Dice } from '../../../../oracle/dice.ts';
import { tryOut } from '../../../../oracle/try-out.ts';
import { runs } from '../../../../support/runs.ts';
import { sayAll } from '../../../../support/sentences.ts';
import { assess, first, loops, quiet } from './sound.ts';

describe('properties', () => {
  it('a go is allowed, and neither worse nor absent evidence improves a verdict', () => {
    const { examples, unexplained, count } = tryOut(oracle, runs * 2, 5);
    expect([unexplained, examples]).toEqual([0, []]);
    for (const verdict of ['go', 'undecided', 'no-go'] as const) expect(count[verdict]).toBeGreaterThan(runs / 20);
  });

  it('every finding and step of many sets is a sentence', () => {
    const dice = new Dice(31);
    const said = new Set<string>();
    for (let set = 0; set < Math.min(runs * 2, 3000); set++) {
      for (const code of sayAll(assessBendTest(oracle.make(dice)), bendFindings, bendSteps)) said.add(code);
    }
    expect(said.size).toBeGreaterThan(40);
  });

  it('no part is proven without two movements, and none is steady without a go', () => {
    const dice = new Dice(17);
    for (let set = 0; set < runs; set++) {
      const input = oracle.make(dice);
      const { parts, findings, verdict } = assessBendTest(input);
      const codes = findings.map(({ code }) => code);
      if (parts.cable === 'proven-bad' || parts.feedbackCable === 'proven-bad')
        expect(codes.some((code) => code === 'bend-core-proven' || code === 'bend-leak-proven')).toBe(true);
      if (codes.includes('bend-core-proven')) expect(['cable', 'half']).toContain(input.movedAgain);
      if (parts.cable === 'steady') expect(verdict).toBe('go');
      const once = assessBendTest({ ...input, again: loops({}), badAgain: input.positions[4] ?? input.badAgain });
      if (input.positions[4]?.U.kind === 'missing') expect(once.parts.cable).not.toBe('proven-bad');
    }
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])('%d fails closed in every field', (wrong) => {
    for (const change of [
      first({ UV: { ...quiet, rest: ohms(wrong) } }),
      { again: loops({ VW: { ...quiet, highest: ohms(wrong) } }) },
      { testVoltage: volts(wrong) },
      { badAgain: { U: ohms(wrong), V: ohms(1), W: ohms(1) } },
      { squareMillimetres: wrong },
    ]) {
      const { verdict, findings } = assess(change);
      expect([verdict, findings.map(({ code }) => code)]).toEqual(['undecided', ['figure-impossible']]);
    }
  });
});
