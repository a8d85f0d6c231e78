import type { PlainRule } from '../rule.ts';

export const recordingRule: PlainRule<'recording'> = {
  touches: false,
  energy: 'none',
  restsOn: [],
  problem: () => undefined,
  next: () => 'inspect',
};
