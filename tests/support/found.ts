import type { Finding } from '../../src/kernel/assessment/assessment.ts';

/** The first finding of this code, with what it carries. */
export function found<F extends Finding, Code extends F['code']>(
  findings: readonly F[],
  code: Code,
): F & { code: Code } {
  const one = findings.find((finding): finding is F & { code: Code } => finding.code === code);
  if (one === undefined)
    throw new Error(`no finding ${code} among ${findings.map((finding) => finding.code).join(' ')}`);
  return one;
}

/** All figures that a finding carries, however deep. */
export function figures(part: unknown): number[] {
  if (typeof part === 'number') return [part];
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(figures) : [];
}
