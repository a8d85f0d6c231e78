import { limitValue } from '../limits.ts';
import { type Instrument, type Interval, intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';

/** One path in the diode test, in V: with its diode conducting, and with the leads exchanged. */
export interface DiodePair {
  conducting: Reading;
  blocking: Reading;
}

/**
 * `short`: a reading that no junction shows, one way or both. `leaky`: conducts both ways. `open`: blocks both ways.
 * `exchanged`: conducts only where it should block.
 */
export type PairJudgement =
  | 'sound'
  | 'short-both-ways'
  | 'short-one-way'
  | 'leaky'
  | 'open'
  | 'exchanged'
  | 'unclear'
  | 'missing';

/** The limits behind a judgement of a pair. */
export const pairLimits = ['diode-short', 'diode-blocking'] as const;

/** OL is above any drop, whatever the range. */
function dropOf(reading: Reading, instrument: Instrument): Interval {
  const open = reading.kind === 'over' && reading.atLeast === undefined;
  return open
    ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY }
    : intervalOf(reading, {
        ...(instrument.percent !== undefined && { percent: instrument.percent }),
        ...(instrument.counts !== undefined && { counts: instrument.counts }),
      });
}

/** A path by itself. Readings below zero are no drops: the caller stops before it judges them. */
export function judgePair({ conducting, blocking }: DiodePair, instrument: Instrument = {}): PairJudgement {
  const [forward, reverse] = [dropOf(conducting, instrument), dropOf(blocking, instrument)];
  const isShort = (one: Interval) => one.hi <= limitValue('diode-short');
  const blocks = (one: Interval) => one.lo >= limitValue('diode-blocking');
  const conducts = (one: Interval) => one.lo > limitValue('diode-short') && one.hi < limitValue('diode-blocking');
  const shorts = [forward, reverse].filter(isShort).length;
  if (shorts === 2) return 'short-both-ways';
  if (shorts === 1) return 'short-one-way';
  if (conducting.kind === 'missing' || blocking.kind === 'missing')
    return conducts(reverse) && blocking.kind !== 'missing' ? 'leaky' : 'missing';
  if (conducts(reverse)) return blocks(forward) ? 'exchanged' : 'leaky';
  if (!blocks(reverse)) return 'unclear';
  if (conducts(forward)) return 'sound';
  return blocks(forward) ? 'open' : 'unclear';
}

/** A figure below zero: the meter can't show that by itself, so there is a voltage. */
export const isBelowZero = (reading: Reading) => reading.kind === 'value' && reading.value < 0;
