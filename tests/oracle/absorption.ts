import { assessAbsorption } from '../../src/calculators/absorption/rule/assess.ts';
import type { AbsorptionInput } from '../../src/calculators/absorption/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { instrument, lowered, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const seconds = [15, 30, ...Array.from({ length: 10 }, (_, minute) => (minute + 1) * 60)];

/** Fallen by more than a tenth, which handbooks still call level, beyond half a step of either display. */
function breaks(readings: AbsorptionInput['readings']): boolean {
  const taken = seconds.flatMap((at) => {
    const one = span(readings[at] ?? missing, { counts: 0.5 });
    return one === undefined ? [] : [one];
  });
  return taken.some((one, index) => taken.slice(0, index).some(({ lo }) => lo > one.hi * 1.1 * (1 + 1e-9)));
}

export const absorption: Subject<AbsorptionInput> = {
  name: 'absorption',
  make: (dice) => {
    const size = dice.chance(0.85) ? dice.log(0.9e8, 6e9) : dice.log(1, 1e13);
    const end = dice.pick([1.4, 1.5, 1.6, 2, 2.01, 2.1, 3, 9, 0.7]);
    const exponent = Math.log10(end);
    const readings: Record<number, Reading> = {};
    for (const at of seconds) {
      if (![60, 600].includes(at) && dice.chance(0.3)) continue;
      const dip = dice.chance(0.02) ? dice.pick([0.5, 0.89, 0.92]) : 1;
      readings[at] = reading(dice, () => size * (at / 60) ** exponent * dip, 'Ω', 0.01);
    }
    return {
      readings,
      windingKind: dice.chance(0.85) ? 'form-wound' : 'random-wound',
      thermalClass: dice.pick(['A', 'BFH'] as const),
      temperature: reading(dice, () => 25, '°C', 0.05),
      ...(dice.chance(0.4) && { instrument: instrument(dice, [1e9, 1e10, 1e12]) }),
    };
  },
  verdict: (input) => assessAbsorption(input).verdict,
  // IEEE 43: index of 2, class A 1.5; not above 5 GΩ after a minute, and not of a level below 100 MΩ. Repeated here on
  // purpose.
  mayGo: ({ readings, windingKind, thermalClass, instrument: by = {} }) => {
    if (windingKind !== 'form-wound') return false;
    const meter = { ...by, counts: Math.max(0.5, by.counts ?? 0) };
    const [minute, ten] = [span(readings[60] ?? missing, meter), span(readings[600] ?? missing, meter)];
    if (minute === undefined || ten === undefined) return false;
    if (!(minute.hi <= 5e9) || !(minute.lo >= 1e8)) return false;
    return ten.lo / minute.hi >= (thermalClass === 'A' ? 1.5 : 2) * (1 - 1e-9) && !breaks(readings);
  },
  lacking: (input, dice) => having(input, 'readings', { ...input.readings, [dice.pick([60, 600])]: missing }),
  worse: (input, dice) => {
    const last = input.readings[600];
    if (last === undefined || input.instrument?.upperLimit !== undefined) return undefined;
    return having(input, 'readings', { ...input.readings, 600: lowered(last, dice.pick([1.01, 1.3, 2, 100])) });
  },
};
