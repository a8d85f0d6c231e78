import fc from 'fast-check';
import type { MoreEvidence } from '../../src/calculators/isolation/rule/conviction.ts';
import type { IsolationInput, StageReadings } from '../../src/calculators/isolation/rule/input.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { celsius, missing, ohms, type Reading } from '../../src/kernel/reading/reading.ts';
import {
  filter,
  frameEarthed,
  idleCores,
  mostly,
  pe,
  peConductor,
  testerLimits,
  testVoltage,
  windingTemperature,
} from './arbitrary-insulation.ts';
import { instrument, logUniform, near, readingOf } from './arbitrary-readings.ts';

const point = limitValue('after-trip-point');

type Row = fc.Arbitrary<Phases<Reading>>;

/** Three readings of one level, on a display of whole megohms. */
const even = (size: fc.Arbitrary<number>): Row =>
  size.map((center) => {
    const reading = ohms(Math.round(center / 1e6) * 1e6, 1e6);
    return { U: reading, V: reading, W: reading };
  });

/** Three readings of about one level, sometimes bounds or missing. */
const ragged = (size: fc.Arbitrary<number>): Row => {
  const one = (center: number) => readingOf(fc.constantFrom(1, 1.05, 0.95).map((factor) => center * factor));
  return size.chain((center) => fc.record({ U: one(center), V: one(center), W: one(center) }));
};

const good = even(logUniform(4 * point, 100 * point));
/** Just above the after-trip limit, so that two good parts can be bad together. */
const tight = even(fc.constantFrom(1, 1.1, 1.3, 1.6, 2, 3, 10, 50).map((factor) => factor * point));
const any: Row = fc.oneof(ragged(logUniform(point, 100 * point)), ragged(near(point)), ragged(logUniform(0.1, 1e9)));

const stage = (phases: fc.Arbitrary<Phases<Reading>>, core: fc.Arbitrary<Reading>): fc.Arbitrary<StageReadings> =>
  fc.tuple(phases, core).map(([three, PE]) => ({ ...three, PE }));

const isolated: fc.Arbitrary<Reading> = mostly(
  logUniform(point, 1e12).map(
    (value): Reading => ({ kind: 'value', value: Math.ceil(value / 1e6) * 1e6, unit: 'Ω', resolution: 1e6 }),
  ),
  fc.oneof(fc.constant<Reading>(missing), readingOf(logUniform(0.1, 1e9))),
  8,
);

const resistance: fc.Arbitrary<Reading> = fc.oneof(
  { weight: 2, arbitrary: fc.constant<Reading>(missing) },
  { weight: 3, arbitrary: readingOf(logUniform(1, 1e10)) },
);

const more: fc.Arbitrary<MoreEvidence> = fc
  .record({ again: resistance, sister: resistance, dried: fc.constantFrom('yes' as const, 'no' as const, '' as const) })
  .map(({ dried, ...rest }) => ({ ...rest, ...(dried !== '' && { dried }) }));

/** Mostly not stated; sometimes a long cable of PVC, whose length may explain a reading. */
const build: fc.Arbitrary<Pick<IsolationInput, 'cableMetres' | 'cableMaterial' | 'cableTemperature'>> = mostly(
  fc.constant({}),
  fc.record({
    cableMetres: fc
      .constantFrom(5, 20, 56, 200)
      .map((metres): Reading => ({ kind: 'value', value: metres, unit: 'm' })),
    cableMaterial: fc.constantFrom('pvc' as const, 'pvc' as const, 'xlpe' as const, 'not-stated' as const),
    cableTemperature: fc.constantFrom<Reading>(missing, celsius(20, 1), celsius(26, 1), celsius(40, 1), celsius(5, 1)),
  }),
  1,
);

/** A go needs every stage, so most visits have them all. */
const optional = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined, freq: 12 });

/** A visit whose rows are mostly like `row`, sometimes anything. */
function visit(row: Row): fc.Arbitrary<IsolationInput> {
  const usual = mostly(row, any, 12);
  return fc
    .record({
      joined: stage(usual, pe),
      cable: optional(stage(usual, isolated)),
      bonded: optional(usual),
      motor: optional(stage(usual, pe)),
      peAgain: mostly(fc.constant<Reading>(missing), pe, 15),
      moreOfCable: mostly(fc.constant<MoreEvidence>({}), more, 4),
      moreOfMotor: mostly(fc.constant<MoreEvidence>({}), more, 4),
      build,
      peConductor,
      frameEarthed,
      idleCores,
      filter,
      cableEndsChecked: fc.boolean(),
      suspectedAnyway: mostly(fc.constant(false), fc.constant(true), 5),
      testVoltage,
      windingTemperature: mostly(windingTemperature, fc.constant<Reading>(missing), 8),
      correction: mostly(
        fc.constant('halving' as const),
        fc.constantFrom('thermosetting' as const, 'table' as const),
        3,
      ),
      instrument: mostly(fc.constant({}), instrument(testerLimits), 2),
    })
    .map(({ cable, bonded, motor, build, ...rest }) => ({
      ...rest,
      ...build,
      ...(cable === undefined ? {} : { cable }),
      ...(bonded === undefined ? {} : { bonded }),
      ...(motor === undefined ? {} : { motor }),
    }));
}

/** Cable and motor both shorted, each read again clean and dry. */
const bothShorted: fc.Arbitrary<IsolationInput> = visit(good).map((sound) => {
  const [short, shortAgain] = [ohms(5e3, 100), ohms(4.8e3, 100)];
  const three = { U: short, V: short, W: short };
  const again: MoreEvidence = { again: shortAgain, dried: 'yes' };
  const { bonded: _good, ...rest } = sound;
  return {
    ...rest,
    joined: { ...sound.joined, ...three },
    cable: { PE: missing, ...sound.cable, ...three },
    motor: { PE: missing, ...sound.motor, ...three },
    moreOfCable: again,
    moreOfMotor: again,
  };
});

/** Visits to cable and motor with any of the stages taken, near the limits of every rule. */
export const isolationInput: fc.Arbitrary<IsolationInput> = fc.oneof(
  { weight: 30, arbitrary: visit(good) },
  { weight: 20, arbitrary: visit(tight) },
  { weight: 10, arbitrary: visit(any) },
  { weight: 1, arbitrary: bothShorted },
);
