import { assessBrakingCircuit } from '../../src/calculators/braking-circuit/rule/assess.ts';
import type { BrakingCircuitInput } from '../../src/calculators/braking-circuit/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { busIsDead, figure, further, hair, instrument, least, lowered, raised, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const conducting = ['upperConducting', 'lowerConducting'] as const;
const blocking = ['upperBlocking', 'lowerBlocking'] as const;

const open = (dice: Dice): Reading =>
  dice.chance(0.9) ? { kind: 'over', unit: 'V' } : reading(dice, () => dice.pick([0.002, 0.3, 1.4, 1.5, 2.1]), 'V');
const drop = (dice: Dice): Reading =>
  dice.chance(0.06) ? { kind: 'over', unit: 'V' } : reading(dice, () => dice.pick([0.45, 0.5, 0.5, 0.62, 0.002]), 'V');

function make(dice: Dice): BrakingCircuitInput {
  const plate = dice.pick([12, 33, 47, 100]);
  const high = (limit: number) => limit * dice.pick([0.1, 0.99, 1, 20, 20, 20, 20, 20, 20]);
  const thermal = dice.pick(['none', 'none', 'opens-hot', 'opens-hot', 'other', 'not-stated'] as const);
  return {
    busVoltage: reading(dice, () => dice.pick([0, 0.02, 0.02, 0.1, 0.11, 49, 300]), 'V'),
    plate: reading(dice, () => plate, 'Ω'),
    plateTolerance: dice.chance(0.2) ? reading(dice, () => dice.pick([5, 10, 50]), '%') : missing,
    ohms: reading(dice, () => plate * dice.pick([0.5, 0.8, 0.93, 1, 1, 1, 1.02, 1.09, 1.2, 3]), 'Ω'),
    lead: dice.chance(0.9) ? 'steady' : dice.pick(['jumps', 'not-stated'] as const),
    toHousing: reading(dice, () => high(1e6), 'Ω'),
    insulation: reading(dice, () => high(1e6), 'Ω'),
    thermal,
    thermalOhms: thermal === 'none' && dice.chance(0.9) ? missing : reading(dice, () => dice.pick([0.3, 0.5, 3]), 'Ω'),
    upperConducting: drop(dice),
    upperBlocking: open(dice),
    lowerConducting: drop(dice),
    lowerBlocking: open(dice),
    again: dice.chance(0.5),
    ...(dice.chance(0.3) && { instrument: instrument(dice, [2e7]) }),
  };
}

/** OL without a range is above any drop. */
const isOpen = (one: Reading) => one.kind === 'over' && one.atLeast === undefined;

/** Limits typed once more on purpose. */
function mayGo(input: BrakingCircuitInput): boolean {
  const { plate, ohms, plateTolerance, thermal, thermalOhms, instrument: by } = input;
  if (!busIsDead(input.busVoltage) || input.lead !== 'steady') return false;
  const noSwitch = thermal === 'none' && thermalOhms.kind === 'missing';
  if (thermal === 'opens-hot' ? !((span(thermalOhms, by)?.hi ?? 9) <= 2) : !noSwitch) return false;
  const tolerance = Math.min(25, figure(plateTolerance) >= 0 ? figure(plateTolerance) : 10) / 100;
  const read = span(ohms, by);
  const stated = figure(plate);
  if (!read || !(read.lo >= (stated * (1 - tolerance)) / hair && read.hi <= stated * (1 + tolerance) * hair))
    return false;
  if (!(least(input.toHousing, by) >= 1e6 && least(input.insulation) >= 1e6)) return false;
  const meter = {
    ...(by?.percent !== undefined && { percent: by.percent }),
    ...(by?.counts !== undefined && { counts: by.counts }),
  };
  return (
    conducting.every((one) => {
      const at = span(input[one], meter);
      return at !== undefined && at.lo > 0.1 / hair && at.hi < 1.5 * hair;
    }) && blocking.every((one) => isOpen(input[one]) || least(input[one], meter) >= 1.5)
  );
}

export const brakingCircuit: Subject<BrakingCircuitInput> = {
  name: 'braking circuit',
  make,
  signed: ['busVoltage', ...conducting, ...blocking],
  verdict: (input) => assessBrakingCircuit(input).verdict,
  mayGo,
  lacking: (input, dice) => {
    const what = dice.pick([
      'lead',
      'thermal',
      'busVoltage',
      'plate',
      'ohms',
      'toHousing',
      'insulation',
      ...conducting,
      ...blocking,
    ] as const);
    return what === 'lead' || what === 'thermal' ? having(input, what, 'not-stated') : having(input, what, missing);
  },
  worse: (input, dice) => {
    if (dice.chance(0.2)) return having(input, 'lead', 'jumps');
    const ohms = dice.pick([1.01, 1.3, 2, 100, 1e6]);
    const field = dice.pick(['toHousing', 'insulation', ...blocking] as const);
    // A reading below zero stops everything, and what stops is undecided.
    const below = [...conducting, ...blocking].some((one) => figure(input[one]) < 0);
    if (below || input.instrument?.upperLimit !== undefined) return undefined;
    if (dice.chance(0.2)) return having(input, 'ohms', further(input.ohms, figure(input.plate), ohms));
    if (dice.chance(0.1)) return having(input, 'thermalOhms', raised(input.thermalOhms, ohms));
    return having(input, field, lowered(input[field], dice.pick([1.01, 1.3, 2, 100, 1e6])));
  },
};
