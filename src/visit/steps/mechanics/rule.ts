import { afterHandTest } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const mechanicsRule: PlainRule<'mechanics'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: () => undefined,
  next: (visit, record) => afterHandTest(visit, record),
};
