import type { Symptom } from '../../kernel/vocabulary.ts';
import type { FaultedAxis } from '../simulator/faulted-axis.ts';
import { oneOf, type Random } from '../simulator/random.ts';
import { meets } from './field-mix.ts';

/** What this person gets wrong or leaves out on this visit. */
export interface Slips {
  /** The moment that the operator tells. */
  told: Symptom;
  otherMessageNoted: boolean;
  firstReadingTooSoon: boolean;
  leadsExchanged: boolean;
  triedOnce: boolean;
  notPermitted: boolean;
  notLooked: boolean;
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

export function drawSlips({ moment }: FaultedAxis, random: Random): Slips {
  return {
    told: meets(random, 'moment-told-wrong') ? oneOf(random, mistakenFor[moment]) : moment,
    otherMessageNoted: meets(random, 'other-message-noted'),
    firstReadingTooSoon: meets(random, 'first-reading-too-soon'),
    leadsExchanged: meets(random, 'leads-exchanged'),
    triedOnce: meets(random, 'tried-once'),
    notPermitted: meets(random, 'not-permitted'),
    notLooked: meets(random, 'not-looked'),
  };
}
