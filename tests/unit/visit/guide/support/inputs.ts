import { assessInputCircuit } from '../../../../../src/calculators/input-circuit/rule/assess.ts';
import type { InputAssessment } from '../../../../../src/calculators/input-circuit/rule/input.ts';
import { overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { type Change, drop, ol, sound, three } from '../../../calculators/input-circuit/rule/sound.ts';
import type { Given } from './visit.ts';

const assess = (change: Change) => assessInputCircuit({ ...sound, ...change });
const shorted: Change = {
  plusConducting: three(drop, volts(0.002), drop),
  plusBlocking: three(ol, volts(0.002), ol),
};

/** Readings of the input that the tests name. */
export const inputs = {
  sound: assess({}),
  shorted: assess({ ...shorted, again: true }),
  shortedOnce: assess(shorted),
  leaks: assess({ linkBlocking: volts(0.9), again: true }),
  fuseOnly: assess({ fuses: three(sound.fuses.L1, overOhms(), sound.fuses.L3) }),
  prechargeInside: assess({ precharge: 'inside' }),
  busCharged: assess({ busVoltage: volts(310) }),
};

export const inputIs = (assessment: InputAssessment, leftOpen = assessment.verdict === 'undecided'): Given => [
  'input-circuit',
  { assessment, leftOpen },
];
