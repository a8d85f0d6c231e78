import { assessCore } from '../../../../../src/calculators/core-resistance/rule/assess.ts';
import type { CoreInput } from '../../../../../src/calculators/core-resistance/rule/input.ts';
import { metres, missing, ohms } from '../../../../../src/kernel/reading/reading.ts';

/** 40 m of 1.5 mm²: 0.04 · 13.3 = 0.532 Ω; passes up to 0.815 Ω, fails above 1.665 Ω. */
export const sound: CoreInput = {
  way: 'pe',
  end: 'off',
  meter: 'continuity-tester',
  metres: metres(40),
  squareMillimetres: 1.5,
  reading: ohms(0.55, 0.01),
  temperature: missing,
};

export type Change = Partial<CoreInput>;
export const assess = (change: Change) => assessCore({ ...sound, ...change });
