import type { Finding } from '../../src/kernel/assessment/assessment.ts';

/** A finding as one line of a table: code, severity, and the readings that it names. */
export const line = ({ code, severity, readings }: Finding) => [code, severity, ...readings].join(' ');

/** The same, with the limits that it rests on after a colon. */
export const lineWithLimits = (finding: Finding) =>
  finding.limits.length === 0 ? line(finding) : `${line(finding)}: ${finding.limits.join(' ')}`;
