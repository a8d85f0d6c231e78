import { afterInspecting } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const inspectRule: PlainRule<'inspect'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: ({ reseated }) => (reseated === 'no' ? 'not-done' : undefined),
  next: afterInspecting,
};
