import type { LimitId } from '../limits.ts';

export type Verdict = 'go' | 'no-go' | 'undecided';

/**
 * How a finding affects the verdict. `stop` and `fail` are never outvoted; `stop` means that nothing is judged because
 * going on is dangerous. `caution` and `note` leave the verdict alone.
 */
export type Severity = 'stop' | 'fail' | 'undecided' | 'pass' | 'caution' | 'note';

/**
 * What all findings have. `code` is stable and has one sentence in the calculator's `words.ts`; `readings` name the
 * fields behind it, `limits` the limits that it used.
 */
export interface Finding<Code extends string = string> {
  code: Code;
  severity: Severity;
  readings: string[];
  limits: LimitId[];
}

/** Payload of a finding whose sentence is always the same. */
export type Nothing = Record<never, never>;

/**
 * The findings of a rule as a union: each code of `Payloads` with what its sentence needs. A payload may give the type
 * of its `readings` if the sentence lists them.
 */
export type FindingOf<Payloads> = {
  [Code in keyof Payloads & string]: Omit<Finding<Code>, keyof Payloads[Code]> & Payloads[Code];
}[keyof Payloads & string];

/** The payloads of several codes together, for a finding that may have any one of them. */
type NeededBy<Payloads, Code extends keyof Payloads> = {
  [C in Code]: (payload: Payloads[C]) => void;
}[Code] extends (payload: infer Payload) => void
  ? Payload
  : never;

type PartsOf<Payload> = Payload & Partial<Omit<Finding, 'code' | 'severity' | keyof Payload>>;

/** Makes findings of one rule; a payload that does not fit the code does not compile. `readings` and `limits` may be left out. */
type FindingMaker<Payloads> = <Code extends keyof Payloads & string>(
  code: Code,
  severity: Severity,
  ...parts: Nothing extends NeededBy<Payloads, Code>
    ? [parts?: PartsOf<NeededBy<Payloads, Code>>]
    : [parts: PartsOf<NeededBy<Payloads, Code>>]
) => FindingOf<Pick<Payloads, Code>>;

export function findingMaker<Payloads>(): FindingMaker<Payloads> {
  const make = (code: string, severity: Severity, parts?: object): unknown => ({
    code,
    severity,
    readings: [],
    limits: [],
    ...parts,
  });
  return make as FindingMaker<Payloads>;
}

/** What to do next. `code` is stable and has one sentence in the calculator's `words.ts`. */
export interface Step<Code extends string = string> {
  code: Code;
}

export interface Assessment<F extends Finding = Finding, S extends Step = Step> {
  verdict: Verdict;
  findings: F[];
  next: S[];
}

export function step<Code extends string>(code: Code): Step<Code> {
  return { code };
}

/**
 * `fail` outweighs `undecided`, which outweighs `pass`; `stop` leaves everything undecided; without evidence there is
 * no `go`.
 */
export function verdictOf(findings: readonly Finding[]): Verdict {
  const has = (severity: Severity) => findings.some((f) => f.severity === severity);
  if (has('stop')) return 'undecided';
  if (has('fail')) return 'no-go';
  if (has('undecided')) return 'undecided';
  return has('pass') ? 'go' : 'undecided';
}
