import type { IsolationAssessment } from '../../../../../src/calculators/isolation/rule/input.ts';
import { isolation, parts } from './readings.ts';

const absent = undefined;
const joined = [
  '> 700M | > 700M | > 700M | 0.2 Ω',
  '0.02M | 0.02M | 0.02M | 0.2 Ω',
  '> 700M | > 700M | > 700M | OL',
  '0.02M | 0.02M | 0.02M | OL',
  '> 700M | > 700M |  | 0.2 Ω',
  '> 700M | > 700M | > 700M | ',
  '> 700M | > 700M | > 700M | < 5 Ω',
];
const cables = [
  absent,
  '> 700M | > 700M | > 700M | > 700M',
  '0.02M | > 700M | > 700M | > 700M',
  '> 700M | > 700M | | ',
];
const bondedRows = [absent, '> 700M | > 700M | > 700M', '0.02M | > 700M | > 700M'];
const motors = [
  absent,
  '> 700M | > 700M | > 700M | 0.2 Ω',
  '0.02M | 0.02M | 0.02M | 0.2 Ω',
  '> 700M | > 700M | > 700M | OL',
  '> 700M | > 700M | | 0.2 Ω',
];

/** The states of the parts in an assessment, in one line. */
export function classOf({ verdict, parts }: IsolationAssessment): string {
  return `${verdict}: cable ${parts.cable}, motor ${parts.motor}, PE ${parts.protectiveConductor}`;
}

/**
 * One real assessment for each combination of verdict and parts that the module gives over a grid of readings: each
 * stage absent, good, bad or incomplete; PE sound, broken, missing or read too coarsely; suspected anyway or not.
 */
export function isolationClasses(): Map<string, IsolationAssessment> {
  const found = new Map<string, IsolationAssessment>();
  const stageOf = (name: string, text: string | undefined) => (text === undefined ? {} : { [name]: text });
  for (const suspectedAnyway of [false, true])
    for (const row of joined)
      for (const cable of cables)
        for (const bonded of bondedRows)
          for (const motor of motors) {
            const rows = { joined: row, ...stageOf('cable', cable), ...stageOf('bonded', bonded) };
            const assessment = isolation({ ...rows, ...stageOf('motor', motor) }, { suspectedAnyway });
            // One reading makes a part suspect; more of it proves it bad. Both can come of the same rows.
            for (const one of [parts(assessment, 'proven-bad'), parts(assessment, 'suspect')])
              if (!found.has(classOf(one))) found.set(classOf(one), one);
          }
  return found;
}
