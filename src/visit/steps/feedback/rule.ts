import { feedbackGone } from '../../guide/evidence.ts';
import { feedbackOutAt, motorSideSpeaksAgainst } from '../../guide/power.ts';
import { conclude, leadsOffThen } from '../../guide/routes.ts';
import { notDone } from '../done.ts';
import { retryProblem } from '../retry.ts';
import type { PlainRule } from '../rule.ts';

export const unplugFeedbackRule: PlainRule<'unplug-feedback'> = {
  touches: true,
  energy: 'none',
  restsOn: [],
  problem: notDone,
  next: () => 'retry-feedback-off',
};

export const retryFeedbackOffRule: PlainRule<'retry-feedback-off'> = {
  touches: false,
  energy: 'power',
  restsOn: ['unplug-feedback'],
  problem: retryProblem,
  next: (visit) => (feedbackGone(visit) ? 'unplug-device-end' : leadsOffThen('bridge', visit)),
};

export const unplugDeviceEndRule: PlainRule<'unplug-device-end'> = {
  touches: true,
  energy: 'none',
  restsOn: ['retry-feedback-off'],
  problem: notDone,
  next: () => 'retry-device-end',
};

export const retryDeviceEndRule: PlainRule<'retry-device-end'> = {
  touches: false,
  energy: 'power',
  restsOn: ['unplug-device-end'],
  problem: retryProblem,
  // The feedback explains the trip, but not damage of motor or cable.
  next: (visit, record) => (motorSideSpeaksAgainst(record) ? leadsOffThen('bridge', visit) : conclude(visit, record)),
};

export const plugFeedbackRule: PlainRule<'plug-feedback'> = {
  touches: true,
  energy: 'none',
  restsOn: ['retry-device-end'],
  problem: notDone,
  undone: (record) => feedbackOutAt(record) > (record['plug-feedback']?.seq ?? 0),
  next: () => 'retry-feedback-on',
};

export const retryFeedbackOnRule: PlainRule<'retry-feedback-on'> = {
  touches: false,
  energy: 'power',
  restsOn: ['plug-feedback'],
  problem: retryProblem,
  next: () => 'decide',
};
