import type { VisitAnswers } from '../steps/questions.ts';

/*
 * What the calculators prove, each by at least two readings. What an assessment does not say counts as not proven.
 */

/** The readings at the output stage fail, and second readings confirm it. */
export function bridgeConvicts({ bridge }: VisitAnswers): boolean {
  const assessment = bridge?.answer.assessment;
  return assessment?.verdict === 'no-go' && assessment.drive === 'convicted';
}

export function isolationConvicts({ isolation }: VisitAnswers, part: 'cable' | 'motor'): boolean {
  return isolation?.answer.assessment.parts[part] === 'proven-bad';
}

/** It fails the after-trip limit, and one reading or a cause that dries may be all there is. */
export function isolationSuspects({ isolation }: VisitAnswers, part: 'cable' | 'motor'): boolean {
  return isolation?.answer.assessment.parts[part] === 'suspect';
}

/** Two sets at the motor's own connector fail alike, and no contact explains them. */
export function windingConvicts(visit: VisitAnswers): boolean {
  const assessment = visit['winding-motor']?.answer.assessment;
  return assessment?.verdict === 'no-go' && assessment.cause === 'winding';
}

/** Two sets through the cable fail alike, and measured across the mated joint it is sound, so the cable is left. */
export function jointExcluded({ winding }: VisitAnswers): boolean {
  const assessment = winding?.answer.assessment;
  return assessment?.cause === 'winding' && assessment.joint === 'good';
}
