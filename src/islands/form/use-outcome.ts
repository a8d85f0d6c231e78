import { useMemo, useRef } from 'preact/hooks';
import type { Assessment } from '../../calc/index.ts';
import { type CalculatorForm, judge, type LateForm, type Outcome } from './calculator-form.ts';
import { isBlank, type Typed } from './field.ts';
import { useRule } from './use-rule.ts';

/**
 * What is said about the entries that have settled. Entries that may settle soon can be judged ahead, while the pause
 * still runs: its end then need only show the verdict. Nothing of that is shown before.
 */
export function useOutcome<F extends string, S extends string, A extends Assessment<F, S>>(
  form: CalculatorForm<F, S, A> | LateForm<F, S, A>,
  settled: Typed,
): { outcome: Outcome<A>; judgeAhead: (typed: Typed) => void } {
  const isEmpty = isBlank(form.fields, settled);
  const rule = useRule(form, !isEmpty);
  const ahead = useRef<{ rule: typeof rule; typed: Typed; outcome: Outcome<A> }>();
  const outcome = useMemo((): Outcome<A> => {
    if (typeof rule !== 'object') return { state: isEmpty ? 'blank' : rule };
    const { current } = ahead;
    return current?.typed === settled && current.rule === rule ? current.outcome : judge(rule, settled);
  }, [settled, rule]);
  return {
    outcome,
    judgeAhead: (typed) => {
      if (typeof rule === 'object') ahead.current = { rule, typed, outcome: judge(rule, typed) };
    },
  };
}
