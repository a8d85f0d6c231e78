import { hindered } from '../../guide/power.ts';
import { feedbackFirst } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const inspectRule: PlainRule<'inspect'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: ({ reseated }) => (reseated === 'no' ? 'not-done' : undefined),
  next: (visit, record) => {
    const when = visit.symptom?.answer.when;
    // Bad mechanics stay on the way even if the symptom is corrected.
    if (hindered(record) || (when !== 'control-off' && when !== 'on-enable')) return 'mechanics';
    return when === 'control-off' ? feedbackFirst(visit, record) : 'disconnect-leads';
  },
};
