import { describe, expect, it } from 'vitest';
import { assessInputCircuit } from '../../../../../src/calculators/input-circuit/rule/assess.ts';
import type { InputCircuitInput } from '../../../../../src/calculators/input-circuit/rule/input.ts';
import { inputFindings, inputSteps } from '../../../../../src/calculators/input-circuit/words.ts';
import { ohms } from '../../../../../src/kernel/reading/reading.ts';
import { Dice } from '../../../../oracle/dice.ts';
import { inputCircuit as oracle } from '../../../../oracle/input-circuit.ts';
import { tryOut } from '../../../../oracle/try-out.ts';
import { runs } from '../../../../support/runs.ts';
import { sayAll } from '../../../../support/sentences.ts';
import { assess, sound, three } from './sound.ts';

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
      const input = oracle.make(dice);
      for (const code of sayAll(assessInputCircuit(input), inputFindings, inputSteps)) said.add(code);
    }
    expect(said.size).toBeGreaterThan(35);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '%d fails closed in every field',
    (wrong) => {
      for (const field of Object.keys(sound) as (keyof InputCircuitInput)[]) {
        const part = sound[field];
        if (typeof part !== 'object') continue;
        const bad = { kind: 'value', value: wrong, unit: 'V' } as const;
        const { verdict, findings } = assess({ [field]: 'kind' in part ? bad : { ...part, L2: bad } });
        expect([field, verdict, findings.map(({ code }) => code)]).toEqual([field, 'undecided', ['figure-impossible']]);
      }
    },
  );

  it('a fuse below zero fails closed', () => {
    expect(assess({ fuses: three(ohms(-1)) }).findings.map(({ code }) => code)).toEqual(['figure-impossible']);
  });
});
