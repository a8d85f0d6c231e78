import type { PlainRule } from '../rule.ts';

export const symptomRule: PlainRule<'symptom'> = {
  touches: false,
  energy: 'none',
  restsOn: [],
  problem: () => undefined,
  next: () => 'inspect',
};
