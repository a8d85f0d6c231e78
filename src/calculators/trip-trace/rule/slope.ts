import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { allowedRise, busOf, leastShare, restingRise, riseLimits, sampleTimeFor } from './allowed-rise.ts';
import { eachPhaseMeasured } from './current-sum.ts';
import type { PhasePlace, TraceFigures } from './figures.ts';
import type { SlopeSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';
import { levelShare, reachesLevel } from './trip-level.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: SlopeSilence, needed?: number) =>
  finding('slope-nothing', 'note', { why, ...(needed !== undefined && { needed }) });

/** A rise must stand out of the noise of two samples. */
const noisesAbove = 8;

/**
 * Current slope against U / L. A rise within one sample that the motor's inductance does not allow took a path that does not
 * lead through the whole winding: a short circuit in cable, motor or output stage. A coarse or filtering recorder makes a
 * slope look smaller, never larger, so such a rise stays one. It says so only if two sensors of their own saw it: what one
 * alone saw may have gone to earth, or be that sensor.
 *
 * Against a short circuit speaks only a current that was recorded on its whole way to the trip level, over several samples as
 * measured, none of them fast beside what the bus alone drives through the stated inductance. Everything else is no statement.
 */
export function slope(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  if (!figures.inAmperes) return nothing('no-amperes');
  if (input.inductance === undefined) return nothing('no-inductance');
  if (busOf(figures, input.busVolts) === undefined) return nothing('no-bus');
  if (figures.gapAtTrip) return nothing('gap');
  const allowed = allowedRise(figures, input, leastShare(input)) ?? Number.POSITIVE_INFINITY;
  const { slope: phases } = figures;
  const parts = {
    readings: ['inductance'],
    limits: riseLimits(figures, input),
    allowed,
    seconds: figures.sampleSeconds,
  };
  const least = allowed + noisesAbove * figures.noise;
  const isFast = ({ rise, riseBefore }: Rise) => rise > least && rise > 1.5 * riseBefore;
  const fast: [Slope['of'], Rise][] = [
    ['vector', phases.vector],
    ['phase', phases],
  ];
  const found = fast.filter(([, rise]) => isFast(rise));
  const [byTwo] = found.filter(([, { changes }]) => seenByTwo(changes, figures, input, least / 2));
  const [of, first] = byTwo ?? found[found.length - 1] ?? [];
  if (of !== undefined && first !== undefined) {
    const { rise, changes } = first;
    if (byTwo) return finding('slope-for', 'undecided', { ...parts, of, rise });
    const sizes = changes.map(Math.abs);
    const phase = sizes.indexOf(Math.max(...sizes)) as PhasePlace;
    return finding('slope-of-one', 'undecided', { ...parts, of, rise, phase });
  }
  const atRest = restingRise(figures, input) ?? 0;
  const { rise } = phases;
  const coarse = () => nothing('coarse', neededTime(figures, input, allowed));
  if (Math.max(rise, phases.vector.rise) > allowed) return nothing('between');
  if (rise > 0.5 * atRest) return coarse();
  const against = slowRise(figures, input, 0.5 * atRest);
  if (against === 'coarse') return coarse();
  if (typeof against === 'string') return nothing(against);
  const limits = ['trace-against-samples', 'trace-trip-share'] as const;
  return finding('slope-against', 'note', {
    ...parts,
    ...{ of: 'phase', rise, allowed: atRest, limits: [...limits], samples: against },
  });
}

type Slope = TripTracePayloads['slope-for'];
type Rise = TraceFigures['slope']['vector'];

/**
 * Sample time at which a short circuit would stand out: it takes the current over half of the trip level in one sample, and the
 * winding may not.
 */
function neededTime(figures: TraceFigures, { tripAmps = 0 }: TripTraceInput, allowed: number): number | undefined {
  const { peaks, noise, sampleSeconds } = figures;
  const level = Math.max(tripAmps, peaks.atTrip);
  return sampleTimeFor(level / 2 - noisesAbove * noise, allowed, sampleSeconds);
}

/**
 * Whether two sensors saw the rise. With a sensor in each phase, two phases must have changed. If one current was computed from
 * two, which one is not known, and a sensor that jumps alone moves two of the three: then all three must have changed.
 */
function seenByTwo(changes: readonly number[], figures: TraceFigures, input: TripTraceInput, least: number): boolean {
  const moved = changes.filter((change) => Math.abs(change) > least).length;
  return moved >= (eachPhaseMeasured(figures, input) ? 2 : 3);
}

/** The samples on the way up, or why they say nothing. */
function slowRise(figures: TraceFigures, input: TripTraceInput, most: number): number | SlopeSilence {
  const { slope: rising, clippedAt } = figures;
  if (input.stored !== 'raw') return 'filtered';
  if (levelShare(figures, input) === undefined) return 'level-unknown';
  if (clippedAt !== undefined) return 'clipped';
  if (!reachesLevel(figures, input)) return 'below-level';
  const { risingSamples, risingMost, risingLast } = rising;
  // A short circuit that began after the last sample but one would have added to the way that the current was on.
  const wentOn = risingLast <= 1.5 * risingMost;
  const enough = risingSamples >= limitValue('trace-against-samples') && Math.max(risingMost, risingLast) < most;
  return enough && wentOn ? risingSamples : 'coarse';
}
