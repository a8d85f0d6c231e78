import type { Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import type { MechanicsAnswer } from '../../../../../src/visit/steps/mechanics/question.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import {
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  lockout,
  looked,
  mechanics,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from './answers.ts';
import { bridges, insulations, isolations, windings } from './readings.ts';
import type { Given } from './visit.ts';

export type Seen = Partial<InspectAnswer['seen']>;

// ---- The ways to the measurements ----

export const start = (when: Symptom, damage: Seen = {}): Given[] => [looked(), trips(when), lockout(1), seen(damage)];

type Tried = 'trips' | 'no-trip' | 'not-done' | 'other-message';
const lockedAgain = (number: 2 | 3, result: Tried) => (result === 'not-done' ? [] : [lockout(number)]);

/** Trips at once, control off; the feedback is unplugged and tried. */
export const feedbackOff = (result: Tried, damage: Seen = {}): Given[] => [
  ...start('control-off', damage),
  done('unplug-feedback'),
  retry('retry-feedback-off', result),
  ...lockedAgain(2, result),
];
export const deviceEnd = (result: Tried, damage: Seen = {}): Given[] => [
  ...feedbackOff('no-trip', damage),
  done('unplug-device-end'),
  retry('retry-device-end', result),
];
export const pluggedAgain = (result: Tried): Given[] => [
  ...deviceEnd('no-trip'),
  lockout(3),
  done('plug-feedback'),
  retry('retry-feedback-on', result),
];

/** It trips without its feedback; the leads are off. */
export const stillTrips = [...feedbackOff('trips'), done('disconnect-leads')];

/** Everything is taken off the drive and tried, as it trips at this moment. */
export const stripped = (result: Tried, other: Partial<RetryAnswer> = {}): Given[] => [
  strip(),
  retry('retry-stripped', result, other),
  ...lockedAgain(3, result),
];

/** Trips on enable; output stage and winding pass, and the enable is tried with the motor leads off. */
export const leadsOff = (result: Tried, damage: Seen = {}): Given[] => [
  ...start('on-enable', damage),
  done('disconnect-leads'),
  bridgeGood,
  windingGood,
  retry('retry-leads-off', result),
  ...lockedAgain(2, result),
];

/** Trips while it moves; the leads are off and the mechanics are checked. */
export const moving = (
  when: Symptom = 'on-acceleration',
  state: MechanicsAnswer['found'] = 'free',
  damage: Seen = {},
): Given[] => [...start(when, damage), done('disconnect-leads'), mechanics(state)];

// ---- What is measured then ----

export const bridgeGood = bridgeIs(bridges.good);
export const bridgeBad = bridgeIs(bridges.shorted);
export const windingGood = windingIs(windings.alike);
/** The idle cores are free. */
export const insulationGood: Given[] = [idle(), insulationIs(insulations.good)];
export const insulationBad: Given[] = [idle(), insulationIs(insulations.dead)];
export const allGood = [bridgeGood, windingGood, ...insulationGood];
export const bothSeparatelyGood = isolationIs(isolations.bothGood);
export const tried = (result: Tried): Given[] => [done('reconnect'), retry('retry-all', result)];
