import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { MotionSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';
import { holdsTrip, levelShare, wereOrdinary } from './trip-level.ts';

const finding = findingMaker<TripTracePayloads>();
const nothing = (why: MotionSilence) => finding('motion-nothing', 'note', { limits: ['trace-speed-lost'], why });

/** In min⁻¹: a shaft that only trembles loses and gains no speed that says anything. */
const slowest = 60;

/** In s: longer than a servo axis takes to break away. */
const longStall = 0.03;

/** Share of the trip level that a drive controls its current to at the least, when a load asks for all that it has. */
const currentLimit = 0.7;

/**
 * Current against speed. A motor that loses speed while it drives in the direction of its motion meets a load that is stronger:
 * a jam, a brake, friction. A motor that makes no torque from its current (commutation, magnets) looks the same, so this
 * points to mechanics first and to these too; so does a strong torque that does not move the shaft. A motor that gains speed
 * against its own torque command turns by a wrong commutation, or a hanging load pulls it. All three need a current that is not
 * ordinary at the trip. More and more current at one constant speed is a load that grows.
 */
export function load(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { motion, sampleSeconds, speedInRpm } = figures;
  if (motion === undefined) return nothing('no-speed');
  const { lostWhileDriving, risingSeconds, loadGrowth, driving, gainedAgainst, stalledSeconds } = motion;
  // An axis that is held or lowered has its torque at rest and against its motion too, and a process takes what it needs: only
  // a high current makes any of it a reason.
  const level = levelShare(figures, input);
  if (level === undefined) return nothing('level-unknown');
  if (wereOrdinary(figures, input)) return nothing('ordinary');
  // A file that ends before the trip shows a load only if the current was as high as the drive lets it.
  if (level < currentLimit && !holdsTrip(figures, input)) return nothing('trip-not-seen');
  const loadShare = (motion.loadCurrent ?? 0) / (input.tripAmps ?? Number.POSITIVE_INFINITY);
  const isLoaded = loadShare >= limitValue('trace-ordinary') / 100;
  if (isLoaded && loadGrowth !== undefined && loadGrowth >= limitValue('trace-load-growth')) {
    return finding('motion-load', 'undecided', { limits: ['trace-load-growth'], growth: loadGrowth });
  }
  const turned = speedInRpm && motion.speedBefore > slowest;
  if (turned && gainedAgainst !== undefined && gainedAgainst > limitValue('trace-speed-lost') / 100) {
    return finding('motion-against-torque', 'undecided', { limits: ['trace-speed-lost'], share: gainedAgainst });
  }
  if (stalledSeconds > longStall) return finding('motion-stalled', 'undecided', { seconds: stalledSeconds });
  if (driving === undefined) return nothing('direction-unknown');
  if (!turned || lostWhileDriving < limitValue('trace-speed-lost') / 100) return nothing('no-loss');
  if (risingSeconds < Math.max(5 * sampleSeconds, 0.002)) return nothing('too-fast');
  return finding('motion-lost', 'undecided', {
    limits: ['trace-speed-lost'],
    share: lostWhileDriving,
    seconds: risingSeconds,
  });
}
