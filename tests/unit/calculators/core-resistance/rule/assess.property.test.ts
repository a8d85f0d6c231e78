import { describe, expect, it } from 'vitest';
import { assessCore } from '../../../../../src/calculators/core-resistance/rule/assess.ts';
import { coreFindings, coreSteps } from '../../../../../src/calculators/core-resistance/words.ts';
import { metres, ohms } from '../../../../../src/kernel/reading/reading.ts';
import { coreResistance as oracle } from '../../../../oracle/core-resistance.ts';
import { Dice } from '../../../../oracle/dice.ts';
import { tryOut } from '../../../../oracle/try-out.ts';
import { runs } from '../../../../support/runs.ts';
import { sayAll } from '../../../../support/sentences.ts';
import { assess } from './sound.ts';

describe('properties', () => {
  it('a go is allowed, and neither worse nor absent evidence improves a verdict', () => {
    const { examples, unexplained, count } = tryOut(oracle, runs * 2, 5);
    expect([unexplained, examples]).toEqual([0, []]);
    for (const verdict of ['go', 'undecided', 'no-go'] as const) expect(count[verdict]).toBeGreaterThan(runs / 50);
  });

  it('every finding and step of many sets is a sentence', () => {
    const dice = new Dice(31);
    const said = new Set<string>();
    for (let set = 0; set < Math.min(runs * 2, 3000); set++) {
      for (const code of sayAll(assessCore(oracle.make(dice)), coreFindings, coreSteps)) said.add(code);
    }
    expect(said.size).toBeGreaterThan(18);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])('%d fails closed in every field', (wrong) => {
    for (const change of [{ reading: ohms(wrong) }, { metres: metres(wrong) }, { squareMillimetres: wrong }]) {
      const { verdict, findings } = assess(change);
      expect([verdict, findings.map(({ code }) => code)]).toEqual(['undecided', ['figure-impossible']]);
    }
  });
});
