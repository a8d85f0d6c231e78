import type { Symptom } from '../../kernel/vocabulary.ts';
import { encodeCase, windingTemperatures } from '../../practice/case/case-code.ts';
import { drawMachine } from '../../practice/case/draw-machine.ts';
import { memoPerBuild } from '../../site/memo-per-build.ts';

/** Fault, seed, and the place of the winding temperature in `windingTemperatures`. */
export type FinalFault = readonly [fault: string, seed: number, step: number];

/**
 * Two sets, the second for who has seen the first. Each has a drive, a motor and a cable that no multimeter condemns, one
 * part that took another, the feedback, and an axis on which nothing is to be replaced. The lessons have other faults.
 */
export const finalFaults: readonly { id: string; title: string; faults: readonly FinalFault[] }[] = [
  {
    id: 'first',
    title: 'The six cases',
    faults: [
      ['frame-W-high', 401, 9],
      ['leaky-lower-U', 409, 8],
      ['feedback-device', 419, 6],
      ['core-U-screen-high', 421, 7],
      ['cable-took-drive', 431, 10],
      ['connector-wet', 433, 8],
    ],
  },
  {
    id: 'second',
    title: 'Six others, if you have seen those',
    faults: [
      ['core-V-W-high', 439, 9],
      ['nuisance', 443, 8],
      ['leaky-upper-V', 449, 7],
      ['wet-motor-took-drive', 457, 10],
      ['frame-U-high', 461, 9],
      ['feedback-device', 463, 6],
    ],
  },
];

export interface FinalCase {
  code: string;
  moment: Symptom;
  falls: boolean;
}

export const finalSets = memoPerBuild((): { id: string; title: string; cases: FinalCase[] }[] =>
  finalFaults.map(({ id, title, faults }) => ({ id, title, cases: faults.map(finalCase) })),
);

function finalCase([fault, seed, step]: FinalFault): FinalCase {
  const windingCelsius = windingTemperatures[step] ?? 20;
  const { moment, parameters } = drawMachine(fault, seed, windingCelsius).axis;
  return { code: encodeCase({ fault, seed, windingCelsius }), moment, falls: parameters.gravityLoaded };
}
