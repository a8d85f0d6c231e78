import type { Finding } from '../../src/kernel/assessment/assessment.ts';

/** The first finding with this code, with its payload. */
export function found<F extends Finding, Code extends F['code']>(
  findings: readonly F[],
  code: Code,
): F & { code: Code } {
  const one = findings.find((finding): finding is F & { code: Code } => finding.code === code);
  if (one === undefined)
    throw new Error(`no finding ${code} among ${findings.map((finding) => finding.code).join(' ')}`);
  return one;
}

/** All figures of a finding, at any depth. */
export function figures(part: unknown): number[] {
  if (typeof part === 'number') return [part];
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(figures) : [];
}
