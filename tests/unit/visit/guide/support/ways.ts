import type { Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import {
  bridgeIs,
  done,
  insulationIs,
  isolationIs,
  lockout,
  looked,
  mechanics,
  retry,
  seen,
  trips,
  windingIs,
} from './answers.ts';
import { bridges, insulations, isolations, windings } from './readings.ts';
import type { Given } from './visit.ts';

export type Seen = Partial<InspectAnswer['seen']>;

// ---- The ways to the measurements ----

export const start = (when: Symptom, damage: Seen = {}): Given[] => [looked(), trips(when), lockout(1), seen(damage)];

/** Trips at once, control off; the feedback is unplugged and tried. */
export const feedbackOff = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...start('control-off', damage),
  done('unplug-feedback'),
  retry('retry-feedback-off', result),
  ...(result === 'not-done' ? [] : [lockout(2)]),
];
export const deviceEnd = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...feedbackOff('no-trip', damage),
  done('unplug-device-end'),
  retry('retry-device-end', result),
];
export const pluggedAgain = (result: 'trips' | 'no-trip' | 'not-done'): Given[] => [
  ...deviceEnd('no-trip'),
  lockout(3),
  done('plug-feedback'),
  retry('retry-feedback-on', result),
];
export const stillTrips = [...feedbackOff('trips'), done('disconnect-leads')];

/** Trips on enable; the motor leads are off and the enable is tried. */
export const leadsOff = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...start('on-enable', damage),
  done('disconnect-leads'),
  retry('retry-leads-off', result),
  ...(result === 'not-done' ? [] : [lockout(2)]),
];

/** Trips while it moves; the mechanics are checked. */
export const moving = (
  when: Symptom = 'on-acceleration',
  state: 'free' | 'stiff' | 'brake-drags' | 'not-checked' = 'free',
  damage: Seen = {},
): Given[] => [...start(when, damage), mechanics(state), done('disconnect-leads')];

// ---- What is measured then ----

export const bridgeGood = bridgeIs(bridges.good);
export const bridgeBad = bridgeIs(bridges.shorted);
export const insulationGood = insulationIs(insulations.good);
export const insulationBad = insulationIs(insulations.dead);
export const windingGood = windingIs(windings.alike);
export const allGood = [bridgeGood, insulationGood, windingGood];
export const bothSeparatelyGood = isolationIs(isolations.bothGood);
export const tried = (result: 'trips' | 'no-trip' | 'not-done'): Given[] => [
  done('reconnect'),
  retry('retry-all', result),
];
