import { idleCoreFree } from '../../guide/idle-cores.ts';
import { measureAfter } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const idleCoresRule: PlainRule<'idle-cores'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: ({ cores, lowest }) => {
    if (cores !== 'measured') return undefined;
    if (lowest.kind === 'missing') return 'idle-core-not-measured';
    return idleCoreFree(lowest) === 'unclear' ? 'idle-core-range' : undefined;
  },
  next: (visit, record) => measureAfter('idle-cores', visit, record),
};
