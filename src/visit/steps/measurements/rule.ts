import { isolationLeavesOpen, tripsAsAWhole } from '../../guide/evidence.ts';
import { afterMeasuring, conclude, measureAfter } from '../../guide/routes.ts';
import type { StepProblem } from '../problems.ts';
import type { VisitAnswers } from '../questions.ts';
import type { PlainRule } from '../rule.ts';
import type { MeasuredAnswers } from './question.ts';

interface Measured {
  assessment: { verdict: string; findings: readonly { severity: string }[] };
  leftOpen: boolean;
}

/** A charged bus can't be left open: it means that the lockout does not hold. */
const notDecided = ({ assessment, leftOpen }: Measured): StepProblem | undefined => {
  if (assessment.findings.some(({ severity }) => severity === 'stop')) return 'bus-not-discharged';
  return assessment.verdict === 'undecided' && !leftOpen ? 'undecided' : undefined;
};

/** A bad motor is no reason to skip the cable, nor a bad cable to skip the motor: both parts need their proof. */
const bothPartsKnown = (answer: MeasuredAnswers['isolation'], visit: VisitAnswers): StepProblem | undefined => {
  const open = isolationLeavesOpen(visit, 'cable') || isolationLeavesOpen(visit, 'motor');
  if (!open || answer.leftOpen) return notDecided(answer);
  // There is a verdict on one part; the other part is still missing.
  return answer.assessment.verdict === 'undecided' ? 'undecided' : 'part-open';
};

export const bridgeRule: PlainRule<'bridge'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: notDecided,
  next: (visit, record) => measureAfter('bridge', visit, record),
};

export const inputCircuitRule: PlainRule<'input-circuit'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: notDecided,
  next: (visit, record) => measureAfter('input-circuit', visit, record),
};

export const insulationRule: PlainRule<'insulation'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: notDecided,
  next: (visit, record) => measureAfter('insulation', visit, record),
};

export const isolationRule: PlainRule<'isolation'> = {
  touches: true,
  energy: 'none',
  restsOn: ['insulation'],
  problem: bothPartsKnown,
  next: (visit, record) => (tripsAsAWhole(visit) ? conclude(visit, record) : afterMeasuring(visit, record)),
};

export const windingRule: PlainRule<'winding'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: notDecided,
  next: (visit, record) => measureAfter('winding', visit, record),
};

export const windingMotorRule: PlainRule<'winding-motor'> = {
  touches: true,
  energy: 'none',
  restsOn: ['winding'],
  problem: notDecided,
  next: (visit, record) => measureAfter('winding-motor', visit, record),
};
