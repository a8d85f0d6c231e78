import { useState } from 'preact/hooks';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import { loadAgain } from '../load-again.ts';
import { useLateScript } from '../use-late-script.ts';

type Judge<A extends Assessment> = CalculatorForm<A>['judge'];

/** The rule of a calculator with its sentences: a form can be typed into before they have come. */
export interface LateRule<A extends Assessment> {
  /** Absent until it has come. */
  judge?: Judge<A>;
  load: () => Promise<void>;
}

export function lateRule<A extends Assessment>(load: () => Promise<Pick<CalculatorForm<A>, 'judge'>>): LateRule<A> {
  const rule: LateRule<A> = {
    load: async () => {
      rule.judge ??= (await load()).judge;
    },
  };
  return rule;
}

interface UsedRule<A extends Assessment> {
  judge: Judge<A> | undefined;
  /** Tries once more; given only if it could not be loaded. */
  retry: (() => void) | undefined;
}

/** Loads the rule once it is `wanted`, and draws the form again when it has come. */
export function useLateRule<A extends Assessment>(rule: LateRule<A>, wanted: boolean): UsedRule<A> {
  const [state, setState] = useState<'waiting' | 'come' | 'failed'>('waiting');
  const { judge } = rule;
  // By what was drawn: another form may have loaded it since.
  useLateScript(wanted && judge === undefined, () =>
    rule.load().then(
      () => setState('come'),
      () => setState('failed'),
    ),
  );
  const retry = () => {
    setState('waiting');
    void loadAgain().then(() => setState('failed'));
  };
  return { judge, retry: state === 'failed' ? retry : undefined };
}
