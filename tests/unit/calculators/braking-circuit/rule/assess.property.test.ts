import { describe, expect, it } from 'vitest';
import { assessBrakingCircuit } from '../../../../../src/calculators/braking-circuit/rule/assess.ts';
import type { BrakingCircuitInput } from '../../../../../src/calculators/braking-circuit/rule/input.ts';
import { brakingFindings, brakingSteps } from '../../../../../src/calculators/braking-circuit/words.ts';
import { ohms } from '../../../../../src/kernel/reading/reading.ts';
import { brakingCircuit as oracle } from '../../../../oracle/braking-circuit.ts';
import { Dice } from '../../../../oracle/dice.ts';
import { tryOut } from '../../../../oracle/try-out.ts';
import { runs } from '../../../../support/runs.ts';
import { sayAll } from '../../../../support/sentences.ts';
import { assess, sound } from './sound.ts';

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
      for (const code of sayAll(assessBrakingCircuit(input), brakingFindings, brakingSteps)) said.add(code);
    }
    expect(said.size).toBeGreaterThan(35);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '%d fails closed in every field',
    (wrong) => {
      for (const field of Object.keys(sound) as (keyof BrakingCircuitInput)[]) {
        const reading = sound[field];
        if (typeof reading !== 'object') continue;
        const unit = 'kind' in reading && reading.kind !== 'missing' ? reading.unit : '%';
        const { verdict, findings } = assess({ [field]: { kind: 'value', value: wrong, unit } });
        expect([field, verdict, findings.map(({ code }) => code)]).toEqual([field, 'undecided', ['figure-impossible']]);
      }
    },
  );

  it('a resistor below zero fails closed', () => {
    expect(assess({ ohms: ohms(-47) }).findings.map(({ code }) => code)).toEqual(['figure-impossible']);
  });
});
