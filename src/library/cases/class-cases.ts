import type { Part, Symptom } from '../../kernel/vocabulary.ts';
import { encodeCase, windingTemperatures } from '../../practice/case/case-code.ts';
import { drawMachine } from '../../practice/case/draw-machine.ts';
import { Robot } from '../../practice/robot/robot.ts';
import { memoPerBuild } from '../../site/memo-per-build.ts';
import { decisionHeadline } from '../../visit/words/decision.ts';

/** A case for a class, with the data of its answer. */
interface ClassCase {
  code: string;
  moment: Symptom;
  falls: boolean;
  label: string;
  bad: Part[];
  decision: string;
}

/** Faults from simple to difficult, each with a seed and the winding temperature in steps of the code. */
const groups: { title: string; about: string; faults: [id: string, seed: number, step: number][] }[] = [
  {
    title: 'One bad part',
    about: 'The usual measurements name it.',
    faults: [
      ['short-lower-V', 11, 8],
      ['frame-U', 23, 12],
      ['core-W-ground', 31, 7],
      ['feedback-cable-short', 47, 6],
      ['feedback-device', 53, 6],
      ['pe-broken', 67, 8],
    ],
  },
  {
    title: 'A meter is not enough',
    about: 'A multimeter passes it, or the temperature of the winding misleads.',
    faults: [
      ['frame-V-high', 71, 9],
      ['core-U-screen-high', 83, 7],
      ['leaky-upper-W', 97, 8],
      ['motor-wet', 101, 26],
      ['core-U-V-high', 107, 9],
    ],
  },
  {
    title: 'One part took the other',
    about: 'If you stop at the first bad part, the next new one is destroyed.',
    faults: [
      ['motor-took-drive', 113, 10],
      ['cable-took-drive', 127, 6],
      ['motor-took-cable', 131, 11],
      ['all-three', 139, 9],
      ['pe-and-frame', 149, 8],
    ],
  },
  {
    title: 'Nothing bad, or nothing to find',
    about: 'The right answer replaces nothing.',
    faults: [
      ['nuisance', 151, 8],
      ['connector-wet', 163, 7],
      ['feedback-contact', 173, 6],
      ['turns-V-few', 179, 9],
      ['gate-drive-under-load', 191, 10],
    ],
  },
];

/** The cases for a class, grouped by what they teach, each solved by the robot. */
export const classCases = memoPerBuild((): { title: string; about: string; list: ClassCase[] }[] =>
  groups.map(({ title, about, faults }) => ({ title, about, list: faults.map(classCase) })),
);

function classCase([fault, seed, step]: [string, number, number]): ClassCase {
  const windingCelsius = windingTemperatures[step] ?? 20;
  const machine = drawMachine(fault, seed, windingCelsius);
  const { label, bad, moment, parameters } = machine.axis;
  const { decision } = new Robot(machine).visit();
  return {
    code: encodeCase({ fault, seed, windingCelsius }),
    moment,
    falls: parameters.gravityLoaded,
    label,
    bad,
    decision: decisionHeadline(decision),
  };
}
