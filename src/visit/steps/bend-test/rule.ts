import { measureAfter } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const bendTestRule: PlainRule<'bend-test'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: ({ result, leftOpen }) => (result === 'undecided' && leftOpen !== true ? 'undecided' : undefined),
  next: (visit, record) => measureAfter('bend-test', visit, record),
};
