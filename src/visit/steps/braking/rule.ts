import { measureAfter } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const brakingRule: PlainRule<'braking'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: ({ fitted, plate, ohms, toPe, toBus }) =>
    fitted === 'external' && [plate, ohms, toPe, toBus].some(({ kind }) => kind === 'missing')
      ? 'braking-not-measured'
      : undefined,
  next: (visit, record) => measureAfter('braking', visit, record),
};
