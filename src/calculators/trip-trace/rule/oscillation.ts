import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { OscillationSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';
import { holdsTrip, levelShare, wereOrdinary } from './trip-level.ts';

const finding = findingMaker<TripTracePayloads>();
const limits = ['trace-oscillation', 'trace-oscillation-cycles'] as const;
const nothing = (why: OscillationSilence) => finding('oscillation-nothing', 'note', { limits: [...limits], why });

/** Half periods that scatter more than this are no oscillation of a loop. */
const mostIrregular = 0.3;

/** In Hz: the size of a current has no sign, so that moves to and fro swing it too, though not so fast. */
const slowestOfSize = 50;

/**
 * A regular oscillation up to the trip, and its frequency. It speaks for a control loop that is set too hard, or for a
 * resonance of the machine that the loop feeds. At the frequency of the currents themselves, or twice it, it is made by an
 * unequal phase or sensor: no statement.
 */
export function oscillation(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { oscillation: swing } = figures;
  if (swing === undefined) return nothing('none-found');
  const { of, hertz, cycles, share, growth, irregularity, electricalHertz } = swing;
  const least = limitValue('trace-oscillation') / 100;
  if (share < 0.1 && of !== 'current') {
    if (!holdsTrip(figures, input)) return nothing('trip-not-seen');
    return finding('oscillation-against', 'note', { limits: [...limits], share });
  }
  if (cycles < limitValue('trace-oscillation-cycles')) return nothing('few-cycles');
  if (irregularity > mostIrregular) return nothing('irregular');
  if (share < least || (growth < 1.3 && share < 2 * least)) return nothing('small');
  if (of === 'current' && hertz < slowestOfSize) return nothing('moves');
  if (of !== 'speed') {
    if (electricalHertz === undefined) return nothing('frequency-unknown');
    const alike = (times: number) => Math.abs(hertz - times * electricalHertz) < 0.15 * hertz;
    if ([1, 2, 6].some(alike)) return nothing('at-the-frequency');
  }
  // A machine that swings all the time, by a crank or a spring, does not trip for it as long as its currents are ordinary.
  if (levelShare(figures, input) === undefined) return nothing('level-unknown');
  if (wereOrdinary(figures, input)) return nothing('ordinary');
  return finding('oscillation-for', 'undecided', { limits: [...limits], of, hertz, cycles, share });
}
