import { phases } from '../../kernel/electrics/phases.ts';
import type { IsolationFinding } from './rule/input.ts';

/** A core of the motor cable. */
export type Core = 'U' | 'V' | 'W' | 'PE';

export const cores: readonly Core[] = [...phases, 'PE'];

/** The cores that fail with the cable alone, free or bonded. */
export function badCores(findings: readonly IsolationFinding[]): Core[] {
  const bad = findings.flatMap((one) =>
    one.code === 'stage-bad' && (one.stage === 'cable' || one.stage === 'bonded') ? one.phases : [],
  );
  const pe = findings.some(({ code }) => code === 'cable-pe-low-ends-checked');
  return [...phases.filter((phase) => bad.includes(phase)), ...(pe ? (['PE'] as const) : [])];
}
