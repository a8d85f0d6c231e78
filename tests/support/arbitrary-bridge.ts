import fc from 'fast-check';
import type { BridgeInput } from '../../src/calculators/bridge/rule/assess.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import { missing, overOhms, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { instrument, logUniform, readingOf, shown } from './arbitrary-readings.ts';

/** Upper limits of usual multimeters, and one that is too low for any bridge. */
export const meterLimits = [72e3, 720e3, 7.2e6, 72e6, 720e6];

const three = (one: fc.Arbitrary<Reading>): fc.Arbitrary<Phases<Reading>> => fc.record({ U: one, V: one, W: one });

/** Rails: sound, open, nearly sound with one odd reading, and anything. */
function rail(usual: fc.Arbitrary<number>): fc.Arbitrary<Phases<Reading>> {
  const around = (center: number, factors: number[]) =>
    fc.constantFrom(...factors).map((factor) => shown(center * factor));
  const sound = usual.chain((center) => three(around(center, [1, 1.01, 1.02, 1.05, 1.08])));
  const close = usual.chain((center) => three(around(center, [1, 1.05, 1.09, 1.095, 1.1, 1.105, 1.12])));
  const open = three(fc.constantFrom<Reading>(overOhms(), overOhms(72e6), overOhms(720e6), overOhms(720e3)));
  const odd = usual.chain((center) =>
    three(readingOf(around(center, [1, 1, 1, 1.03, 2.2, 0.4, 0.02, 1e-6]).map((r) => r.value))),
  );
  // Later readings that are lower than an earlier one: no capacitor explains them.
  const bad = usual.chain((center) =>
    fc.record({
      U: fc.constant(shown(center)),
      V: fc.constantFrom(1, 1, 0.3, 0.1, 0.01, 5e-6).map((factor) => shown(center * factor)),
      W: fc.constantFrom(1, 1.02, 0.3, 5e-6).map((factor) => shown(center * factor)),
    }),
  );
  // Low and alike, as sound diodes with the leads exchanged.
  const diodes = three(around(458, [1, 0.99, 1.02]));
  return fc.oneof(
    { weight: 20, arbitrary: sound },
    { weight: 3, arbitrary: close },
    { weight: 3, arbitrary: open },
    { weight: 2, arbitrary: odd },
    { weight: 4, arbitrary: bad },
    { weight: 2, arbitrary: diodes },
    { weight: 1, arbitrary: three(readingOf(logUniform(0.1, 1e9))) },
  );
}

/** Visits to a bridge, near the limits of every rule, without any second reading. */
export const plainBridge: fc.Arbitrary<BridgeInput> = fc.record({
  busVoltage: fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(0, 0.02, 0.1).map((one) => volts(one, 0.01)) },
    {
      weight: 1,
      arbitrary: fc.constantFrom<Reading>(volts(0.11), volts(5), volts(50), volts(51), volts(565), missing),
    },
  ),
  motorLeads: fc.oneof(
    { weight: 12, arbitrary: fc.constant('off' as const) },
    { weight: 1, arbitrary: fc.constantFrom('connected' as const, 'not-stated' as const) },
  ),
  dcPlus: rail(logUniform(120e3, 5e6)),
  dcMinus: rail(logUniform(11e3, 90e3)),
  tolerancePercent: fc.oneof(
    { weight: 4, arbitrary: fc.constant(10) },
    { weight: 1, arbitrary: fc.constantFrom(5, 20) },
  ),
  instrument: fc.oneof({ weight: 1, arbitrary: fc.constant({}) }, { weight: 1, arbitrary: instrument(meterLimits) }),
});

const near = fc.constantFrom(1, 1, 1, 1.03, 1.3, 0.9, 0.4, 2.5, 1e-5);

/** A second reading of one of the six: mostly the same, sometimes not, sometimes lacking. */
function second(of: Reading): fc.Arbitrary<Reading> {
  const again = of.kind === 'value' && of.value > 0 ? near.map((factor) => shown(of.value * factor)) : fc.constant(of);
  return fc.oneof({ weight: 2, arbitrary: fc.constant<Reading>(missing) }, { weight: 3, arbitrary: again });
}

const inOhms = (reading: Reading) => (reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY);

/** U with the leads exchanged: as before, or much more, if the first way was that of the diodes. */
const exchanged = (of: Reading): fc.Arbitrary<Reading> =>
  of.kind === 'value' && of.value > 0
    ? fc.oneof(second(of), fc.constantFrom<Reading>(shown(of.value * 400), overOhms(720e6)))
    : second(of);

/** The same with second readings, mostly of what was read. */
export const bridgeInput: fc.Arbitrary<BridgeInput> = plainBridge.chain((input) => {
  const six = [input.dcPlus, input.dcMinus].flatMap(({ U, V, W }) => [U, V, W]);
  const lowest = [...six].sort((one, other) => inOhms(one) - inOhms(other))[0] ?? missing;
  const all = fc.record({
    plusAgain: second(input.dcPlus.U),
    minusAgain: second(input.dcMinus.U),
    plusExchanged: exchanged(input.dcPlus.U),
    minusExchanged: exchanged(input.dcMinus.U),
    worstAgain: fc.oneof(second(lowest), fc.constantFrom(...six).chain(second)),
    dcBus: fc.constantFrom<Reading>(missing, missing, shown(470e3), overOhms(), shown(500), shown(2)),
    sister: fc.constantFrom('alike' as const, 'differs' as const, 'not-compared' as const, 'not-compared' as const),
    alsoOnBus: fc.constantFrom('nothing' as const, 'nothing' as const, 'something' as const, 'not-stated' as const),
  });
  return fc.oneof(
    fc.constant(input),
    all.map((more) => ({ ...input, ...more })),
  );
});

export const position = fc.record({
  rail: fc.constantFrom('dcPlus' as const, 'dcMinus' as const),
  phase: fc.constantFrom('U' as const, 'V' as const, 'W' as const),
});
