import type { Finding } from '../../../kernel/assessment/assessment.ts';
import type { SwitchPosition } from './switch-position.ts';

/** The positions that failed, for the drawing and the text. */
export function suspectPositions(
  findings: readonly (Finding | (Finding & { suspects: readonly SwitchPosition[] }))[],
): SwitchPosition[] {
  const named = findings.flatMap((one) => (one.severity === 'fail' && 'suspects' in one ? one.suspects : []));
  return [...new Set(named)];
}
