import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { windingPairs } from './pairs.ts';
import type { WindingSet } from './set.ts';

export interface JointPayloads {
  'winding-joint-good': { limitOhms: number };
  'winding-joint-bad': { limitOhms: number };
  'winding-joint-unclear': Nothing;
}

type JointFinding = FindingOf<JointPayloads>;

const finding = findingMaker<JointPayloads>();

/** The mated connector of the odd lead: whether it has the resistance by which the readings differ. */
export type JointState = 'good' | 'bad' | 'unclear' | 'not-measured';

/**
 * `reading` in Ω from the crimp of the cable's pin to the motor's terminal behind its connector. Bad above the limit
 * of a contact, or with more than half of what the odd lead has in excess; good below both. Two leads add their own
 * contacts to it, so they never prove a joint good.
 */
export function judgeJoint(reading: Reading, meter: Instrument, fourLeads: boolean, set: WindingSet): JointState {
  if (reading.kind === 'missing') return 'not-measured';
  const { lo, hi } = intervalOf(reading, meter);
  const own = fourLeads ? 0 : limitValue('winding-two-lead-contact') + (set.finite?.leads.interval.hi ?? 0);
  const most = jointLimit(set);
  if (reading.kind === 'over' && reading.atLeast === undefined) return 'bad';
  if (lo - own > most) return 'bad';
  return fourLeads && hi <= most ? 'good' : 'unclear';
}

/** The limit of a contact, or half the excess of the odd lead if that is less. */
function jointLimit({ finite, verdict }: WindingSet): number {
  const limit = limitValue('winding-joint');
  if (finite === undefined || verdict !== 'no-go') return limit;
  const middle = windingPairs.map((pair) => (finite.intervals[pair].lo + finite.intervals[pair].hi) / 2);
  const excess = Math.max(...middle) - Math.min(...middle);
  return Math.min(limit, excess / 2);
}

export function jointFindings(state: JointState, set: WindingSet): JointFinding[] {
  const parts = { readings: ['acrossJoint'], limits: ['winding-joint' as const], limitOhms: jointLimit(set) };
  switch (state) {
    case 'not-measured':
      return [];
    case 'good':
      return [finding('winding-joint-good', 'note', parts)];
    case 'bad':
      return [finding('winding-joint-bad', 'fail', parts)];
    case 'unclear':
      return [finding('winding-joint-unclear', 'undecided', { readings: ['acrossJoint'], limits: ['winding-joint'] })];
  }
}
