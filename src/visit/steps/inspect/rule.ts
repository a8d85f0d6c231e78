import { feedbackFirst, wantsHandTest } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const inspectRule: PlainRule<'inspect'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: ({ reseated }) => (reseated === 'no' ? 'not-done' : undefined),
  next: (visit, record) => {
    const controlOff = visit.symptom?.answer.when === 'control-off';
    return controlOff && !wantsHandTest(visit, record) ? feedbackFirst(visit, record) : 'disconnect-leads';
  },
};
