import fc from 'fast-check';
import type { BridgeDiodeInput } from '../../src/calculators/bridge-diode/rule/assess.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import { missing, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { bridgeInput, position } from './arbitrary-bridge.ts';

const over = (atLeast?: number): Reading =>
  atLeast === undefined ? { kind: 'over', unit: 'V' } : { kind: 'over', unit: 'V', atLeast };
const under = (atMost: number): Reading => ({ kind: 'under', unit: 'V', atMost });
const drop = (...values: number[]) => fc.constantFrom(...values).map((value) => volts(value, 0.001));
const three = (one: fc.Arbitrary<Reading>): fc.Arbitrary<Phases<Reading>> => fc.record({ U: one, V: one, W: one });

/** Anything that a diode test shows, near the limits of every rule. */
const any = fc.oneof(
  { weight: 6, arbitrary: drop(0, 0.003, 0.09, 0.1, 0.11, 0.2, 0.35, 0.41, 0.46, 0.52, 1.2, 1.49, 1.5, 1.7, 1.72) },
  { weight: 3, arbitrary: fc.constantFrom<Reading>(over(), over(2), over(1), missing, under(0.05), under(2)) },
);

const forward = fc.oneof(
  { weight: 10, arbitrary: three(drop(0.405, 0.41, 0.42, 0.43)) },
  { weight: 2, arbitrary: three(drop(0.39, 0.41, 0.44, 0.45)) },
  { weight: 1, arbitrary: three(any) },
  { weight: 1, arbitrary: three(fc.constant(over())) },
  { weight: 1, arbitrary: three(drop(0.21, 0.22)) },
);

const reverse = fc.oneof(
  { weight: 12, arbitrary: three(fc.constantFrom<Reading>(over(), over(2))) },
  { weight: 1, arbitrary: three(drop(1.7, 1.71, 1.72)) },
  { weight: 1, arbitrary: three(drop(0.41, 0.42)) },
  { weight: 1, arbitrary: three(any) },
);

const rail = fc.record({ forward, reverse });

/** A diode test without resistance readings, usually with the bus dead and the leads off. */
export const diodeTest: fc.Arbitrary<BridgeDiodeInput> = fc
  .record({
    busVoltage: fc.oneof(
      { weight: 12, arbitrary: fc.constant<Reading>(volts(0.02, 0.01)) },
      { weight: 1, arbitrary: fc.constantFrom<Reading>(volts(3), volts(320), missing) },
    ),
    motorLeads: fc.constantFrom(
      'off' as const,
      'off' as const,
      'off' as const,
      'connected' as const,
      'not-stated' as const,
    ),
    steadiness: fc.constantFrom(
      'steady' as const,
      'steady' as const,
      'steady' as const,
      'drifting' as const,
      'not-stated' as const,
    ),
    plus: rail,
    minus: rail,
    instrument: fc.constantFrom({}, {}, { percent: 1, counts: 2 }),
  })
  .map((input): BridgeDiodeInput => input);

/** The same with the resistances beside it. */
export const bothTests: fc.Arbitrary<BridgeDiodeInput> = fc
  .tuple(diodeTest, bridgeInput)
  .map(([diode, { dcPlus, dcMinus }]) => ({ ...diode, resistance: { dcPlus, dcMinus } }));

/** One of the twelve readings. */
export const place = fc.record({ at: position, way: fc.constantFrom('forward' as const, 'reverse' as const) });

export type Place = typeof place extends fc.Arbitrary<infer P> ? P : never;

export function withDrop(input: BridgeDiodeInput, { at, way }: Place, reading: Reading): BridgeDiodeInput {
  const rail = at.rail === 'dcPlus' ? 'plus' : 'minus';
  return { ...input, [rail]: { ...input[rail], [way]: { ...input[rail][way], [at.phase]: reading } } };
}
