import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { bridgeInput, meterLimits, position } from '../../../../support/arbitrary-bridge.ts';
import { weakerInstrument } from '../../../../support/arbitrary-readings.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

type Position = { rail: 'dcPlus' | 'dcMinus'; phase: 'U' | 'V' | 'W' };

function withReading(input: BridgeInput, { rail, phase }: Position, reading: Reading): BridgeInput {
  return { ...input, [rail]: { ...input[rail], [phase]: reading } };
}

function others(input: BridgeInput, { rail, phase }: Position): Reading[] {
  return (['U', 'V', 'W'] as const).filter((one) => one !== phase).map((one) => input[rail][one]);
}

/**
 * Worse: moved away from the other two readings of its rail. A value changes so that its ratio to neither of the others
 * shrinks. Away from an over-range is down, from an under-range up. Undefined if no change is away.
 */
function movedAway(input: BridgeInput, place: Position, factor: number, up: boolean, becomesOver: boolean) {
  const reading = input[place.rail][place.phase];
  if (reading.kind !== 'value' || reading.value === 0 || reading.resolution === undefined) return undefined;
  const rest = others(input, place);
  const step = reading.resolution;
  const value = up
    ? Math.ceil((reading.value * factor) / step) * step
    : Math.floor(reading.value / factor / step) * step;
  const away = rest.every((other) => {
    if (other.kind === 'over') return !up && reading.value <= (other.atLeast ?? Number.POSITIVE_INFINITY);
    if (other.kind === 'under') return up && reading.value >= (other.atMost ?? Number.POSITIVE_INFINITY);
    return other.kind === 'missing' || ratio(value, other.value) >= ratio(reading.value, other.value);
  });
  if (!away || rest.every(({ kind }) => kind === 'missing')) return undefined;
  // A figure above the meter's own limit is a contradiction, which is weaker evidence than the reading before.
  if (value > (input.instrument?.upperLimit ?? Number.POSITIVE_INFINITY)) return undefined;
  return up && becomesOver ? overOhms(value) : ohms(value, step);
}

const ratio = (a: number, b: number) => Math.max(a, b) / Math.min(a, b);

describe('a worse reading never turns the verdict of a bridge towards go', () => {
  it('moved away from the other two of its rail', () => {
    const met = tally();
    const factor = fc.constantFrom(1.001, 1.01, 1.05, 1.1, 1.2, 2, 10, 1000, 1e6);
    fc.assert(
      fc.property(bridgeInput, position, factor, fc.boolean(), fc.boolean(), (input, place, by, up, over) => {
        const moved = movedAway(input, place, by, up, over) ?? movedAway(input, place, by, !up, over);
        if (moved === undefined) return;
        const before = assessBridge(input).verdict;
        met.add(before);
        expect(rank[assessBridge(withReading(input, place, moved)).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('turned into a short', () => {
    const met = tally();
    const short = fc.constantFrom(ohms(0, 0.1), ohms(0.3, 0.1), ohms(40, 1), ohms(400, 1));
    fc.assert(
      fc.property(bridgeInput, position, short, (input, place, reading) => {
        const before = assessBridge(input).verdict;
        met.add(before);
        expect(rank[assessBridge(withReading(input, place, reading)).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });
});

/** Weaker evidence may cancel a decision but not make one: the verdict stays or becomes undecided. */
describe('weaker evidence never makes a verdict of a bridge', () => {
  const weaker: [string, fc.Arbitrary<(input: BridgeInput) => BridgeInput>][] = [
    ['a reading removed', position.map((place) => (input) => withReading(input, place, missing))],
    ['the bus reading removed', fc.constant((input) => ({ ...input, busVoltage: missing }))],
    [
      'a wider stated accuracy or a lower limit of the meter',
      weakerInstrument(meterLimits).map((weaken) => (input) => ({
        ...input,
        instrument: weaken(input.instrument ?? {}),
      })),
    ],
    [
      'a higher bus voltage',
      fc.constantFrom(0.01, 0.05, 0.1, 1, 50, 600).map((more) => (input) => {
        const { busVoltage } = input;
        return busVoltage.kind === 'value' ? { ...input, busVoltage: volts(busVoltage.value + more) } : input;
      }),
    ],
    ['motor leads not stated', fc.constant((input) => ({ ...input, motorLeads: 'not-stated' }))],
  ];

  it.each(weaker)('%s', (name, change) => {
    const met = tally();
    fc.assert(
      fc.property(bridgeInput, change, (input, weaken) => {
        // A change from connected to not stated does not weaken the evidence.
        if (name.startsWith('motor') && input.motorLeads !== 'off') return;
        const before = assessBridge(input).verdict;
        met.add(before);
        expect([before, 'undecided']).toContain(assessBridge(weaken(input)).verdict);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });
});

it('a bridge with a required reading missing is never go', () => {
  const met = tally();
  fc.assert(
    fc.property(bridgeInput, fc.option(position), (input, place) => {
      const lacking = place === null ? { ...input, busVoltage: missing } : withReading(input, place, missing);
      met.add(assessBridge(input).verdict);
      expect(assessBridge(lacking).verdict).not.toBe('go');
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('the order of phases and of rails makes no difference to the verdict', () => {
  fc.assert(
    fc.property(bridgeInput, (input) => {
      const turn = ({ U, V, W }: BridgeInput['dcPlus']) => ({ U: V, V: W, W: U });
      const turned = { ...input, dcPlus: turn(input.dcPlus), dcMinus: turn(input.dcMinus) };
      expect(assessBridge(turned).verdict).toBe(assessBridge(input).verdict);
    }),
    { numRuns: runs },
  );
});

it('a suspect position is named if and only if a rail fails', () => {
  fc.assert(
    fc.property(bridgeInput, (input) => {
      for (const one of assessBridge(input).findings) {
        expect('suspects' in one && one.suspects.length > 0).toBe(one.severity === 'fail');
      }
    }),
    { numRuns: runs },
  );
});
