import { feedbackFirst } from '../../guide/routes.ts';
import type { PlainRule } from '../rule.ts';

export const mechanicsRule: PlainRule<'mechanics'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: () => undefined,
  next: (visit, record) =>
    visit.symptom?.answer.when === 'control-off' ? feedbackFirst(visit, record) : 'disconnect-leads',
};
