import { leadsOnAt } from '../../guide/power.ts';
import { afterHandTest, measureAfter, wantsHandTest } from '../../guide/routes.ts';
import { notDone } from '../done.ts';
import { retryProblem } from '../retry.ts';
import type { PlainRule } from '../rule.ts';

export const disconnectLeadsRule: PlainRule<'disconnect-leads'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: notDone,
  undone: (record) => leadsOnAt(record, Number.POSITIVE_INFINITY),
  next: (visit, record) => (wantsHandTest(visit, record) ? 'mechanics' : afterHandTest(visit, record)),
};

export const retryLeadsOffRule: PlainRule<'retry-leads-off'> = {
  touches: false,
  energy: 'enable',
  restsOn: ['disconnect-leads'],
  problem: retryProblem,
  next: (visit, record) => measureAfter('retry-leads-off', visit, record),
};
