import { chance, oneOf, type Random } from '../../kernel/random.ts';
import type { Symptom } from '../../kernel/vocabulary.ts';
import type { ChangedThing } from '../../visit/steps/symptom/question.ts';
import type { FaultedAxis } from '../simulator/faulted-axis.ts';
import { meets } from './field-mix.ts';

/** What this person is told, gets wrong or leaves out on this visit. */
export interface Slips {
  /** The moment that the operator tells, and how often it came in how many starts; no count if nobody knows. */
  told: Symptom;
  count?: { came: number; of: number };
  changeTold: 'nothing' | 'something' | 'unknown';
  /** What was changed, as it is told; absent if nobody says. */
  changedThing?: ChangedThing;
  /** Whether what was changed is compared with the state before, and the comparison shows what is wrong. */
  compares: 'not' | 'misses' | 'sees';
  otherMessageNoted: boolean;
  firstReadingTooSoon: boolean;
  leadsExchanged: boolean;
  triedOnce: boolean;
  notPermitted: boolean;
  notLooked: boolean;
  stripNotAllowed: boolean;
  /** Earlier readings, or those of a sound sister, are at hand. */
  soundKnown: boolean;
  /** No slip, but luck: bending the cable by hand brings its fault back. */
  bendShows: boolean;
}

/** Moments that are taken for each other. */
const mistakenFor: Record<Symptom, readonly Symptom[]> = {
  'control-off': ['on-enable'],
  'on-enable': ['control-off', 'on-acceleration'],
  'on-acceleration': ['on-enable', 'position-or-cable', 'on-braking', 'now-and-then'],
  'on-braking': ['on-acceleration', 'now-and-then'],
  'position-or-cable': ['on-acceleration', 'now-and-then'],
  'when-hot': ['on-acceleration', 'now-and-then'],
  'now-and-then': ['on-acceleration', 'when-hot', 'position-or-cable'],
};

export function drawSlips(axis: FaultedAxis, random: Random): Slips {
  const { moment, changed } = axis;
  return {
    told: meets(random, 'moment-told-wrong') ? oneOf(random, mistakenFor[moment]) : moment,
    ...(!meets(random, 'count-unknown') && { count: counted(axis, random) }),
    changeTold: meets(random, 'change-unknown') ? 'unknown' : changed ? 'something' : 'nothing',
    ...toldOfChange(axis, random),
    otherMessageNoted: meets(random, 'other-message-noted'),
    firstReadingTooSoon: meets(random, 'first-reading-too-soon'),
    leadsExchanged: meets(random, 'leads-exchanged'),
    triedOnce: meets(random, 'tried-once'),
    notPermitted: meets(random, 'not-permitted'),
    notLooked: meets(random, 'not-looked'),
    stripNotAllowed: meets(random, 'strip-not-allowed'),
    soundKnown: meets(random, 'sound-known'),
    bendShows: meets(random, 'bend-shows'),
  };
}

/** A person without slips, who is told the truth. */
export function noSlips(axis: FaultedAxis, random: Random): Slips {
  return {
    told: axis.moment,
    count: counted(axis, random),
    changeTold: axis.changed ? 'something' : 'nothing',
    compares: 'sees',
    ...{ otherMessageNoted: false, firstReadingTooSoon: false, leadsExchanged: false, triedOnce: false },
    ...{ notPermitted: false, notLooked: false, stripNotAllowed: false, soundKnown: true, bendShows: true },
  };
}

/** Drawn only if something was changed, so that the other visits stay as they are. */
function toldOfChange({ changed, cause }: FaultedAxis, random: Random): Pick<Slips, 'changedThing' | 'compares'> {
  if (!changed) return { compares: 'not' };
  const things = cause === 'commutation' ? exchanged : adjusted;
  const compares = meets(random, 'change-not-compared') ? 'not' : meets(random, 'change-seen') ? 'sees' : 'misses';
  return { changedThing: oneOf(random, things), compares };
}

const exchanged = ['motor', 'feedback', 'cable', 'drive'] as const;
const adjusted = ['parameters', 'load', 'drive'] as const;

/** How often it came in three to ten starts, and at least once, since it did trip. */
function counted({ trips }: FaultedAxis, random: Random): { came: number; of: number } {
  const of = 3 + Math.floor(random() * 8);
  const every = Math.max(...trips.map((trip) => trip.every));
  const again = Array.from({ length: of - 1 }, () => chance(random, every)).filter(Boolean).length;
  return { came: 1 + again, of };
}
