import type { PlainRule } from '../rule.ts';

export const symptomRule: PlainRule<'symptom'> = {
  touches: false,
  energy: 'none',
  restsOn: [],
  problem: ({ came = 0, of = came }) => (came > of ? 'came-contradicts' : undefined),
  next: () => 'inspect',
};
