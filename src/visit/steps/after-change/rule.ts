import { afterComparing } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const afterChangeRule: PlainRule<'after-change'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: () => undefined,
  next: afterComparing,
};
