import { assessCableLength } from '../../src/calculators/cable-length/rule/assess.ts';
import type { CableLengthInput } from '../../src/calculators/cable-length/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { figure, instrument, least, lowered, reading } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };

export const cableLength: Subject<CableLengthInput> = {
  name: 'cable length',
  make: (dice) => ({
    insulation: dice.pick(['pvc', 'xlpe'] as const),
    insulationDiameter: reading(dice, () => dice.between(1.5, 6), 'mm', 0.03),
    conductorDiameter: reading(dice, () => dice.between(0.8, 2.5), 'mm', 0.03),
    length: reading(dice, () => dice.log(1, 500), 'm', 0.03),
    reading: reading(dice, () => 100e6 * dice.pick([0.005, 0.5, 0.99, 1, 1.1, 1.5, 2, 5, 20, 100]), 'Ω', 0.03),
    temperature: reading(dice, () => (dice.chance(0.9) ? dice.between(5, 45) : dice.pick([-5, 100, 101])), '°C', 0.03),
    ...(dice.chance(0.3) && { instrument: instrument(dice, [50e6, 720e6]) }),
  }),
  verdict: (input) => assessCableLength(input).verdict,
  // 100 MΩ as it was read and at 20 °C by the halving rule, from 0 to 100 °C. Length never passes a cable. Typed once more.
  mayGo: ({ insulationDiameter, conductorDiameter, length, reading: one, temperature, instrument: by }) => {
    const [outer, inner, celsius] = [figure(insulationDiameter), figure(conductorDiameter), figure(temperature)];
    if (!(inner > 0 && outer > inner && figure(length) > 0 && celsius >= 0 && celsius <= 100)) return false;
    const low = least(one, by);
    return low >= 100e6 && low * 2 ** ((celsius - 20) / 10) >= 100e6 * (1 - 1e-9);
  },
  lacking: (input, dice) =>
    having(
      input,
      dice.pick(['insulationDiameter', 'conductorDiameter', 'length', 'reading', 'temperature'] as const),
      missing,
    ),
  worse: (input, dice) => {
    if (input.instrument?.upperLimit !== undefined) return undefined;
    return having(input, 'reading', lowered(input.reading, dice.pick([1.01, 1.3, 2, 100, 1e6])));
  },
};
