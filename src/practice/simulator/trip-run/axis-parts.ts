import type { AxisInMotion } from './axis-in-motion.ts';
import type { Disturbance } from './trip-classes.ts';

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
}

export const third = (2 * Math.PI) / 3;

export function park(i: readonly number[], angle: number): [number, number] {
  let [d, q] = [0, 0];
  for (const [k, one] of i.entries()) {
    d += (2 / 3) * one * Math.cos(angle - k * third);
    q -= (2 / 3) * one * Math.sin(angle - k * third);
  }
  return [d, q];
}

/** One small step of the currents: star point free, one phase perhaps open, a path perhaps beside the motor. */
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
  const share = (k: number) => (wrong.shortedTurns?.phase === k ? 1 - wrong.shortedTurns.share : 1);
  const terminal: number[] = blocked
    ? state.i.map((one) => (Math.abs(one) < 1e-3 ? Number.NaN : (-Math.sign(one) * state.bus) / 2))
    : [...u];
  const conducting = [0, 1, 2].filter((k) => k !== open && !Number.isNaN(terminal[k]));
  const emf = [0, 1, 2].map((k) => -omega * axis.flux * share(k) * Math.sin(electrical - k * third));
  const drive = (k: number) => (terminal[k] ?? 0) - axis.resistance * share(k) * (state.i[k] ?? 0) - (emf[k] ?? 0);
  const weight = (k: number) => 1 / (axis.inductance * share(k) ** 2);
  const sum = conducting.reduce((all, k) => all + weight(k), 0);
  // What flowed in a core that has just opened ends in the arc: the others must add up to zero again.
  const rest =
    conducting.length < 2 ? 0 : conducting.reduce((all, k) => all + (state.i[k] ?? 0), 0) / conducting.length;
  const star = sum === 0 ? 0 : conducting.reduce((all, k) => all + drive(k) * weight(k), 0) / sum;
  for (const k of [0, 1, 2] as const) {
    const before = state.i[k] - (conducting.includes(k) && !blocked ? rest : 0);
    if (conducting.length < 2 || !conducting.includes(k)) state.i[k] = 0;
    else state.i[k] = before + (drive(k) - star) * weight(k) * dt;
    // A diode ends its current at zero.
    if (blocked && Math.sign(state.i[k]) !== Math.sign(before)) state.i[k] = 0;
  }
  const { path } = wrong;
  if (path === undefined || !active) return;
  const across = blocked
    ? (-Math.sign(state.path) * state.bus) / 2
    : (u[path.from] ?? 0) - (path.to === 'earth' ? 0 : (u[path.to] ?? 0));
  // Average voltages: the transistors put the whole bus across the path in turn; half of it stands for that.
  const driving = blocked ? across : across + (Math.sign(across) || 1) * state.bus * (path.resistance < 5 ? 0.3 : 0);
  const decay = Math.exp((-path.resistance / path.inductance) * dt);
  const next = state.path * decay + (driving / path.resistance) * (1 - decay);
  state.path = blocked && Math.sign(next) !== Math.sign(state.path) ? 0 : next;
}

export function mechanicStep(state: State, axis: AxisInMotion, { load }: Disturbance, since: number, dt: number): void {
  const [, q] = park(state.i, state.angle * axis.polePairs);
  const torque = 1.5 * axis.polePairs * axis.flux * q;
  const most = 1.5 * axis.polePairs * axis.flux * axis.peakCurrent;
  const against =
    axis.friction + (load !== undefined && since >= 0 ? load.torque * most * Math.min(1, since / load.seconds) : 0);
  const moving = Math.abs(state.speed) > 0.5;
  const resisting = moving ? Math.sign(state.speed) * against : clamp(torque, against);
  const next = state.speed + ((torque - resisting) / axis.inertia) * dt;
  // Friction stops a shaft; it does not turn it back.
  state.speed = moving && Math.sign(next) !== Math.sign(state.speed) && Math.abs(torque) < against ? 0 : next;
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
    supply !== 'no-braking' && state.bus > 1.12 * axis.bus
      ? (state.bus - 1.1 * axis.bus) * 0.5 * (axis.peakCurrent / axis.bus) * 20
      : 0;
  state.bus = Math.max(10, state.bus + ((fed - power / state.bus - braked) / axis.capacitance) * dt);
}

export const clamp = (value: number, most: number) => Math.min(most, Math.max(-most, value));
