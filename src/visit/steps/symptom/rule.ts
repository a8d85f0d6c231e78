import type { PlainRule } from '../rule.ts';

export const symptomRule: PlainRule<'symptom'> = {
  touches: false,
  energy: 'none',
  restsOn: [],
  problem: ({ came = 0, of = came, once }) => (came > of || (once && of > 1) ? 'came-contradicts' : undefined),
  next: ({ symptom }) => (symptom?.answer.recorded === 'yes' ? 'recording' : 'inspect'),
};
