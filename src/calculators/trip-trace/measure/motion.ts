import type { MotionFigures } from '../rule/figures.ts';
import { largest, mean, median } from './statistics.ts';
import type { Trace } from './trace.ts';
import type { CurrentVector } from './vector.ts';

/**
 * The current along the frame of the rotor, up to a constant angle: the size of the current with the sign of its torque, as the speed counts it.
 * The angle of the rotor is p times the speed, summed up; the constant is the angle while the motor first sped up. Undefined
 * without speed in min⁻¹ and pole pairs, or if the angle does not stand.
 */
export function torqueCurrent(trace: Trace, { magnitude, angle }: CurrentVector): Float64Array | undefined {
  const { speed, speedInRpm, polePairs, step, trip } = trace;
  if (speed === undefined || !speedInRpm || polePairs === undefined) return undefined;
  const steps = speed.map((rpm) => (rpm / 60) * polePairs * 2 * Math.PI * step);
  let best: { values: Float64Array; stands: number } | undefined;
  for (const direction of [1, -1]) {
    let rotor = 0;
    const apart = angle.map((one, i) => {
      rotor += steps[i] ?? 0;
      return one - direction * rotor;
    });
    const reference = referenceAngle(trace, magnitude, apart);
    if (reference === undefined) continue;
    const values = magnitude.map((size, i) => size * Math.cos((apart[i] ?? 0) - reference));
    // How much of the current lies along this axis, in either direction.
    let [along, all] = [0, 0];
    for (let i = 0; i <= trip; i++) {
      along += Math.abs(values[i] ?? 0);
      all += magnitude[i] ?? 0;
    }
    if (best === undefined || along / all > best.stands) best = { values, stands: along / all };
  }
  return best !== undefined && best.stands > 0.85 ? best.values : undefined;
}

/** Mean angle between current and rotor while the magnitude of the speed grew. */
function referenceAngle(
  { speed, trip, step }: Trace,
  magnitude: Float64Array,
  apart: Float64Array,
): number | undefined {
  if (speed === undefined) return undefined;
  const reach = Math.max(2, Math.round(0.01 / step));
  const fastest = largest(speed, 0, trip);
  let [x, y] = [0, 0];
  for (let i = reach; i <= trip; i++) {
    const grown = Math.abs(speed[i] ?? 0) - Math.abs(speed[i - reach] ?? 0);
    if (grown < 0.02 * fastest) continue;
    // Backwards the current has the other direction.
    const signed = (magnitude[i] ?? 0) * Math.sign(speed[i] ?? 0);
    x += signed * Math.cos(apart[i] ?? 0);
    y += signed * Math.sin(apart[i] ?? 0);
  }
  return x === 0 && y === 0 ? undefined : Math.atan2(y, x);
}

/** How the speed went before the trip, and whether the motor drove meanwhile. */
export function motionOf(
  trace: Trace,
  { magnitude }: CurrentVector,
  along: Float64Array | undefined,
): MotionFigures | undefined {
  const { speed, torque, trip, step } = trace;
  if (speed === undefined || trip < 20) return undefined;
  const recent = Math.max(3, Math.round(0.004 / step));
  const speedBefore = largest(speed, 0, trip);
  const speedAtTrip = Math.abs(mean(speed, Math.max(0, trip - recent), Math.max(0, trip - 1)));
  const top = largest(magnitude, Math.max(0, trip - recent), trip);
  let start = trip;
  while (start > 0 && (magnitude[start] ?? 0) > top / 2) start--;
  const signs = torque ?? along;
  // With both signals, only what both show.
  const signals = [torque, along].filter((one) => one !== undefined);
  // Speed that swings is lost and gained again: what counts is missing at the trip, too.
  const missing = largest(speed, Math.max(0, trip - Math.round(recently / step)), trip) - speedAtTrip;
  const lost =
    signs === undefined
      ? 0
      : Math.min(missing, ...signals.map((one) => lostWhileDriving(trace, speed, one, magnitude)));
  const gained = torque && speedBefore > 0 ? gainedAgainst(trace, speed, torque, magnitude) / speedBefore : undefined;
  const last = signs === undefined ? undefined : median(signs.subarray(Math.max(0, trip - recent), trip));
  const direction = Math.sign(median(speed.subarray(Math.max(0, trip - 10 * recent), trip)));
  return {
    speedBefore,
    speedAtTrip,
    speedRecent: largest(speed, Math.max(0, trip - Math.round(0.05 / step)), trip),
    risingSeconds: (trip - start) * step,
    ...(last !== undefined && { driving: Math.sign(last) === direction }),
    lostWhileDriving: speedBefore === 0 ? 0 : lost / speedBefore,
    ...(gained !== undefined && { gainedAgainst: gained }),
    stalledSeconds: Math.min(...[...signals, magnitude].map((one) => stalledSeconds(trace, speed, one, speedBefore))),
    ...loadGrowth(trace, speed, magnitude, speedBefore),
  };
}

/** The last part of a recording in which speed is lost or gained by the fault that trips the drive, in s. */
const recently = 0.2;

/** The speed that was lost in all while a strong torque, and a strong current, had the direction of the motion. */
function lostWhileDriving(
  { trip, step }: Trace,
  speed: Float64Array,
  signs: Float64Array,
  magnitude: Float64Array,
): number {
  const strong = 0.3 * largest(signs, 0, trip);
  const strongCurrent = 0.3 * largest(magnitude, 0, trip);
  let lost = 0;
  for (let i = Math.max(1, trip - Math.round(recently / step)); i < trip; i++) {
    const drives = Math.sign(signs[i] ?? 0) === Math.sign(speed[i] ?? 0) && Math.abs(signs[i] ?? 0) > strong;
    // A command without current drives nothing: the drive has tripped already.
    if (drives && (magnitude[i] ?? 0) > strongCurrent) lost -= grown(speed, i);
  }
  return Math.max(0, lost);
}

/** The most speed that was gained in one stretch while a strong torque command, and a strong current, had the other direction. */
function gainedAgainst(
  { trip, step }: Trace,
  speed: Float64Array,
  torque: Float64Array,
  magnitude: Float64Array,
): number {
  const strong = 0.5 * largest(torque, 0, trip);
  const strongCurrent = 0.5 * largest(magnitude, 0, trip);
  let gained = 0;
  let most = 0;
  for (let i = Math.max(1, trip - Math.round(recently / step)); i < trip; i++) {
    const opposes = Math.sign(torque[i] ?? 0) === -Math.sign(speed[i] ?? 0);
    const isStrong = Math.abs(torque[i] ?? 0) > strong && (magnitude[i] ?? 0) > strongCurrent;
    gained = opposes && isStrong ? gained + grown(speed, i) : 0;
    most = Math.max(most, gained);
  }
  return most;
}

const grown = (speed: Float64Array, i: number) => Math.abs(speed[i] ?? 0) - Math.abs(speed[i - 1] ?? 0);

/** A shaft that turns no faster than this share of the highest speed stands, and so does one that never exceeds 10 min⁻¹. */
const standing = 0.08;

function stalledSeconds(
  { trip, step, speedInRpm }: Trace,
  speed: Float64Array,
  torque: Float64Array,
  fastest: number,
): number {
  const strong = 0.7 * largest(torque, 0, trip);
  const slow = Math.max(standing * fastest, speedInRpm ? 10 : 0);
  let from = trip - 1;
  while (from > 0 && Math.abs(torque[from] ?? 0) > strong && Math.abs(speed[from] ?? 0) < slow) from--;
  return Math.max(0, trip - 1 - from) * step;
}

/** Current at constant speed in the last stretch, by that in the first stretch at the same speed. */
function loadGrowth(
  { trip, step }: Trace,
  speed: Float64Array,
  magnitude: Float64Array,
  fastest: number,
): Pick<MotionFigures, 'loadGrowth' | 'loadCurrent'> {
  const length = Math.max(10, Math.round(0.02 / step));
  const steady: { rpm: number; current: number }[] = [];
  for (let from = 0; from + length <= trip; from += length) {
    const rpm = mean(speed, from, from + length - 1);
    const [first, last] = [
      mean(speed, from, from + (length >> 2)),
      mean(speed, from + length - (length >> 2), from + length - 1),
    ];
    const isSteady = Math.abs(rpm) > 0.2 * fastest && Math.abs(last - first) < 0.03 * Math.abs(rpm);
    if (isSteady) steady.push({ rpm, current: mean(magnitude, from, from + length - 1) });
  }
  const last = steady[steady.length - 1];
  const alike =
    last === undefined ? [] : steady.filter(({ rpm }) => Math.abs(rpm - last.rpm) < 0.1 * Math.abs(last.rpm));
  const first = alike[0];
  if (first === undefined || last === undefined || alike.length < 4 || first.current === 0) return {};
  return { loadGrowth: last.current / first.current, loadCurrent: last.current };
}
