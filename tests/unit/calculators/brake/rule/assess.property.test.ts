import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBrake } from '../../../../../src/calculators/brake/rule/assess.ts';
import type { BrakeInput } from '../../../../../src/calculators/brake/rule/input.ts';
import { brakeFindings, brakeSteps } from '../../../../../src/calculators/brake/words.ts';
import { missing, ohms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { brake as oracle } from '../../../../oracle/brake.ts';
import { Dice } from '../../../../oracle/dice.ts';
import { tryOut } from '../../../../oracle/try-out.ts';
import { runs } from '../../../../support/runs.ts';
import { sayAll } from '../../../../support/sentences.ts';
import { rank } from '../../../../support/verdict-rank.ts';
import { assess, type Change, sound } from './sound.ts';

describe('properties', () => {
  it('a go is allowed, and neither worse nor absent evidence improves a verdict', () => {
    const { examples, unexplained, count } = tryOut(oracle, runs * 2, 5);
    expect([unexplained, examples]).toEqual([0, []]);
    for (const verdict of ['go', 'undecided', 'no-go'] as const) expect(count[verdict]).toBeGreaterThan(runs / 50);
  });

  const sets = () => {
    const dice = new Dice(31);
    return Array.from({ length: Math.min(runs, 1500) }, () => oracle.make(dice));
  };

  it('every finding and step of many sets is a sentence', () => {
    const said = new Set<string>();
    for (const input of sets()) {
      for (const code of sayAll(assessBrake(input), brakeFindings, brakeSteps)) said.add(code);
    }
    expect(said.size).toBeGreaterThan(35);
  });

  it('a coil that is farther from its plate, and a voltage that is, never improves the verdict', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.boolean(),
        fc.boolean(),
        (off, more, below, ofCoil) => {
          const at = (factor: number) => (below ? 1 / factor : factor);
          const change = (factor: number): Change =>
            ofCoil
              ? { atMotor: ohms(48 * at(factor)), atDrive: missing }
              : { plugVolts: volts(24 * at(factor)), sourceVolts: missing };
          expect(rank[assess(change(off * more)).verdict]).toBeLessThanOrEqual(rank[assess(change(off)).verdict]);
        },
      ),
      { numRuns: runs },
    );
  });

  it('a wider accuracy of the meter never improves it', () => {
    fc.assert(
      fc.property(fc.nat({ max: 20 }), fc.nat({ max: 20 }), fc.nat(), (percent, more, seed) => {
        const input = oracle.make(new Dice(seed));
        const with_ = (value: number) => assessBrake({ ...input, instrument: { percent: value } });
        const [narrow, wide] = [with_(percent), with_(percent + more)];
        if (wide.verdict === 'go') expect(narrow.verdict).toBe('go');
        if (wide.verdict === 'no-go') expect(narrow.verdict).toBe('no-go');
      }),
      { numRuns: Math.min(runs, 1000) },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])('%d fails closed in every field', (wrong) => {
    for (const field of Object.keys(sound) as (keyof BrakeInput)[]) {
      const reading = sound[field];
      if (typeof reading !== 'object' || !('kind' in reading)) continue;
      const unit = reading.kind === 'missing' ? 'Ω' : reading.unit;
      if ((unit === '°C' || field === 'busVoltage') && wrong === -1) continue;
      const { verdict, findings } = assess({ [field]: { kind: 'value', value: wrong, unit } });
      expect([field, verdict, findings.map(({ code }) => code)]).toEqual([field, 'undecided', ['figure-impossible']]);
    }
  });
});
