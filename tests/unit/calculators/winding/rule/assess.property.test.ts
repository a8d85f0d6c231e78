import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessWinding, type WindingInput } from '../../../../../src/calculators/winding/rule/assess.ts';
import { type WindingPair, windingPairs } from '../../../../../src/calculators/winding/rule/pairs.ts';
import { missing, ohms, overOhms, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { weakerInstrument } from '../../../../support/arbitrary-readings.ts';
import { plainWinding, twoSets, windingInput } from '../../../../support/arbitrary-winding.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

const pair = fc.constantFrom(...windingPairs);

function withReading(input: WindingInput, at: WindingPair, reading: Reading): WindingInput {
  return { ...input, readings: { ...input.readings, [at]: reading } };
}

/** Worse: the highest raised, or the lowest lowered, so that it is further from both others. */
function movedAway(input: WindingInput, factor: number, up: boolean): WindingInput | undefined {
  const values = windingPairs.flatMap((at) => {
    const reading = input.readings[at];
    return reading.kind === 'value' ? [{ at, reading }] : [];
  });
  if (values.length < 3) return undefined;
  const sorted = values.sort((a, b) => a.reading.value - b.reading.value);
  const chosen = up ? sorted[2] : sorted[0];
  if (chosen === undefined) return undefined;
  const { value, resolution = 1e-9 } = chosen.reading;
  const moved = up
    ? Math.ceil((value * factor) / resolution) * resolution
    : Math.floor(value / factor / resolution) * resolution;
  return withReading(input, chosen.at, ohms(moved, resolution));
}

describe('a worse reading never turns the verdict of a winding towards go', () => {
  it('moved away from the other two', () => {
    const met = tally();
    const factor = fc.constantFrom(1.001, 1.01, 1.02, 1.05, 1.1, 1.5, 3, 100);
    fc.assert(
      fc.property(plainWinding, factor, fc.boolean(), (input, by, up) => {
        const moved = movedAway(input, by, up);
        if (moved === undefined) return;
        const before = assessWinding(input).verdict;
        met.add(before);
        expect(rank[assessWinding(moved).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('turned into an open circuit', () => {
    fc.assert(
      fc.property(plainWinding, pair, fc.constantFrom(overOhms(), overOhms(20e6)), (input, at, open) => {
        expect(assessWinding(withReading(input, at, open)).verdict).toBe('no-go');
      }),
      { numRuns: runs },
    );
  });
});

describe('weaker evidence never makes a verdict of a winding', () => {
  const weaker: [string, fc.Arbitrary<(input: WindingInput) => WindingInput>][] = [
    ['two leads for four', fc.constant((input) => ({ ...input, leads: 'zeroed' }))],
    [
      'leads not stated',
      fc.constant((input) => {
        const { leads: _stated, ...rest } = input;
        return rest;
      }),
    ],
    [
      'a wider stated accuracy',
      weakerInstrument([1e9]).map((weaken) => (input) => {
        const { upperLimit: _same, ...accuracy } = weaken(input.instrument ?? {});
        return { ...input, instrument: accuracy };
      }),
    ],
  ];

  it.each(weaker)('%s', (_name, change) => {
    const met = tally();
    fc.assert(
      fc.property(plainWinding, change, (input, weaken) => {
        const before = assessWinding(input).verdict;
        met.add(before);
        expect([before, 'undecided']).toContain(assessWinding(weaken(input)).verdict);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('a reading removed is never go', () => {
    fc.assert(
      fc.property(windingInput, pair, (input, at) => {
        expect(assessWinding(withReading(input, at, missing)).verdict).not.toBe('go');
      }),
      { numRuns: runs },
    );
  });
});

it('with two leads, no winding below an ohm passes', () => {
  fc.assert(
    fc.property(windingInput, (input) => {
      const low = windingPairs.some((at) => {
        const reading = input.readings[at];
        return reading.kind === 'value' && reading.value < 1;
      });
      if (low && input.leads !== 'four') expect(assessWinding(input).verdict).not.toBe('go');
    }),
    { numRuns: runs },
  );
});

it('the verdict does not depend on which pair is which, nor on the connection', () => {
  fc.assert(
    fc.property(windingInput, fc.constantFrom('star' as const, 'delta' as const), (input, connection) => {
      const { verdict } = assessWinding(input);
      const turned = ({ UV, VW, WU }: WindingInput['readings']) => ({ UV: VW, VW: WU, WU: UV });
      const other = { ...input, readings: turned(input.readings), ...(input.again && { again: turned(input.again) }) };
      expect(assessWinding(other).verdict).toBe(verdict);
      expect(assessWinding({ ...input, connection }).verdict).toBe(verdict);
    }),
    { numRuns: runs },
  );
});

describe('with a second set and the connector', () => {
  const alone = (input: WindingInput, readings = input.readings) => {
    const { again: _second, acrossJoint: _joint, ...rest } = input;
    return assessWinding({ ...rest, readings });
  };

  it('a winding is convicted only by two sets that fail by themselves', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(twoSets, (input) => {
        const { cause, verdict } = assessWinding(input);
        met.add(cause);
        if (cause === 'none') expect(verdict).toBe('go');
        if (verdict === 'go') expect(cause).toBe('none');
        if (cause !== 'winding') return;
        expect(verdict).toBe('no-go');
        expect(alone(input).verdict).toBe('no-go');
        expect(input.again && alone(input, input.again).verdict).toBe('no-go');
      }),
      { numRuns: Math.max(runs, 1000) },
    );
    expect([...met].sort()).toEqual(['contact', 'none', 'open', 'winding']);
  });

  it('neither makes a go', () => {
    fc.assert(
      fc.property(twoSets, (input) => {
        if (assessWinding(input).verdict === 'go') expect(alone(input).verdict).toBe('go');
      }),
      { numRuns: runs },
    );
  });

  it('a worse reading of either set, or of the connector, never turns the verdict towards go', () => {
    const factor = fc.constantFrom(1.01, 1.05, 1.5, 100);
    fc.assert(
      fc.property(twoSets, factor, fc.boolean(), pair, (input, by, up, at) => {
        const before = rank[assessWinding(input).verdict];
        const notAbove = (other: WindingInput | undefined) =>
          other && expect(rank[assessWinding(other).verdict]).toBeLessThanOrEqual(before);
        notAbove(movedAway(input, by, up));
        notAbove(withReading(input, at, overOhms()));
        if (input.again) {
          const second = { ...input, readings: input.again };
          for (const worse of [movedAway(second, by, up), withReading(second, at, overOhms())])
            if (worse) notAbove({ ...input, again: worse.readings });
        }
        if (input.acrossJoint?.kind === 'value')
          notAbove({ ...input, acrossJoint: ohms(input.acrossJoint.value * by, 0.0001) });
      }),
      { numRuns: runs },
    );
  });

  it('a second set that was begun and not finished never goes with a go', () => {
    fc.assert(
      fc.property(plainWinding, pair, (input, at) => {
        const again = { ...input.readings, [at]: missing };
        expect(assessWinding({ ...input, again }).verdict).not.toBe('go');
      }),
      { numRuns: runs },
    );
  });
});
