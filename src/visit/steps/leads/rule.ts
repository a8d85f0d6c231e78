import { mayBePowered } from '../../guide/evidence.ts';
import { leadsOnAt } from '../../guide/power.ts';
import { notDone } from '../done.ts';
import { retriedWithoutPermit } from '../retry.ts';
import type { PlainRule } from '../rule.ts';

export const disconnectLeadsRule: PlainRule<'disconnect-leads'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: notDone,
  undone: (record) => leadsOnAt(record, Number.POSITIVE_INFINITY),
  next: (visit) => {
    const when = visit.symptom?.answer.when;
    if (!mayBePowered(visit)) return 'bridge';
    if (when === 'control-off' && visit['retry-feedback-off'] === undefined) return 'unplug-feedback';
    return when === 'on-enable' ? 'retry-leads-off' : 'bridge';
  },
};

export const retryLeadsOffRule: PlainRule<'retry-leads-off'> = {
  touches: false,
  energy: 'enable',
  restsOn: ['disconnect-leads'],
  problem: retriedWithoutPermit,
  next: () => 'bridge',
};
