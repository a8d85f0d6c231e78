import type { AxisInMotion } from './axis-in-motion.ts';
import type { Disturbance } from './trip-classes.ts';
import { currentSlopes, rowTimes, third, windingOf } from './winding.ts';

/** What changes while an axis runs. Currents of the motor and of a path beside it in A, angles in rad, speed in rad/s of the shaft. */
export interface State {
  i: [number, number, number];
  path: number;
  speed: number;
  angle: number;
  bus: number;
  integralD: number;
  integralQ: number;
  integralSpeed: number;
  shownAngle: number;
  shownSpeed: number;
  lost: number;
  /** Torque that the rotor's saliency adds, in N·m. */
  reluctance: number;
}

const [sin120, cos120] = [Math.sin(third), Math.cos(third)];

/** Currents along the frame at this electrical angle (Park's transformation, amplitudes kept). */
export function park([u, v, w]: readonly [number, number, number], angle: number): [number, number] {
  const alpha = (2 / 3) * (u + cos120 * (v + w));
  const beta = (2 / 3) * sin120 * (v - w);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return [alpha * cos + beta * sin, beta * cos - alpha * sin];
}

/** One small step of the motor's currents: star point free, one phase perhaps open. */
export function electricStep(
  state: State,
  axis: AxisInMotion,
  wrong: Disturbance,
  active: boolean,
  u: readonly [number, number, number],
  dt: number,
  blocked: boolean,
): void {
  const electrical = state.angle * axis.polePairs;
  const omega = state.speed * axis.polePairs;
  state.angle += state.speed * dt;
  const open = active ? wrong.openPhase : undefined;
  const shorted = active ? wrong.shortedTurns : undefined;
  const turnsOf = (k: number) => (shorted?.phase === k ? 1 - shorted.share : 1);
  const turns = [turnsOf(0), turnsOf(1), turnsOf(2)] as const;
  const i = state.i;
  const terminal = blocked ? blockedAt(i, state.bus) : u;
  const conducting = places.filter((k) => k !== open && !Number.isNaN(terminal[k]));
  const { mutual, slope } = windingOf(axis, electrical, i, turns);
  const turned = (k: number) => (slope === undefined ? 0 : rowTimes(slope, k, i));
  const driven = (k: 0 | 1 | 2) => {
    const emf = -omega * axis.flux * turns[k] * Math.sin(electrical - k * third);
    return terminal[k] - axis.resistance * turns[k] * i[k] - emf - omega * turned(k);
  };
  const drive = [driven(0), driven(1), driven(2)] as const;
  state.reluctance =
    slope === undefined ? 0 : (axis.polePairs / 2) * (i[0] * turned(0) + i[1] * turned(1) + i[2] * turned(2));
  // What flowed in a core that has just opened ends in the arc: the others must add up to zero again.
  const rest = conducting.length < 2 ? 0 : conducting.reduce((all, k) => all + i[k], 0 as number) / conducting.length;
  const slopes = currentSlopes(mutual, drive, conducting);
  for (const k of places) {
    const before = state.i[k] - (conducting.includes(k) && !blocked ? rest : 0);
    if (conducting.length < 2 || !conducting.includes(k)) state.i[k] = 0;
    else state.i[k] = before + slopes[k] * dt;
    // A diode ends its current at zero.
    if (blocked && Math.sign(state.i[k]) !== Math.sign(before)) state.i[k] = 0;
  }
}

const places = [0, 1, 2] as const;

/** With all transistors off a current flows through diodes against the bus until it ends; NaN: none flows. */
function blockedAt(i: readonly [number, number, number], bus: number): [number, number, number] {
  const of = (one: number) => (Math.abs(one) < 1e-3 ? Number.NaN : (-Math.sign(one) * bus) / 2);
  return [of(i[0]), of(i[1]), of(i[2])];
}

/** The current beside the motor, through a fault. */
export function pathStep(
  state: State,
  path: NonNullable<Disturbance['path']>,
  u: readonly [number, number, number],
  dt: number,
  blocked: boolean,
): void {
  const across = blocked
    ? (-Math.sign(state.path) * state.bus) / 2
    : (u[path.from] ?? 0) - (path.to === 'earth' ? 0 : (u[path.to] ?? 0));
  // Average voltages: the transistors put the whole bus across the path in turn; half of it stands for that.
  const driving = blocked ? across : across + (Math.sign(across) || 1) * state.bus * (path.resistance < 5 ? 0.3 : 0);
  const decay = Math.exp((-path.resistance / path.inductance) * dt);
  const next = state.path * decay + (driving / path.resistance) * (1 - decay);
  state.path = blocked && Math.sign(next) !== Math.sign(state.path) ? 0 : next;
}

/** The shaft: torque of the motor against weight, process, friction, and what jams. */
export function mechanicStep(
  state: State,
  axis: AxisInMotion,
  { load }: Disturbance,
  now: number,
  since: number,
  dt: number,
): void {
  const [, q] = park(state.i, state.angle * axis.polePairs);
  const perAmpere = 1.5 * axis.polePairs * axis.flux;
  const net = perAmpere * q + state.reluctance - axis.weight - processTorque(axis, now, state.angle);
  const jam =
    load !== undefined && since >= 0
      ? load.torque * perAmpere * axis.peakCurrent * Math.min(1, since / load.seconds)
      : 0;
  const against = axis.friction + jam;
  const moving = Math.abs(state.speed) > 0.5;
  const resisting = moving ? Math.sign(state.speed) * against : clamp(net, against);
  const next = state.speed + ((net - resisting) / axis.inertia) * dt;
  // Friction stops a shaft; it does not turn it back.
  state.speed = moving && Math.sign(next) !== Math.sign(state.speed) && Math.abs(net) < against ? 0 : next;
}

function processTorque({ process }: AxisInMotion, now: number, angle: number): number {
  const { force, everySeconds, forceSeconds, swing, swingsPerTurn, swingHertz } = process;
  const within = now % everySeconds;
  const acts = within < forceSeconds ? force * Math.sin((Math.PI * within) / forceSeconds) : 0;
  return acts + (swing === 0 ? 0 : swing * Math.sin(angle * swingsPerTurn + 2 * Math.PI * swingHertz * now));
}

/** The rectifier feeds, the braking circuit takes, the motor takes or gives. */
export function busStep(
  state: State,
  axis: AxisInMotion,
  { supply }: Disturbance,
  since: number,
  u: readonly number[],
  dt: number,
): void {
  const power = u.reduce((all, one, k) => all + one * (state.i[k] ?? 0), 0);
  const dips = supply !== undefined && supply !== 'no-braking' && since >= 0 && since < supply.seconds;
  const source = axis.bus * (dips ? supply.share : 1);
  const fed = Math.max(0, (source - state.bus) / axis.supplyResistance);
  const braked =
    supply !== 'no-braking' && state.bus > axis.brakingShare * axis.bus
      ? (state.bus - (axis.brakingShare - 0.02) * axis.bus) * 0.5 * (axis.peakCurrent / axis.bus) * 20
      : 0;
  state.bus = Math.max(10, state.bus + ((fed - power / state.bus - braked) / axis.capacitance) * dt);
}

export const clamp = (value: number, most: number) => Math.min(most, Math.max(-most, value));
