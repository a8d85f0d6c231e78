import type { Finding } from '../../kernel/assessment/assessment.ts';

export type CheckState = 'passes' | 'fails' | 'undecided' | 'not-measured';

export interface CheckRow {
  id: string;
  name: string;
  state: CheckState;
}

/** Which findings speak of one check, and which of them only say that nothing was measured. */
export interface Check {
  id: string;
  name: string;
  codes: RegExp;
  missing?: RegExp;
}

/** What the findings say of each check. A fail outweighs undecided, which outweighs a pass. */
export function checkRows(findings: readonly Finding[], checks: readonly Check[]): CheckRow[] {
  return checks.map(({ id, name, codes, missing }) => {
    const own = findings.filter(({ code }) => codes.test(code));
    const has = (severity: string) => own.some((one) => one.severity === severity);
    const open = own.filter(({ severity }) => severity === 'undecided');
    const state = (): CheckState => {
      if (has('fail')) return 'fails';
      if (open.some(({ code }) => missing === undefined || !missing.test(code))) return 'undecided';
      if (open.length > 0) return has('pass') ? 'undecided' : 'not-measured';
      return has('pass') ? 'passes' : 'not-measured';
    };
    return { id, name, state: state() };
  });
}
