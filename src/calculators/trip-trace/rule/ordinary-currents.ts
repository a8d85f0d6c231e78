import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { allowedRise, busOf, leastShare } from './allowed-rise.ts';
import { busIsSteady } from './bus.ts';
import { addsUp, eachPhaseMeasured } from './current-sum.ts';
import type { TraceFigures } from './figures.ts';
import type { OrdinarySilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: OrdinarySilence) => finding('ordinary-nothing', 'note', { why });

/**
 * A trip while the recorded currents are ordinary. Whatever lets the current rise through the motor takes its time and is
 * seen: load, tuning, commutation. What is left is inside the drive or its sensing, or a short circuit that rose and was cut
 * off between two samples.
 *
 * It can be said only if a current through the motor could not have been at the trip level between two samples. The winding
 * limits its rise and its fall alike, so with a sample on both sides it exceeds them by half of what one step allows at the
 * most; at the end of a file by the whole step.
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
  // What a current to earth takes in a phase without a sensor is in no figure.
  if (!eachPhaseMeasured(figures, input)) return nothing('third-unseen');
  if (!addsUp(figures)) return nothing('sum-off');
  if (stored !== 'raw') return nothing('filtered');
  if (input.inductance === undefined) return nothing('no-inductance');
  if (busOf(figures, input.busVolts) === undefined) return nothing('no-bus');
  const allowed = allowedRise(figures, input, leastShare()) ?? Number.POSITIVE_INFINITY;
  if (allowed * (figures.samplesAfter > 0 ? 0.5 : 1) > tripAmps - highest) return nothing('coarse');
  const share = highest / tripAmps;
  return finding('ordinary-for', 'undecided', {
    limits: ['trace-ordinary'],
    supply: busIsSteady(figures) ? 'steady' : 'unknown',
    amps: highest,
    share,
    seconds: figures.sampleSeconds,
  });
}
