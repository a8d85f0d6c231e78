import type { VisitAnswers } from '../steps/questions.ts';

/*
 * What the calculators prove, each by at least two readings. What an assessment does not say counts as not proven.
 */

/** The readings at the output stage fail, and second readings confirm it. */
export function bridgeConvicts({ bridge }: VisitAnswers): boolean {
  const assessment: Said | undefined = bridge?.answer.assessment;
  return assessment?.verdict === 'no-go' && assessment.drive === 'convicted';
}

export function isolationConvicts({ isolation }: VisitAnswers, part: 'cable' | 'motor'): boolean {
  return isolation?.answer.assessment.parts[part] === 'proven-bad';
}

/** It fails the point after a trip, and one reading or a cause that dries may be all there is. */
export function isolationSuspects({ isolation }: VisitAnswers, part: 'cable' | 'motor'): boolean {
  return (isolation?.answer.assessment.parts[part] as string | undefined) === 'suspect';
}

/**
 * The winding is bad at the motor's own connector, twice: read again there, or read bad through the cable before. A contact is
 * no winding.
 */
export function windingConvicts(visit: VisitAnswers): boolean {
  const atMotor: Said | undefined = visit['winding-motor']?.answer.assessment;
  if (atMotor?.verdict !== 'no-go' || (atMotor.cause !== 'winding' && atMotor.cause !== 'open')) return false;
  return says(atMotor, 'winding-again-confirms') || visit.winding?.answer.assessment.verdict === 'no-go';
}

/** Measured across the mated joint it is sound, so the cable is left. */
export function jointExcluded(visit: VisitAnswers): boolean {
  return says(visit.winding?.answer.assessment, 'winding-joint-good');
}

/** What an assessment may say besides its verdict. */
interface Said {
  verdict: string;
  findings: readonly { code: string }[];
  drive?: string;
  cause?: string;
}

function says(assessment: Said | undefined, code: string): boolean {
  return assessment?.findings.some((finding) => finding.code === code) === true;
}
