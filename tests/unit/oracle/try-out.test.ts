import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../../src/kernel/assessment/assessment.ts';
import { missing } from '../../../src/kernel/reading/reading.ts';
import { bridge } from '../../oracle/bridge.ts';
import { Dice } from '../../oracle/dice.ts';
import { poisoned } from '../../oracle/poison.ts';
import type { Subject } from '../../oracle/subject.ts';
import { tryOut, tryOutAll } from '../../oracle/try-out.ts';
import { runs } from '../../support/runs.ts';

/** The same sets as in the bench, but fewer; a trend takes ten times as long as the others. */
describe('no go that the oracle does not allow', () => {
  it.each(tryOutAll(Math.min(runs * 3, 10_000), 20).map((tryOne) => [tryOne] as const))('calculator %#', (tryOne) => {
    const { name, count, examples, unexplained } = tryOne();
    expect(examples, name).toEqual([]);
    expect(unexplained, name).toBe(0);
    const sets = count.go + count['no-go'] + count.undecided;
    // An oracle that rarely meets a go proves little; a discharge never has one.
    if (name !== 'discharge') expect(count.go / sets, name).toBeGreaterThan(0.02);
  });
});

describe('the oracle finds', () => {
  const wrong = (change: Partial<Subject<object>>) =>
    tryOut({ ...(bridge as unknown as Subject<object>), ...change }, 2000, 7).examples.map(({ why }) => why);

  it('a rule that lets everything pass', () => {
    expect(wrong({ verdict: () => 'go' })).toContain('go not allowed');
  });

  it('a rule that computes with NaN', () => {
    const lenient = (input: object): Verdict => {
      const text = JSON.stringify(input, (_, value) => (Number.isNaN(value) ? 0 : value));
      return bridge.verdict(JSON.parse(text));
    };
    expect(wrong({ verdict: lenient, mayGo: () => true })).toContain('go beside an impossible figure');
  });

  it('a rule whose verdict rises with a missing reading, and one with a short', () => {
    const lifted = (input: object): Verdict => (JSON.stringify(input).includes('missing') ? 'go' : 'undecided');
    expect(wrong({ verdict: lifted, mayGo: () => true })).toContain('go with something lacking');
    const praised = (input: object): Verdict => (JSON.stringify(input).includes('"value":400,') ? 'go' : 'no-go');
    expect(wrong({ verdict: praised, mayGo: () => true })).toContain('worse raised it');
  });

  it('a rule that throws', () => {
    const throws = (): Verdict => {
      throw new RangeError('no');
    };
    expect(wrong({ verdict: throws })).toContain('thrown');
  });
});

it('a poisoned set has one figure that no instrument shows, and the set itself is left alone', () => {
  const dice = new Dice(1);
  const input = { reading: { kind: 'value', value: 3, unit: 'Ω' }, other: missing };
  for (let round = 0; round < 50; round++) {
    const value = poisoned(input, dice)?.reading.value ?? 0;
    expect(Number.isFinite(value) && value >= 0).toBe(false);
  }
  expect(input.reading.value).toBe(3);
});

it('the dice give the same sets for the same seed', () => {
  const [one, other] = [new Dice(5), new Dice(5)];
  expect(Array.from({ length: 20 }, () => one.roll())).toEqual(Array.from({ length: 20 }, () => other.roll()));
});
