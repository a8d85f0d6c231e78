import type { LimitId } from './limits.ts';

export type Verdict = 'go' | 'no-go' | 'undecided';

/**
 * How a finding bears on the verdict. `stop` and `fail` are never outvoted; `stop` means that no
 * judgement is made because going on is dangerous. `caution` and `note` leave the verdict alone.
 */
export type Severity = 'stop' | 'fail' | 'undecided' | 'pass' | 'caution' | 'note';

/**
 * One thing that was found. `code` is stable and has one sentence in `src/texts`; `readings` name
 * the fields that it rests on; `limits` the limits that it used; `numbers` fill the sentence.
 */
export interface Finding<Code extends string = string> {
  code: Code;
  severity: Severity;
  readings: string[];
  limits: LimitId[];
  numbers: Record<string, number>;
  names: Record<string, string>;
}

/** What to do next. `code` is stable and has one sentence in `src/texts`. */
export interface Step<Code extends string = string> {
  code: Code;
  names: Record<string, string>;
}

export interface Assessment<FindingCode extends string = string, StepCode extends string = string> {
  verdict: Verdict;
  findings: Finding<FindingCode>[];
  next: Step<StepCode>[];
}

/** The parts of a finding that are often empty may be left out. */
export type FindingParts = Partial<Pick<Finding, 'readings' | 'limits' | 'numbers' | 'names'>>;

export function finding<Code extends string>(code: Code, severity: Severity, parts: FindingParts = {}): Finding<Code> {
  return { code, severity, readings: [], limits: [], numbers: {}, names: {}, ...parts };
}

export function step<Code extends string>(code: Code, names: Record<string, string> = {}): Step<Code> {
  return { code, names };
}

/** `fail` outweighs `undecided`, which outweighs `pass`; `stop` leaves everything undecided; no evidence is no `go`. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  const has = (severity: Severity) => findings.some((f) => f.severity === severity);
  if (has('stop')) return 'undecided';
  if (has('fail')) return 'no-go';
  if (has('undecided')) return 'undecided';
  return has('pass') ? 'go' : 'undecided';
}
