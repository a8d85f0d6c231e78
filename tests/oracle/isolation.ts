import { assessIsolation } from '../../src/calculators/isolation/rule/assess.ts';
import type { MoreEvidence } from '../../src/calculators/isolation/rule/conviction.ts';
import type { IsolationInput, StageReadings } from '../../src/calculators/isolation/rule/input.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { idleAndFilter, idleCoresShown } from './cable-ends.ts';
import type { Dice } from './dice.ts';
import { deadShort, figure, instrument, least, lowered, reading } from './readings.ts';
import { having, type Subject } from './subject.ts';
import { passesAfterTrip } from './winding-to-ground.ts';

const missing: Reading = { kind: 'missing' };
const phases = ['U', 'V', 'W'] as const;
const later = ['cable', 'bonded', 'motor'] as const;

function row(dice: Dice): Phases<Reading> {
  const size =
    100e6 * dice.pick([1, 1.1, 1.5, 3, 10, 10, 50, 50, ...(dice.chance(0.1) ? [0.99, 0.5, 1e-3, 1e-7] : [])]);
  const one = () => reading(dice, () => size * dice.pick([1, 1, 1.02, 1.2]), 'Ω', 0.008);
  return { U: one(), V: one(), W: one() };
}

/** A second reading, mostly sound, and one of before the trip. A go needs neither. */
const again = (dice: Dice): MoreEvidence => ({
  again: reading(dice, () => 100e6 * dice.pick([1, 3, 10, 0.5, 1e-3, 1e-6]), 'Ω', 0.1),
  sister: reading(dice, () => 100e6 * dice.pick([1, 10, 100]), 'Ω', 0.1),
  ...(dice.chance(0.7) && { dried: dice.pick(['yes', 'no'] as const) }),
});

const short = (dice: Dice) =>
  reading(dice, () => dice.pick([0.1, 0.3, 1, ...(dice.chance(0.1) ? [1.01, 20] : [])]), 'Ω', 0.02);

/** All cores at 100 MΩ or more, and nothing left out. Limit typed once more on purpose. */
const isolated = (list: readonly (Reading | undefined)[], by: Instrument) =>
  list.every((one) => one !== undefined && least(one, by) >= 100e6);

/**
 * Cable and motor side by side, each a third better than it was read (the error that IEC 61557-2 allows), or by a step of
 * its display: below the after-trip limit nothing good can have been read joined. Only for plain figures at one temperature.
 */
function partsTogetherAreBad({ cable, bonded, motor, motorTemperature }: IsolationInput): boolean {
  if (motorTemperature !== undefined && motorTemperature.kind !== 'missing') return false;
  const most = (one: Reading | undefined) =>
    one?.kind === 'value' ? one.value + Math.max(0.3 * one.value, one.resolution ?? 0) : Number.POSITIVE_INFINITY;
  return phases.some((phase) => {
    const core = Math.min(most(cable?.[phase]), most(bonded?.[phase]));
    return 1 / (1 / core + 1 / most(motor?.[phase])) < 100e6 * (1 - 1e-9);
  });
}

function withReading(input: IsolationInput, dice: Dice, to: (one: Reading) => Reading): IsolationInput | undefined {
  const stage = dice.pick(['joined', ...later] as const);
  const phase = dice.pick(phases);
  const readings = input[stage];
  if (readings === undefined) return undefined;
  return { ...input, [stage]: { ...readings, [phase]: to(readings[phase]) } };
}

export const isolation: Subject<IsolationInput> = {
  name: 'isolation',
  make: (dice) => {
    const winding = (): Reading =>
      dice.chance(0.96)
        ? {
            kind: 'value',
            value: dice.below(10) === 0 ? dice.pick([-5, 0, 8, 60, 99, 101]) : 14 + dice.below(30),
            unit: '°C',
            resolution: 1,
          }
        : reading(dice, () => 20, '°C', 1);
    const stage = (PE: Reading): StageReadings => ({ ...row(dice), PE });
    const core = () =>
      reading(dice, () => 100e6 * dice.pick([1, 2, 10, ...(dice.chance(0.1) ? [0.99, 1e-8] : [])]), 'Ω', 0.02);
    return {
      joined: stage(short(dice)),
      ...(dice.chance(0.96) && { cable: stage(core()) }),
      ...(dice.chance(0.96) && { bonded: row(dice) }),
      ...(dice.chance(0.96) && { motor: stage(short(dice)) }),
      ...idleAndFilter(dice),
      ...(dice.chance(0.2) && { peAgain: short(dice) }),
      ...(dice.chance(0.2) && { moreOfCable: again(dice), moreOfMotor: again(dice) }),
      ...(dice.chance(0.2) && {
        cableMetres: reading(dice, () => dice.log(1, 500), 'm', 0.03),
        cableMaterial: dice.pick(['pvc', 'xlpe', 'not-stated'] as const),
        cableTemperature: winding(),
      }),
      cableEndsChecked: dice.chance(0.5),
      suspectedAnyway: dice.chance(0.3),
      testVoltage: reading(dice, () => dice.pick([500, 250, 1000, ...(dice.chance(0.1) ? [249] : [])]), 'V', 0.02),
      windingTemperature: winding(),
      ...(dice.chance(0.3) && { motorTemperature: winding() }),
      correction: dice.pick(['halving', 'halving', 'thermosetting', 'table'] as const),
      ...(dice.chance(0.4) && { instrument: instrument(dice, [50e6, 720e6, 2e9]) }),
    };
  },
  verdict: (input) => assessIsolation(input).verdict,
  mayGo: (input) => {
    const {
      joined,
      cable,
      bonded,
      motor,
      testVoltage,
      windingTemperature,
      motorTemperature = missing,
      correction,
    } = input;
    const by = input.instrument ?? {};
    if (!idleCoresShown(input) || input.filter === 'fitted') return false;
    if (cable === undefined || bonded === undefined || motor === undefined) return false;
    if (!deadShort(joined.PE) || !deadShort(motor.PE) || !(figure(testVoltage) >= 250)) return false;
    const atMotor = motorTemperature.kind === 'missing' ? windingTemperature : motorTemperature;
    // Readings taken again may cast doubt, and clear nothing that was read before.
    if (figure(input.peAgain) > 1) return false;
    // Below 100 kΩ a part is bad at any temperature, any length and with any tester.
    if ([input.moreOfCable, input.moreOfMotor].some((more) => figure(more?.again) < 100e3)) return false;
    const windings = phases.every(
      (phase) =>
        passesAfterTrip(joined[phase], by, windingTemperature, correction) &&
        passesAfterTrip(motor[phase], by, atMotor, correction),
    );
    const cores = isolated([...phases.flatMap((phase) => [cable[phase], bonded[phase]]), cable.PE], by);
    return windings && cores && !partsTogetherAreBad(input);
  },
  lacking: (input, dice) => {
    const key = dice.pick([
      'testVoltage',
      'windingTemperature',
      'idleCores',
      ...later,
      ...later,
      'one',
      'one',
      'PE',
    ] as const);
    if (key === 'idleCores') return having(input, key, dice.pick(['free', 'not-stated'] as const));
    if (key === 'testVoltage' || key === 'windingTemperature') return having(input, key, missing);
    if (key === 'one') return withReading(input, dice, () => missing) ?? having(input, 'testVoltage', missing);
    if (key === 'PE') return having(input, 'joined', having(input.joined, 'PE', missing));
    const { [key]: _taken, ...rest } = input;
    return rest;
  },
  worse: (input, dice) => {
    if (input.instrument?.upperLimit !== undefined) return undefined;
    const by = dice.pick([1.01, 1.3, 2, 100, 1e6]);
    return withReading(input, dice, (one) => lowered(one, by));
  },
  // The symptom decides what is measured next, never whether it is go.
  plain: (input) => ({ ...input, suspectedAnyway: !input.suspectedAnyway }),
};
