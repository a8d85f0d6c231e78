import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { allowedRise, busOf, saturated } from './allowed-rise.ts';
import type { TraceFigures } from './figures.ts';
import type { SlopeSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: SlopeSilence) => finding('slope-nothing', 'note', { readings: [], why });

/** A rise must stand out of the noise of two samples. */
const noisesAbove = 8;

/**
 * Current slope against U / L. A rise within one sample that the motor's inductance does not allow took a path that does not
 * lead through the whole winding: a short circuit in cable, motor or output stage. A coarse or filtering recorder makes a
 * slope look smaller, never larger, so such a rise stays one.
 *
 * Against a short circuit speaks only a current that was recorded on its whole way to the trip level, over several samples as
 * measured, none of them fast. Everything else is no statement.
 */
export function slope(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  if (!figures.inAmperes) return nothing('no-amperes');
  if (input.inductance === undefined) return nothing('no-inductance');
  if (busOf(figures, input.busVolts) === undefined) return nothing('no-bus');
  if (figures.gapAtTrip) return nothing('gap');
  const allowed = allowedRise(figures, input, saturated()) ?? Number.POSITIVE_INFINITY;
  const { rise, changes, riseBefore } = figures.slope;
  const parts = {
    readings: ['inductance'],
    limits: ['trace-saturation' as const],
    rise,
    allowed,
    seconds: figures.sampleSeconds,
  };
  const standsOut = rise > allowed + noisesAbove * figures.noise && rise > 1.5 * riseBefore;
  if (standsOut) return finding('slope-for', 'undecided', { ...parts, from: jumped(changes, figures, allowed, input) });
  if (rise > 0.5 * allowed) return nothing(rise > allowed ? 'between' : 'coarse');
  const against = slowRise(figures, input, allowed);
  if (typeof against === 'string') return nothing(against);
  const limits = ['trace-saturation', 'trace-against-samples', 'trace-trip-share'] as const;
  return finding('slope-against', 'note', { ...parts, limits: [...limits], samples: against });
}

/** Whether the rise was seen by more than one sensor of its own: one alone may be the sensor. */
function jumped(
  changes: readonly number[],
  { measured }: TraceFigures,
  allowed: number,
  { sensors }: TripTraceInput,
): 'one' | 'several' {
  const own = measured === 2 || sensors !== 'three' ? changes.slice(0, 2) : changes;
  return own.filter((change) => Math.abs(change) > 0.5 * allowed).length > 1 ? 'several' : 'one';
}

/** The samples on the way up, or why they say nothing. */
function slowRise(figures: TraceFigures, { stored, tripAmps }: TripTraceInput, allowed: number): number | SlopeSilence {
  const { peaks, slope: rising, clippedAt } = figures;
  if (stored !== 'raw') return 'filtered';
  if (tripAmps === undefined) return 'level-unknown';
  if (clippedAt !== undefined) return 'clipped';
  if (peaks.atTrip < (limitValue('trace-trip-share') / 100) * tripAmps) return 'below-level';
  const enough = rising.risingSamples >= limitValue('trace-against-samples') && rising.risingMost < 0.5 * allowed;
  return enough ? rising.risingSamples : 'coarse';
}
