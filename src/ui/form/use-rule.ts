import { useEffect, useState } from 'preact/hooks';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { CalculatorForm, LateForm } from '../../kernel/form/calculator-form.ts';

/** The rule of a form, at once or as soon as it is `wanted` and has come. */
export function useRule<A extends Assessment>(
  form: CalculatorForm<A> | LateForm<A>,
  wanted: boolean,
): CalculatorForm<A> | 'loading' | 'not-loaded' {
  const [rule, setRule] = useState<CalculatorForm<A> | 'loading' | 'not-loaded'>(() =>
    'load' in form ? 'loading' : form,
  );
  useEffect(() => {
    if (!wanted || !('load' in form) || typeof rule === 'object') return;
    form.load().then(setRule, () => setRule('not-loaded'));
  }, [wanted]);
  return rule;
}
