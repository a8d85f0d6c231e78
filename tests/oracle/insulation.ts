import { assessInsulation } from '../../src/calculators/insulation/rule/assess.ts';
import type { InsulationInput } from '../../src/calculators/insulation/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { idleAndFilter, idleCoresShown } from './cable-ends.ts';
import { deadShort, figure, instrument, least, lowered, reading, shown, span } from './readings.ts';
import { having, type Subject } from './subject.ts';
import { leastCorrected, passesAfterTrip } from './winding-to-ground.ts';

const missing: Reading = { kind: 'missing' };
const phases = ['U', 'V', 'W'] as const;
const none = { U: missing, V: missing, W: missing };

/** Dew point by the Magnus formula with the constants of Alduchov and Eskridge 1996 (recalled), typed once more. */
function dewPoint(air: number, humidity: number): number {
  const gamma = Math.log(humidity / 100) + (17.625 * air) / (243.04 + air);
  return (243.04 * gamma) / (17.625 - gamma);
}

function isDry({ ambient, humidity, windingTemperature }: InsulationInput): boolean {
  if (ambient.kind === 'missing' && humidity.kind === 'missing') return true;
  const [air, wet, winding] = [figure(ambient), figure(humidity), figure(windingTemperature)];
  if (air >= -20 && air <= 60 && wet > 0 && wet <= 100) return winding > dewPoint(air, wet) - 1e-6;
  return winding > air;
}

/** Random-wound 5 MΩ, form-wound 100 MΩ, old ones 1 MΩ and 1 MΩ more for each kilovolt (IEEE 43, recalled). */
export function minimumOf(machineClass: InsulationInput['machineClass'], rated: Reading): number {
  if (machineClass === 'random-wound') return 5e6;
  return machineClass === 'form-wound' ? 100e6 : 1e6 * (1 + figure(rated) / 1000);
}

export const insulation: Subject<InsulationInput> = {
  name: 'insulation',
  make: (dice) => {
    const occasion = dice.pick(['after-trip', 'routine'] as const);
    const machineClass = dice.pick(['random-wound', 'random-wound', 'form-wound', 'pre-1970'] as const);
    const size =
      dice.pick([2, 1, 1.1, 1.3, 0.9, 4, 20, 100, dice.log(1e-6, 1e6)]) *
      (occasion === 'routine' && machineClass !== 'form-wound' ? 5e6 : 100e6);
    const rowKind = dice.pick(['single', 'single', 'joined'] as const);
    const one = () => reading(dice, () => size * dice.pick([1, 1.02, 1.1, 1.5]), 'Ω', 0.015);
    const degrees = dice.chance(0.5) ? dice.between(15, 45) : dice.between(-10, 110);
    return {
      occasion,
      machineClass,
      ...(rowKind === 'joined'
        ? { rowKind, together: one(), readings: dice.chance(0.9) ? none : { U: one(), V: one(), W: one() } }
        : { readings: { U: one(), V: one(), W: one() } }),
      ...idleAndFilter(dice),
      pe: reading(dice, () => dice.pick([0.1, 0.3, 0.99, 1, ...(dice.chance(0.2) ? [1.01, 20] : [])]), 'Ω', 0.03),
      testVoltage: reading(
        dice,
        () => dice.pick([500, 1000, 500, 250, ...(dice.chance(0.2) ? [249, 9] : [])]),
        'V',
        0.03,
      ),
      ratedVoltage: reading(dice, () => dice.pick([400, 230, 690, 3000]), 'V', 0.03),
      windingTemperature: dice.chance(0.95)
        ? { kind: 'value', value: Math.round(degrees), unit: '°C', resolution: 1 }
        : reading(dice, () => degrees, '°C', 1),
      ambient: dice.chance(0.7) ? missing : reading(dice, () => dice.between(0, 40), '°C', 0.1),
      humidity: dice.chance(0.7) ? missing : reading(dice, () => dice.between(5, 100), '%', 0.1),
      correction: dice.pick(['halving', 'halving', 'thermosetting', 'table'] as const),
      ...(dice.chance(0.5) && { instrument: instrument(dice, [50e6, 720e6, 2e9]) }),
      testMinutes: dice.chance(0.8) ? missing : shown(dice, 1, 'min'),
    };
  },
  verdict: (input) => assessInsulation(input).verdict,
  mayGo: (input) => {
    const { occasion, readings, pe, testVoltage, ratedVoltage, windingTemperature, correction, instrument: by } = input;
    if (!idleCoresShown(input) || input.filter === 'fitted') return false;
    if (!deadShort(pe) || !(figure(testVoltage) >= 250) || !(figure(ratedVoltage) >= 0) || !isDry(input)) return false;
    // All that was read counts; one reading of the three joined stands for all of them.
    const singly = phases.map((phase) => readings[phase]);
    const { together = missing } = input;
    const begun = singly.some(({ kind }) => kind !== 'missing');
    const inOne = together.kind === 'missing' ? [] : [together];
    const read = [...(begun || inOne.length === 0 ? singly : []), ...inOne];
    if (occasion === 'after-trip') {
      return read.every((one) => passesAfterTrip(one, by ?? {}, windingTemperature, correction));
    }
    const minimum = minimumOf(input.machineClass, ratedVoltage) * (1 - 1e-9);
    return read.every((one) => {
      if (span(one, by) === undefined) return false;
      return leastCorrected(least(one, by), figure(windingTemperature), 40, correction) >= minimum;
    });
  },
  lacking: (input, dice) => {
    const key = dice.pick([
      'readings',
      'pe',
      'testVoltage',
      'ratedVoltage',
      'windingTemperature',
      'idleCores',
    ] as const);
    if (key === 'idleCores') return having(input, key, dice.pick(['free', 'not-stated'] as const));
    if (key !== 'readings') return having(input, key, missing);
    const { together: _one, ...singly } = input;
    return having(singly, key, having(input.readings, dice.pick(phases), missing));
  },
  worse: (input, dice) => {
    const phase = dice.pick(phases);
    const one = input.readings[phase];
    if (input.instrument?.upperLimit !== undefined) return undefined;
    if (input.together !== undefined && dice.chance(0.5)) {
      return having(input, 'together', lowered(input.together, dice.pick([1.01, 2, 100])));
    }
    return having(input, 'readings', having(input.readings, phase, lowered(one, dice.pick([1.01, 1.3, 2, 100, 1e6]))));
  },
  plain: (input) => ({ ...input, ambient: missing, humidity: missing }),
};
