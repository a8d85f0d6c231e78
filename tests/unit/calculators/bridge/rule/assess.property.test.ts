import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import type { Verdict } from '../../../../../src/kernel/assessment/assessment.ts';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { bridgeInput, meterLimits, plainBridge, position } from '../../../../support/arbitrary-bridge.ts';
import { weakerInstrument } from '../../../../support/arbitrary-readings.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

type Position = { rail: 'dcPlus' | 'dcMinus'; phase: 'U' | 'V' | 'W' };

function withReading(input: BridgeInput, { rail, phase }: Position, reading: Reading): BridgeInput {
  return { ...input, [rail]: { ...input[rail], [phase]: reading } };
}

/** The other two readings of the rail that count: of U the last one. */
function others(input: BridgeInput, { rail, phase }: Position): Reading[] {
  const again = (rail === 'dcPlus' ? input.plusAgain : input.minusAgain) ?? missing;
  const { U, V, W } = input[rail];
  const settled = { U: U.kind === 'missing' || again.kind === 'missing' ? U : again, V, W };
  return (['U', 'V', 'W'] as const).filter((one) => one !== phase).map((one) => settled[one]);
}

/**
 * Worse: moved away from the other two readings of its rail. A value changes so that its ratio to neither of the others
 * shrinks, and stays on the same side of both: a low reading speaks against a switch, a high one against a contact, so
 * neither is the other made worse. Away from an over-range is down, from an under-range up. Undefined if no change is
 * away.
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
    if (other.kind === 'missing') return true;
    const side = Math.sign(reading.value - other.value);
    if (side !== 0 && Math.sign(value - other.value) !== side) return false;
    return ratio(value, other.value) >= ratio(reading.value, other.value);
  });
  if (!away || rest.every(({ kind }) => kind === 'missing')) return undefined;
  // A figure above the meter's own limit is a contradiction, which is weaker evidence than the reading before.
  if (value > (input.instrument?.upperLimit ?? Number.POSITIVE_INFINITY)) return undefined;
  return up && becomesOver ? overOhms(value) : ohms(value, step);
}

/** No reading of the rail is above a short: the pattern of three diodes that conduct, which is not worse evidence. */
function lowAndAlike(input: BridgeInput, { rail }: Position): boolean {
  const again = (rail === 'dcPlus' ? input.plusAgain : input.minusAgain) ?? missing;
  const { U, V, W } = input[rail];
  return [U.kind === 'missing' || again.kind === 'missing' ? U : again, V, W].every(
    (one) => one.kind === 'missing' || one.kind === 'under' || (one.kind === 'value' && one.value <= 1000),
  );
}

/**
 * The highest rank after a change for the worse: that before. U read again replaces its first reading, and a lower first
 * one only makes a capacitor that charges more likely, so there a no-go may become undecided.
 */
function allowed(input: BridgeInput, { rail, phase }: Position, before: Verdict): number {
  const again = rail === 'dcPlus' ? input.plusAgain : input.minusAgain;
  const isReplaced = phase === 'U' && again !== undefined && again.kind !== 'missing';
  return isReplaced ? Math.max(rank[before], rank.undecided) : rank[before];
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
        const { verdict } = assessBridge(withReading(input, place, moved));
        // Farther apart may be nearer to the sister.
        if (input.sister === 'alike' && verdict === 'go') return;
        expect(rank[verdict]).toBeLessThanOrEqual(allowed(input, place, before));
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
        const short = withReading(input, place, reading);
        const { verdict } = assessBridge(short);
        if (lowAndAlike(short, place)) {
          expect(verdict).not.toBe('go');
          return;
        }
        met.add(before);
        expect(rank[verdict]).toBeLessThanOrEqual(allowed(input, place, before));
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

it('the order of phases makes no difference to the verdict once U is read again and stands still', () => {
  const met = tally();
  fc.assert(
    fc.property(plainBridge, (input) => {
      const turn = ({ U, V, W }: BridgeInput['dcPlus']) => ({ U: V, V: W, W: U });
      // An under-range is never seen to stand still, and a U that was not read can't be read again.
      const unread = ({ kind }: Reading) => kind === 'under' || kind === 'missing';
      if ([input.dcPlus, input.dcMinus].some(({ U, V, W }) => [U, V, W].some(unread))) return;
      const steady = (one: BridgeInput) => assessBridge({ ...one, plusAgain: one.dcPlus.U, minusAgain: one.dcMinus.U });
      const turned = { ...input, dcPlus: turn(input.dcPlus), dcMinus: turn(input.dcMinus) };
      met.add(steady(input).verdict);
      expect(steady(turned).verdict).toBe(steady(input).verdict);
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('neither does the order of rails', () => {
  fc.assert(
    fc.property(bridgeInput, (input) => {
      const { dcPlus, dcMinus, plusAgain, minusAgain, plusExchanged, minusExchanged } = input;
      const turned = {
        ...input,
        dcPlus: dcMinus,
        dcMinus: dcPlus,
        plusAgain: minusAgain ?? missing,
        minusAgain: plusAgain ?? missing,
        plusExchanged: minusExchanged ?? missing,
        minusExchanged: plusExchanged ?? missing,
      };
      const [one, other] = [assessBridge(input), assessBridge(turned)];
      expect([other.verdict, other.drive]).toEqual([one.verdict, one.drive]);
    }),
    { numRuns: runs },
  );
});

it('a suspect position is named if and only if a rail fails', () => {
  fc.assert(
    fc.property(bridgeInput, (input) => {
      for (const one of assessBridge(input).findings) {
        if (one.code === 'bus-shorted') continue;
        expect('suspects' in one && one.suspects.length > 0, one.code).toBe(one.severity === 'fail');
      }
    }),
    { numRuns: runs },
  );
});

const drives = { convicted: 'no-go', suspect: 'no-go', sound: 'go', open: 'undecided' };

describe('a conviction', () => {
  it('needs a no-go, and never stands beside another verdict', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(bridgeInput, (input) => {
        const { verdict, drive } = assessBridge(input);
        met.add(drive);
        expect(verdict).toBe(drives[drive]);
      }),
      { numRuns: runs },
    );
    expect([...met].sort()).toEqual(['convicted', 'open', 'sound', 'suspect']);
  });

  it.each<[string, Partial<BridgeInput>]>([
    ['the motor leads off', { motorLeads: 'not-stated' }],
    ['a bus with nothing else on it', { alsoOnBus: 'not-stated' }],
    ['a bus with nothing else on it, and said so', { alsoOnBus: 'something' }],
    ['a sister that is not alike', { sister: 'alike' }],
    [
      'a second reading',
      {
        worstAgain: missing,
        plusAgain: missing,
        minusAgain: missing,
        plusExchanged: missing,
        minusExchanged: missing,
      },
    ],
  ])('needs %s', (_name, without) => {
    fc.assert(
      fc.property(bridgeInput, (input) => {
        expect(assessBridge({ ...input, ...without }).drive).not.toBe('convicted');
      }),
      { numRuns: runs },
    );
  });
});
