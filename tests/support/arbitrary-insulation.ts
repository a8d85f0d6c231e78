import fc from 'fast-check';
import type { InsulationInput } from '../../src/calculators/insulation/rule/input.ts';
import type { EndFilter, IdleCores } from '../../src/kernel/assessment/cable-ends.ts';
import type { FrameEarthed, PeConductor } from '../../src/kernel/assessment/protective-conductor.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { celsius, missing, ohms, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { instrument, logUniform, near, readingOf } from './arbitrary-readings.ts';

/** Upper limits of usual insulation testers in ohms, one below the after-trip point. */
export const testerLimits = [50e6, 200e6, 1e9, 14e9, 1e12];

export const mostly = <T>(usual: fc.Arbitrary<T>, rare: fc.Arbitrary<T>, weight = 10): fc.Arbitrary<T> =>
  fc.oneof({ weight, arbitrary: usual }, { weight: 1, arbitrary: rare });

/** A protective conductor by multimeter: nearly always a short. */
export const pe: fc.Arbitrary<Reading> = mostly(
  fc.constantFrom(0.1, 0.2, 0.5, 0.9).map((one) => ohms(one, 0.1)),
  fc.oneof(
    fc.constantFrom<Reading>(missing, ohms(0, 1e6), ohms(1, 0.1), ohms(1.1, 0.1), ohms(40e3, 1e3)),
    readingOf(logUniform(0.01, 1e9)),
  ),
  20,
);

const point = limitValue('after-trip-point');
const minimum = limitValue('ieee43-minimum-random-wound');

/** One level for a winding, slightly different at each terminal, so that whole sets often pass and fail. */
function winding(limit: number): fc.Arbitrary<InsulationInput['readings']> {
  const size = fc.oneof(near(limit), logUniform(limit, limit * 1e4), logUniform(limit, limit * 1e4));
  const one = (center: number) => readingOf(fc.constantFrom(1, 1, 1.02, 0.97, 1.1).map((factor) => center * factor));
  const even = size.chain((center) => fc.record({ U: one(center), V: one(center), W: one(center) }));
  const uneven = fc.record({ U: readingOf(near(limit)), V: readingOf(near(limit)), W: readingOf(near(limit)) });
  return mostly(even, uneven, 5);
}

const none = { U: missing, V: missing, W: missing };

/** U, V and W joined in one reading, sometimes with single ones beside it, sometimes not taken yet. */
function inOne(limit: number): fc.Arbitrary<Pick<InsulationInput, 'readings' | 'together' | 'rowKind'>> {
  const rowKind = fc.constant('joined' as const);
  const together = readingOf(fc.oneof(near(limit), logUniform(limit, limit * 1e4)));
  return fc.oneof(
    { weight: 4, arbitrary: fc.record({ rowKind, together, readings: fc.constant(none) }) },
    { weight: 1, arbitrary: fc.record({ rowKind, together, readings: winding(limit) }) },
    { weight: 1, arbitrary: fc.record({ rowKind, together: fc.constant(missing), readings: fc.constant(none) }) },
  );
}

/** Mostly nothing is known of the core. */
export const peConductor: fc.Arbitrary<PeConductor> = mostly(
  fc.constant({}),
  fc.record(
    {
      metres: fc.constantFrom(1, 20, 85),
      squareMillimetres: fc.constantFrom(1.5, 4),
      amperes: fc.constantFrom(0.001, 0.2, 10),
    },
    { requiredKeys: [] },
  ),
  4,
);

export const frameEarthed = fc.constantFrom<FrameEarthed>('only-pe', 'also-otherwise', 'not-stated');

/** Mostly as a go needs them. */
export const idleCores: fc.Arbitrary<IdleCores> = mostly(
  fc.constantFrom<IdleCores>('to-pe', 'none'),
  fc.constantFrom<IdleCores>('free', 'not-stated'),
  40,
);

export const filter: fc.Arbitrary<EndFilter> = mostly(
  fc.constantFrom<EndFilter>('none', 'not-stated'),
  fc.constant<EndFilter>('fitted'),
  60,
);

/** Mostly room temperature, sometimes at the ends of the methods' validity or beyond. */
export const windingTemperature: fc.Arbitrary<Reading> = mostly(
  fc.constantFrom(15, 20, 22, 25, 30, 40).map((one) => celsius(one, 1)),
  fc.oneof(
    fc.constantFrom<Reading>(missing),
    fc.integer({ min: -20, max: 130 }).map((one) => celsius(one, 1)),
  ),
  4,
);

export const testVoltage: fc.Arbitrary<Reading> = mostly(
  fc.constantFrom(250, 500, 1000).map((one) => volts(one, 1)),
  fc.constantFrom<Reading>(missing, volts(9), volts(100), volts(249)),
  12,
);

const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%', resolution: 1 });

/** The air: mostly not stated, sometimes complete, rarely incomplete. */
const air: fc.Arbitrary<Pick<InsulationInput, 'ambient' | 'humidity'>> = fc.oneof(
  { weight: 4, arbitrary: fc.constant({ ambient: missing, humidity: missing }) },
  {
    weight: 4,
    arbitrary: fc.record({
      ambient: fc.constantFrom(20, 35, 70).map((one) => celsius(one, 1)),
      humidity: fc.constantFrom(30, 60, 100).map(percent),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      { ambient: celsius(25, 1), humidity: missing },
      { ambient: missing, humidity: percent(60) },
    ),
  },
);

/** Visits to a winding, near the limits of every rule. */
export const insulationInput: fc.Arbitrary<InsulationInput> = fc
  .constantFrom('after-trip' as const, 'routine' as const)
  .chain((occasion) =>
    fc.record({
      occasion: fc.constant(occasion),
      row: fc.oneof(
        {
          weight: 4,
          arbitrary: winding(occasion === 'after-trip' ? point : minimum).map((readings) => ({ readings })),
        },
        { weight: 1, arbitrary: inOne(occasion === 'after-trip' ? point : minimum) },
      ),
      idleCores,
      filter,
      pe,
      peConductor,
      frameEarthed,
      testVoltage,
      ratedVoltage: mostly(
        fc.constantFrom<Reading>(volts(400), volts(690)),
        fc.constantFrom<Reading>(missing, volts(3000)),
        15,
      ),
      windingTemperature,
      air,
      machineClass: mostly(
        fc.constant('random-wound' as const),
        fc.constantFrom('form-wound' as const, 'pre-1970' as const),
        4,
      ),
      correction: mostly(
        fc.constant('halving' as const),
        fc.constantFrom('thermosetting' as const, 'table' as const),
        2,
      ),
      instrument: mostly(fc.constant({}), instrument(testerLimits), 2),
      testMinutes: fc.constantFrom<Reading>(missing, { kind: 'value', value: 1, unit: 'min' }),
    }),
  )
  .map(({ air, row, ...rest }) => ({ ...rest, ...row, ...air }));
