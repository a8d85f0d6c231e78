import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessIsolation } from '../../../../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../../../../src/calculators/isolation/rule/input.ts';
import { type Phase, phases } from '../../../../../src/kernel/electrics/phases.ts';
import { limitValue } from '../../../../../src/kernel/limits.ts';
import { intervalOf } from '../../../../../src/kernel/reading/interval.ts';
import { missing, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { testerLimits } from '../../../../support/arbitrary-insulation.ts';
import { isolationInput } from '../../../../support/arbitrary-isolation.ts';
import { higher, lower, weakerInstrument } from '../../../../support/arbitrary-readings.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

type Stage = 'joined' | 'cable' | 'bonded' | 'motor';
type Terminal = Phase | 'PE';

const anyStage = fc.constantFrom<Stage>('joined', 'cable', 'bonded', 'motor');
const anyPhase = fc.constantFrom<Phase>(...phases);
const factor = fc.constantFrom(1.001, 1.01, 1.1, 2, 10, 1000, 1e9);

/** The input with one reading changed; unchanged if its stage was not taken. */
function change(
  input: IsolationInput,
  stage: Stage,
  terminal: Terminal,
  by: (reading: Reading) => Reading,
): IsolationInput {
  const row = input[stage] as Record<Terminal, Reading> | undefined;
  if (row === undefined || (stage === 'bonded' && terminal === 'PE')) return input;
  // A figure above the tester's own limit is a contradiction and counts as no reading, neither worse nor better.
  const { upperLimit = Number.POSITIVE_INFINITY } = input.instrument ?? {};
  const before = row[terminal];
  if (before.kind === 'value' && before.value > upperLimit) return input;
  return { ...input, [stage]: { ...row, [terminal]: by(before) } };
}

function staysOrFalls(change: fc.Arbitrary<(input: IsolationInput) => IsolationInput>) {
  const met = tally();
  fc.assert(
    fc.property(isolationInput, change, (input, worsen) => {
      const before = assessIsolation(input).verdict;
      met.add(before);
      expect(rank[assessIsolation(worsen(input)).verdict]).toBeLessThanOrEqual(rank[before]);
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
}

/**
 * Worse: a lower resistance of a phase to ground, in any row; a higher one of PE where a short is expected, which
 * is joined and at the motor; a lower one of the PE core of the free cable, where isolation is expected.
 */
describe('a worse reading never turns the verdict of an isolation towards go', () => {
  it('a lower resistance of a phase to ground', () => {
    const lowered = fc.tuple(anyStage, anyPhase, factor);
    staysOrFalls(
      lowered.map(
        ([stage, phase, by]) =>
          (input) =>
            change(input, stage, phase, (one) => lower(one, by)),
      ),
    );
  });

  it('a lower resistance of a whole row', () => {
    const lowered = fc.tuple(anyStage, factor);
    staysOrFalls(
      lowered.map(([stage, by]) => (input) => {
        const { upperLimit = Number.POSITIVE_INFINITY } = input.instrument ?? {};
        const contradicts = phases.some((phase) => {
          const reading = input[stage]?.[phase];
          return reading?.kind === 'value' && reading.value > upperLimit;
        });
        if (contradicts) return input;
        return phases.reduce((one, phase) => change(one, stage, phase, (reading) => lower(reading, by)), input);
      }),
    );
  });

  it('a higher resistance of the protective conductor, joined or at the motor', () => {
    const raised = fc.tuple(fc.constantFrom<Stage>('joined', 'motor'), factor);
    staysOrFalls(
      raised.map(
        ([stage, by]) =>
          (input) =>
            change(input, stage, 'PE', (one) => higher(one, by)),
      ),
    );
  });

  it('a lower second reading of a part, or a higher one of PE', () => {
    const changed = fc.tuple(
      fc.constantFrom('moreOfCable' as const, 'moreOfMotor' as const, 'peAgain' as const),
      factor,
    );
    staysOrFalls(
      changed.map(([what, by]) => (input) => {
        if (what === 'peAgain') return { ...input, peAgain: higher(input.peAgain ?? missing, by) };
        const { again = missing, ...rest } = input[what] ?? {};
        const { upperLimit = Number.POSITIVE_INFINITY } = input.instrument ?? {};
        if (again.kind === 'value' && again.value > upperLimit) return input;
        return { ...input, [what]: { ...rest, again: lower(again, by) } };
      }),
    );
  });

  it('a lower resistance of the PE core of the free cable', () => {
    staysOrFalls(factor.map((by) => (input) => change(input, 'cable', 'PE', (one) => lower(one, by))));
  });
});

it('idle cores that hung free, or of which nothing is stated, never pass an isolation, nor clear a part', () => {
  const met = tally();
  fc.assert(
    fc.property(isolationInput, fc.constantFrom('free' as const, 'not-stated' as const), (input, idleCores) => {
      const before = assessIsolation(input).verdict;
      met.add(before);
      const { verdict, parts } = assessIsolation({ ...input, idleCores });
      expect(verdict).not.toBe('go');
      if (before === 'no-go') expect(verdict).toBe('no-go');
      for (const status of [parts.cable, parts.motor]) expect(['proven-good', 'not-suspect']).not.toContain(status);
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('a part is proven bad by two readings against it, never by one', () => {
  const point = limitValue('after-trip-point');
  const met = { cable: 0, motor: 0 };
  const below = (one: Reading | undefined) => one !== undefined && intervalOf(one).lo < point;
  fc.assert(
    fc.property(isolationInput, (input) => {
      const { parts } = assessIsolation(input);
      const rows = { cable: [input.cable, input.bonded], motor: [input.motor] };
      for (const part of ['cable', 'motor'] as const) {
        if (parts[part] !== 'proven-bad') continue;
        met[part]++;
        const { again } = (part === 'cable' ? input.moreOfCable : input.moreOfMotor) ?? {};
        const first = rows[part].some((row) => row && Object.values(row).some((one) => below(one)));
        expect([first, below(again)]).toEqual([true, true]);
        const { [part === 'cable' ? 'moreOfCable' : 'moreOfMotor']: _second, ...once } = input;
        expect(assessIsolation(once).parts[part]).not.toBe('proven-bad');
      }
    }),
    { numRuns: Math.max(runs, 2000) },
  );
  expect(Math.min(met.cable, met.motor)).toBeGreaterThan(0);
});

/**
 * Weaker evidence: a verdict that was not go never becomes go, and go never becomes no-go. A reading is removed by
 * setting it missing while its stage stays begun, or with its whole stage.
 */
describe('weaker evidence never makes a go of an isolation, nor condemns one that was go', () => {
  const anyTerminal = fc.constantFrom<Terminal>(...phases, 'PE');
  const weaker: [string, fc.Arbitrary<(input: IsolationInput) => IsolationInput>][] = [
    [
      'a reading removed',
      fc.tuple(anyStage, anyTerminal).map(
        ([stage, terminal]) =>
          (input) =>
            change(input, stage, terminal, (one) => (one.kind === 'missing' ? one : missing)),
      ),
    ],
    [
      'a whole stage removed, the bonded row too',
      fc.constantFrom('cable' as const, 'bonded' as const, 'motor' as const).map((stage) => (input) => {
        const { [stage]: _cleared, ...rest } = input;
        return rest;
      }),
    ],
    ['the test voltage removed', fc.constant((input) => ({ ...input, testVoltage: missing }))],
    ['the winding temperature removed', fc.constant((input) => ({ ...input, windingTemperature: missing }))],
    [
      'a wider stated accuracy or a lower limit of the tester',
      weakerInstrument(testerLimits).map((weaken) => (input) => ({
        ...input,
        instrument: weaken(input.instrument ?? {}),
      })),
    ],
    ['the look at the cable ends taken back', fc.constant((input) => ({ ...input, cableEndsChecked: false }))],
    ['a symptom that points here', fc.constant((input) => ({ ...input, suspectedAnyway: true }))],
  ];

  it.each(weaker)('%s', (_, change) => {
    const met = tally();
    fc.assert(
      fc.property(isolationInput, change, (input, weaken) => {
        const before = assessIsolation(input).verdict;
        const after = assessIsolation(weaken(input)).verdict;
        met.add(before);
        if (before !== 'go') expect(after).not.toBe('go');
        else expect(after).not.toBe('no-go');
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });
});

it('an isolation with a reading missing in a stage that was begun, or without a test voltage, is never go', () => {
  const met = tally();
  const anyTerminal = fc.constantFrom<Terminal>(...phases, 'PE');
  fc.assert(
    fc.property(isolationInput, anyStage, anyTerminal, fc.boolean(), (input, stage, terminal, voltage) => {
      met.add(assessIsolation(input).verdict);
      const lacking = voltage ? { ...input, testVoltage: missing } : change(input, stage, terminal, () => missing);
      if (lacking !== input) expect(assessIsolation(lacking).verdict).not.toBe('go');
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('a verdict has findings that carry it, and parts that do not contradict it', () => {
  fc.assert(
    fc.property(isolationInput, (input) => {
      const { verdict, findings, parts } = assessIsolation(input);
      const has = (severity: string) => findings.some((finding) => finding.severity === severity);
      const statuses = Object.values(parts);
      if (verdict === 'go') {
        expect(has('fail') || has('undecided') || has('stop')).toBe(false);
        expect(statuses.every((status) => status === 'proven-good' || status === 'not-suspect')).toBe(true);
      }
      if (verdict === 'no-go') expect(has('fail')).toBe(true);
      if (verdict === 'undecided') expect(has('undecided')).toBe(true);
      if (statuses.includes('proven-bad')) expect(verdict).toBe('no-go');
    }),
    { numRuns: runs },
  );
});

it('there is always a next step, and a replacement only of what is proven bad', () => {
  fc.assert(
    fc.property(isolationInput, (input) => {
      const { next, parts } = assessIsolation(input);
      const steps = next.map(({ code }) => code);
      if (steps.includes('replace-cable') || steps.includes('replace-both')) expect(parts.cable).toBe('proven-bad');
      if (steps.includes('replace-motor') || steps.includes('replace-both')) expect(parts.motor).toBe('proven-bad');
      expect(new Set(steps).size).toBe(steps.length);
      expect(steps.length).toBeGreaterThan(0);
    }),
    { numRuns: runs },
  );
});
