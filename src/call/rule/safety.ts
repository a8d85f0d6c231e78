import type { CallFacts } from './facts.ts';

/** What the caller is asked to do, and not to do, until somebody is there. */
export type SafetyWord =
  | 'burnt'
  | 'under-axis'
  | 'leave-prop'
  | 'prop'
  | 'leave-off'
  | 'reset-enough'
  | 'no-other-drive'
  | 'wet'
  | 'closed'
  | 'traces';

/** The first two matter most. An axis of which nobody knows whether it can fall is treated as one that can. */
export function safetyWords({ canFall, propped, resets = 0, seen, tried }: CallFacts): SafetyWord[] {
  const falls = canFall !== 'no';
  const said: [SafetyWord, boolean][] = [
    ['burnt', seen.includes('drive-burnt') || seen.includes('motor-burnt')],
    ['under-axis', falls],
    ['prop', falls && propped !== 'yes'],
    ['leave-prop', falls && propped === 'yes'],
    ['leave-off', true],
    ['reset-enough', resets > 1],
    ['no-other-drive', tried['other-drive'] === 'trips'],
    ['wet', seen.includes('motor-wet')],
    ['closed', true],
    ['traces', true],
  ];
  return said.filter(([, holds]) => holds).map(([word]) => word);
}
