import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { TripTraceFinding, TripTraceInput, TripTracePayloads, ZeroSilence } from './input.ts';
import { holdsTrip } from './trip-level.ts';

const finding = findingMaker<TripTracePayloads>();

/** Of an electrical turn from one sample to the next, so that the way of a current can be followed. */
const mostTurn = 0.2;

/**
 * A phase without current while the other two carry the same in opposite directions: its core is open, or its sensor reads
 * nothing. At rest a sound phase may stay at zero, whatever the other two do, so the motor must have turned by a good part of
 * an electrical turn meanwhile; pole pairs that are not known count as one.
 */
export function openPhase(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { zero, rotation, motion } = figures;
  const { polePairs } = input;
  const limits = ['trace-open-turn' as const];
  const share = limitValue('trace-open-turn') / 100;
  const turnsSeen = rotation === undefined ? 0 : Math.abs(rotation.lastHertz) * rotation.lastSeconds;
  const zeroTurns = zero === undefined ? 0 : (zero.turns ?? Number.NaN);
  // At few samples a turn each of them may be near a zero of its own.
  const perSample = ((polePairs ?? 1) * (motion?.speedRecent ?? 0) * figures.sampleSeconds) / 60;
  if (zero !== undefined && zeroTurns > share && perSample < mostTurn) {
    const { phase, seconds } = zero;
    return finding('zero-for', 'undecided', { limits, phase, seconds, turns: zeroTurns });
  }
  const turned = polePairs !== undefined && turnsSeen > 1;
  const seen = holdsTrip(figures, input);
  if (turned && seen && zeroTurns < share / 2) return finding('zero-against', 'note', { limits, turns: turnsSeen });
  const restsAtZero = zero?.upToTrip === true && zero.seconds > Math.max(0.005, 0.5 * (motion?.stalledSeconds ?? 0));
  const nothing = (why: ZeroSilence) => finding('zero-nothing', 'note', { limits, why });
  if (motion === undefined) return nothing('no-speed');
  if (restsAtZero) return nothing('at-rest');
  if (polePairs === undefined) return nothing('no-pairs');
  if (perSample >= mostTurn) return nothing('coarse');
  return nothing(turned && !seen ? 'trip-not-seen' : 'too-short');
}
