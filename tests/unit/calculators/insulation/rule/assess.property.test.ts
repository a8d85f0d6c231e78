import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessInsulation } from '../../../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationInput } from '../../../../../src/calculators/insulation/rule/input.ts';
import { type Phase, phases } from '../../../../../src/kernel/electrics/phases.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { insulationInput, testerLimits } from '../../../../support/arbitrary-insulation.ts';
import { higher, lower, weakerInstrument } from '../../../../support/arbitrary-readings.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

const anyPhase = fc.constantFrom<Phase>(...phases);
const factor = fc.constantFrom(1.001, 1.01, 1.1, 2, 10, 1000, 1e9);

function withPhase(input: InsulationInput, phase: Phase, reading: InsulationInput['pe']): InsulationInput {
  return { ...input, readings: { ...input.readings, [phase]: reading } };
}

/**
 * Worse: a lower phase-to-ground resistance, or a higher resistance of the protective conductor, on the same display;
 * for an over-range or under-range its bound.
 */
describe('a worse reading never turns the verdict of an insulation towards go', () => {
  it('a lower resistance of a phase to PE', () => {
    const met = tally();
    fc.assert(
      fc.property(insulationInput, anyPhase, factor, (input, phase, by) => {
        const before = assessInsulation(input).verdict;
        met.add(before);
        const after = assessInsulation(withPhase(input, phase, lower(input.readings[phase], by))).verdict;
        expect(rank[after]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('a lower resistance of all three phases', () => {
    const met = tally();
    fc.assert(
      fc.property(insulationInput, factor, (input, by) => {
        const before = assessInsulation(input).verdict;
        met.add(before);
        const { U, V, W } = input.readings;
        const readings = { U: lower(U, by), V: lower(V, by), W: lower(W, by) };
        expect(rank[assessInsulation({ ...input, readings }).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('a lower resistance of U, V and W joined', () => {
    fc.assert(
      fc.property(insulationInput, factor, (input, by) => {
        const before = assessInsulation(input).verdict;
        const together = lower(input.together ?? missing, by);
        expect(rank[assessInsulation({ ...input, together }).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
  });

  it('a higher resistance of the protective conductor', () => {
    const met = tally();
    fc.assert(
      fc.property(insulationInput, factor, (input, by) => {
        const before = assessInsulation(input).verdict;
        met.add(before);
        const after = assessInsulation({ ...input, pe: higher(input.pe, by) }).verdict;
        expect(rank[after]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });
});

it('idle cores that hung free, or of which nothing is stated, never pass an insulation', () => {
  const met = tally();
  fc.assert(
    fc.property(insulationInput, fc.constantFrom('free' as const, 'not-stated' as const), (input, idleCores) => {
      const before = assessInsulation(input).verdict;
      met.add(before);
      const after = assessInsulation({ ...input, idleCores }).verdict;
      expect(after).not.toBe('go');
      if (before === 'no-go') expect(after).toBe('no-go');
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

/**
 * Weaker evidence: a verdict that was not go never becomes go, and go never becomes no-go. The air is optional: leaving
 * out both readings equals never taking them, so only one of two is removed.
 */
describe('weaker evidence never makes a go of an insulation, nor condemns one that was go', () => {
  const required = ['pe', 'testVoltage', 'ratedVoltage', 'windingTemperature'] as const;
  const weaker: [string, fc.Arbitrary<(input: InsulationInput) => InsulationInput>][] = [
    ['a phase removed', anyPhase.map((phase) => (input) => withPhase(input, phase, missing))],
    [
      'another required reading removed',
      fc.constantFrom(...required).map((id) => (input) => ({ ...input, [id]: missing })),
    ],
    [
      'one of two readings of the air removed',
      fc
        .constantFrom('ambient' as const, 'humidity' as const)
        .map(
          (id) => (input) =>
            input.ambient.kind === 'missing' || input.humidity.kind === 'missing' ? input : { ...input, [id]: missing },
        ),
    ],
    [
      'a wider stated accuracy or a lower limit of the tester',
      weakerInstrument(testerLimits).map((weaken) => (input) => ({
        ...input,
        instrument: weaken(input.instrument ?? {}),
      })),
    ],
  ];

  it.each(weaker)('%s', (_, change) => {
    const met = tally();
    fc.assert(
      fc.property(insulationInput, change, (input, weaken) => {
        const before = assessInsulation(input).verdict;
        const after = assessInsulation(weaken(input)).verdict;
        met.add(before);
        if (before !== 'go') expect(after).not.toBe('go');
        else expect(after).not.toBe('no-go');
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });
});

it('an insulation with a required reading missing is never go', () => {
  const met = tally();
  const ids = ['pe', 'testVoltage', 'ratedVoltage', 'windingTemperature', ...phases] as const;
  fc.assert(
    fc.property(insulationInput, fc.constantFrom(...ids), (input, id) => {
      const { together: _none, ...singly } = input;
      const lacking =
        id === 'U' || id === 'V' || id === 'W' ? withPhase(singly, id, missing) : { ...input, [id]: missing };
      met.add(assessInsulation(input).verdict);
      expect(assessInsulation(lacking).verdict).not.toBe('go');
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('a verdict has findings that carry it', () => {
  fc.assert(
    fc.property(insulationInput, (input) => {
      const { verdict, findings } = assessInsulation(input);
      const has = (severity: string) => findings.some((finding) => finding.severity === severity);
      if (verdict === 'go') expect(has('fail') || has('undecided') || has('stop')).toBe(false);
      if (verdict === 'no-go') expect(has('fail')).toBe(true);
      if (verdict === 'undecided') expect(has('undecided') || has('stop')).toBe(true);
    }),
    { numRuns: runs },
  );
});
