import type { Cause } from '../../kernel/vocabulary.ts';
import { everyCause, likelyAt } from '../../visit/guide/causes.ts';
import type { Before, CallFacts, Seen, Trial } from './facts.ts';

/** Why a family of causes is suspect: something that the caller said. */
export type Reason =
  | { kind: 'before'; what: Before }
  | { kind: 'seen'; what: Seen }
  | { kind: 'tried'; what: Trial; result: 'trips' | 'runs' }
  | { kind: 'again'; what: 'sometimes' | 'once' }
  | { kind: 'shared-drive' };

export interface Suspect {
  cause: Cause;
  /** The moment of the trip makes it likely. */
  byMoment: boolean;
  reasons: Reason[];
}

/** What each answer points at. Common practice, no source. */
const afterwards: Record<Before, readonly Cause[]> = {
  'motor-changed': ['commutation', 'contact', 'tuning'],
  'drive-changed': ['tuning', 'commutation', 'contact'],
  'cable-changed': ['contact', 'commutation', 'idle-core', 'protective-conductor'],
  'parameters-changed': ['tuning', 'commutation'],
  'load-changed': ['load', 'tuning'],
  water: ['moisture', 'contact', 'winding-insulation'],
  standstill: ['moisture', 'brake'],
  jam: ['load', 'moving-cable', 'brake'],
  'power-cut': ['supply', 'drive-control'],
  'new-neighbour': ['interference', 'supply'],
};

const looks: Record<Seen, readonly Cause[]> = {
  'drive-burnt': ['output-stage', 'drive-control'],
  'drive-dirty': ['drive-cooling'],
  'motor-burnt': ['winding-insulation', 'winding-turns'],
  'motor-wet': ['moisture', 'winding-insulation', 'contact'],
  'cable-damaged': ['cable-insulation', 'moving-cable', 'idle-core', 'protective-conductor'],
  'feedback-damaged': ['feedback-supply', 'feedback-signal'],
};

const trials: Record<Trial, Record<'trips' | 'runs', readonly Cause[]>> = {
  'leads-off': {
    trips: ['output-stage', 'drive-control', 'current-sensor'],
    runs: ['cable-insulation', 'moving-cable', 'winding-insulation', 'winding-turns', 'moisture', 'contact'],
  },
  'feedback-off': { trips: [], runs: ['feedback-supply', 'feedback-signal', 'contact'] },
  // What stays when the drive is another one. That it runs proves nothing: plugs were moved, and the load was another one.
  'other-drive': { trips: ['cable-insulation', 'winding-insulation', 'winding-turns', 'brake', 'load'], runs: [] },
  'other-motor': { trips: ['output-stage', 'cable-insulation', 'drive-control', 'load'], runs: [] },
};

const frequency: Record<'sometimes' | 'once', readonly Cause[]> = {
  sometimes: ['contact', 'moving-cable', 'feedback-signal', 'moisture'],
  once: ['supply', 'interference', 'contact'],
};

function pointers({ before, seen, tried, again, sharedDrive }: CallFacts): [Reason, readonly Cause[]][] {
  const said: [Reason, readonly Cause[]][] = [
    ...seen.map((what): [Reason, readonly Cause[]] => [{ kind: 'seen', what }, looks[what]]),
    ...before.map((what): [Reason, readonly Cause[]] => [{ kind: 'before', what }, afterwards[what]]),
  ];
  for (const [what, result] of Object.entries(tried) as [Trial, 'trips' | 'runs' | 'not-tried'][]) {
    if (result !== 'not-tried') said.push([{ kind: 'tried', what, result }, trials[what][result]]);
  }
  if (again === 'sometimes' || again === 'once') said.push([{ kind: 'again', what: again }, frequency[again]]);
  if (sharedDrive === 'yes') said.push([{ kind: 'shared-drive' }, ['other-axis']]);
  return said;
}

/**
 * Families of causes that the call points at: those that more answers name come first, then in the order of the moment.
 * Only an order: a caller often names the wrong moment, so nothing is excluded, and nothing is proven.
 */
export function suspects(facts: CallFacts): Suspect[] {
  const said = pointers(facts);
  const byMoment = facts.moment === undefined ? [] : likelyAt(facts.moment);
  const named = everyCause
    .map((cause) => ({
      cause,
      byMoment: byMoment.includes(cause),
      reasons: said.filter(([, causes]) => causes.includes(cause)).map(([reason]) => reason),
    }))
    .filter((suspect) => suspect.byMoment || suspect.reasons.length > 0);
  const place = (cause: Cause) => (byMoment.includes(cause) ? byMoment.indexOf(cause) : byMoment.length);
  return named.sort((a, b) => b.reasons.length - a.reasons.length || place(a.cause) - place(b.cause));
}

/** The families that nothing in the call points at. They stay possible. */
export function alsoPossible(facts: CallFacts): Cause[] {
  const named = suspects(facts).map(({ cause }) => cause);
  return everyCause.filter((cause) => !named.includes(cause));
}
