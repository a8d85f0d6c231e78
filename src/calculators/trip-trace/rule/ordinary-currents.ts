import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { allowedRise, busOf, leastShare, riseLimits, sampleTimeFor } from './allowed-rise.ts';
import { busIsSteady } from './bus.ts';
import { addsUp, eachPhaseMeasured } from './current-sum.ts';
import type { TraceFigures } from './figures.ts';
import type { OrdinarySilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';
import { openPhase } from './open-phase.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: OrdinarySilence, needed?: number) =>
  finding('ordinary-nothing', 'note', { why, ...(needed !== undefined && { needed }) });

/**
 * A trip while the recorded currents are ordinary. Whatever lets the current rise through the motor takes its time and is
 * seen: load, tuning, commutation. What is left is inside the drive or its sensing, or a short circuit that rose and was cut
 * off between two samples.
 *
 * It can be said only if a current through the motor could not have been at the trip level between two samples. The winding
 * limits its rise and its fall alike, so with a sample on both sides it exceeds them by half of what one step allows at the
 * most; at the end of a file by the whole step.
 *
 * A current to earth in a phase without a sensor of its own is in no figure. What flows through the motor is, since it comes back
 * through the other two: so the motor is excluded all the same, and the path to earth only if each phase was measured and the
 * three add up.
 *
 * An open core keeps the currents low, so it is excluded only if each phase carried current up to the trip.
 */
export function ordinaryCurrents(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { tripAmps, stored } = input;
  if (!figures.inAmperes) return nothing('no-amperes');
  if (figures.tripFrom === 'file-end') return nothing('trip-not-seen');
  if (tripAmps === undefined) return nothing('level-unknown');
  const highest = Math.max(figures.peaks.atTrip, figures.peaks.before);
  if (highest > (limitValue('trace-ordinary') / 100) * tripAmps) return nothing('high');
  if (figures.gapAtTrip) return nothing('gap');
  if (figures.clippedAt !== undefined) return nothing('clipped');
  if (stored !== 'raw') return nothing('filtered');
  if (input.inductance === undefined) return nothing('no-inductance');
  if (busOf(figures, input.busVolts) === undefined) return nothing('no-bus');
  const allowed = allowedRise(figures, input, leastShare(input)) ?? Number.POSITIVE_INFINITY;
  const unseen = allowed * (figures.samplesAfter > 0 ? 0.5 : 1);
  if (unseen > tripAmps - highest)
    return nothing('coarse', sampleTimeFor(tripAmps - highest, unseen, figures.sampleSeconds));
  const share = highest / tripAmps;
  return finding('ordinary-for', 'undecided', {
    limits: ['trace-ordinary', ...riseLimits(figures, input)],
    supply: busIsSteady(figures) ? 'steady' : 'unknown',
    earth: eachPhaseMeasured(figures, input) && addsUp(figures) ? 'excluded' : 'possible',
    core: openPhase(figures, input).code === 'zero-against' ? 'excluded' : 'possible',
    amps: highest,
    share,
    seconds: figures.sampleSeconds,
  });
}
