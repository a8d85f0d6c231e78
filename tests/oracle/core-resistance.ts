import { assessCore } from '../../src/calculators/core-resistance/rule/assess.ts';
import type { CoreInput } from '../../src/calculators/core-resistance/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { figure, further, hair, instrument, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };

/** Ω/km of IEC 60228, typed once more on purpose. */
const perKilometre: Record<number, number> = { 0.75: 26, 1: 19.5, 1.5: 13.3, 2.5: 7.98, 10: 1.91 };

export const coreResistance: Subject<CoreInput> = {
  name: 'core resistance',
  make: (dice) => {
    const metres = dice.pick([5, 20, 60, 240]);
    const section = dice.pick([0.75, 1, 1.5, 2.5, 10]);
    const way = dice.pick(['pe', 'core', 'pair'] as const);
    const copper = ((perKilometre[section] ?? 0) * metres * (way === 'pair' ? 2 : 1)) / 1000;
    return {
      way: dice.chance(0.93) ? way : 'not-stated',
      end: dice.chance(0.9) ? 'off' : dice.pick(['on', 'not-stated'] as const),
      meter: dice.chance(0.93) ? dice.pick(['continuity-tester', 'four-leads', 'multimeter'] as const) : 'not-stated',
      metres: reading(dice, () => metres, 'm'),
      ...(dice.chance(0.95) && { squareMillimetres: dice.chance(0.95) ? section : 3 }),
      reading: reading(
        dice,
        () => copper * dice.pick([0.2, 0.6, 0.9, 1, 1.2, 1.3]) + dice.pick([0, 0.05, 0.1, 1, 3]),
        'Ω',
        0.05,
      ),
      temperature: dice.chance(0.3) ? reading(dice, () => dice.between(-10, 80), '°C') : missing,
      ...(dice.chance(0.3) && { instrument: instrument(dice, [2e7]) }),
    };
  },
  verdict: (input) => assessCore(input).verdict,
  // Off at one end. Half of the copper to a quarter more and contacts: 0.15 Ω for PE, 0.05 Ω for each other core.
  mayGo: ({ way, end, meter, metres, squareMillimetres = 0, reading: one, instrument: by }) => {
    if (end !== 'off' || way === 'not-stated' || meter === 'not-stated') return false;
    const cores = way === 'pair' ? 2 : 1;
    const copper = ((perKilometre[squareMillimetres] ?? Number.NaN) * figure(metres) * cores) / 1000;
    const read = span(one, by);
    return (
      read !== undefined &&
      read.lo >= copper / 2 / hair &&
      read.hi <= (copper * 1.25 + (way === 'pe' ? 0.15 : 0.05) * cores) * hair
    );
  },
  lacking: (input, dice) => {
    const { squareMillimetres: _, ...rest } = input;
    return dice.pick([
      rest,
      having(input, 'way', 'not-stated'),
      having(input, 'end', dice.pick(['on', 'not-stated'] as const)),
      having(input, 'meter', 'not-stated'),
      having(input, 'metres', missing),
      having(input, 'reading', missing),
    ]);
  },
  worse: (input, dice) => {
    if (dice.chance(0.2)) return having(input, 'end', dice.pick(['on', 'not-stated'] as const));
    const { reading: one } = input;
    if (one.kind !== 'value' || one.resolution === undefined || input.instrument !== undefined) return undefined;
    const marks = assessCore(input).marks;
    // Below half of the copper a higher figure is the better one. A coarse digit says less, whichever way it goes.
    if (marks === undefined || one.resolution > marks.table / 2) return undefined;
    return having(input, 'reading', further(one, marks.table / 2, dice.pick([1.01, 1.3, 2, 100])));
  },
};
