import fc from 'fast-check';
import type { WindingInput } from '../../src/calculators/winding/rule/assess.ts';
import { conductors } from '../../src/kernel/electrics/conductor-temperature.ts';
import { celsius, missing, ohms, overOhms, type Reading } from '../../src/kernel/reading/reading.ts';
import { instrument, logUniform, readingOf, shown } from './arbitrary-readings.ts';

/** Windings: alike, nearly alike, one different, and anything. */
const readings: fc.Arbitrary<WindingInput['readings']> = fc
  .record({ center: logUniform(0.02, 30), digits: fc.constantFrom(2, 3, 4) })
  .chain(({ center, digits }) => {
    const around = (...factors: number[]) =>
      fc.constantFrom(...factors).map((factor) => shown(center * factor, digits));
    const three = (one: fc.Arbitrary<Reading>) => fc.record({ UV: one, VW: one, WU: one });
    return fc.oneof(
      { weight: 6, arbitrary: three(around(1, 1.002, 1.005, 1.01)) },
      { weight: 3, arbitrary: three(around(1, 1.02, 1.035, 1.05, 1.08)) },
      { weight: 4, arbitrary: three(around(1, 1, 1, 0.7, 1.4, 2)) },
      { weight: 2, arbitrary: three(fc.oneof(around(1, 1.01), fc.constantFrom<Reading>(overOhms(), overOhms(20e6)))) },
      { weight: 1, arbitrary: three(readingOf(logUniform(0.01, 1e6))) },
    );
  });

const temperature = fc.constantFrom<Reading>(missing, celsius(20, 1), celsius(45, 1), celsius(250, 1));

/** What a person may state beside the readings; each may be left out. */
const statements = fc.record(
  {
    leads: fc.constantFrom('four' as const, 'four' as const, 'zeroed' as const, 'subtract' as const),
    leadOhms: fc.constantFrom<Reading>(missing, missing, ohms(0, 0.01), ohms(0.1, 0.01), ohms(5, 0.1), overOhms()),
    kind: fc.constantFrom('random-wound' as const, 'form-wound' as const),
    connection: fc.constantFrom('star' as const, 'delta' as const, 'unknown' as const),
    conductor: fc.constantFrom(...conductors),
    correctTo: fc.constantFrom('to-20' as const, 'to-25' as const),
    instrument: instrument([720, 7200]),
    temperature,
  },
  { requiredKeys: [] },
);

const reference = fc.oneof(
  { weight: 5, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.record({
      reference: fc.constantFrom<Reading>(ohms(1, 0.01), ohms(0.5, 0.01), ohms(0, 0.1)),
      referenceTemperature: temperature,
    }),
  },
);

/** A second set: the same with a step or so more, another one, nothing, or only a part of it. */
const second = (first: WindingInput['readings']): fc.Arbitrary<Pick<WindingInput, 'again'>> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constant({}) },
    { weight: 3, arbitrary: fc.constant({ again: first }) },
    { weight: 1, arbitrary: fc.constant({ again: { ...first, VW: missing } }) },
    { weight: 1, arbitrary: fc.constant({ again: { UV: first.VW, VW: first.WU, WU: first.UV } }) },
    { weight: 1, arbitrary: fc.constant({ again: { UV: first.UV, VW: first.UV, WU: first.UV } }) },
    { weight: 1, arbitrary: readings.map((again) => ({ again })) },
  );

const joint = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(0.0005, 0.003, 0.03, 0.08).map((one) => ({ acrossJoint: ohms(one, 0.0001) })),
  },
  { weight: 1, arbitrary: fc.constantFrom(missing, overOhms()).map((acrossJoint) => ({ acrossJoint })) },
);

export const windingInput: fc.Arbitrary<WindingInput> = fc
  .tuple(readings, statements, reference, joint)
  .chain(([three, stated, compared, across]) =>
    second(three).map((again) => ({ readings: three, ...again, ...stated, ...compared, ...across })),
  );

/** The usual measurement: four leads, nothing to compare with. */
/** The usual measurement with a second set, and the connector measured sometimes. */
export const twoSets: fc.Arbitrary<WindingInput> = fc
  .tuple(readings, fc.constantFrom('four' as const, 'four' as const, 'zeroed' as const), joint)
  .chain(([three, leads, across]) => second(three).map((again) => ({ readings: three, leads, ...again, ...across })));

export const plainWinding: fc.Arbitrary<WindingInput> = fc
  .record({ readings, leads: fc.constantFrom('four' as const, 'four' as const, 'zeroed' as const) })
  .map((input): WindingInput => input);
