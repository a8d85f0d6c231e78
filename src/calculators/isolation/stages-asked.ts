import type { IsolationAssessment, IsolationFinding, IsolationStepCode } from './rule/input.ts';

/** The stages that open automatically; the joined one is always open. */
export type LaterStage = 'cable' | 'motor';

const asking: Record<LaterStage, IsolationStepCode[]> = {
  cable: [
    'test-cable-alone',
    'complete-cable',
    'take-bonded-row',
    'check-ends-free',
    'read-cable-again',
    'compare-cable',
    'state-cable-length',
  ],
  motor: ['test-motor-alone', 'complete-motor', 'read-motor-again', 'compare-motor'],
};

/** The stages that the assessment asks for next. */
export function stagesAsked(assessment: IsolationAssessment | undefined): LaterStage[] {
  const codes = assessment?.next.map(({ code }) => code) ?? [];
  return (['cable', 'motor'] as const).filter((stage) => asking[stage].some((code) => codes.includes(code)));
}

const misfits: readonly IsolationFinding['code'][] = [
  'joined-too-high',
  'joined-too-low',
  'joined-needs-bonded',
  'good-joined-bad-part',
  'bad-joined-good-parts',
];

/** Whether the stages contradict each other, so that something must be measured again. */
export function contradicts(assessment: IsolationAssessment): boolean {
  return assessment.findings.some(({ code, severity }) => severity === 'undecided' && misfits.includes(code));
}
