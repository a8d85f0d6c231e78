import type { AxisInMotion } from './axis-in-motion.ts';
import { park, type State } from './axis-parts.ts';
import type { Disturbance } from './trip-classes.ts';
import { third } from './winding.ts';

/** There and back: up to speed, along, down, a rest, and the same backwards. */
export function travel(axis: AxisInMotion, now: number): number {
  const { travelSpeed, rampSeconds: ramp, travelSeconds, restSeconds: rest } = axis;
  const half = 2 * ramp + travelSeconds + rest;
  const within = now % (2 * half);
  const at = within % half;
  const sign = within < half ? 1 : -1;
  const share = Math.min(1, Math.max(0, (at - rest / 2) / ramp), Math.max(0, (half - rest / 2 - at) / ramp));
  return sign * travelSpeed * share;
}

/** The drive's terminals carry the current of the motor and that of the path. */
export function atTerminals(
  i: readonly [number, number, number],
  path: number,
  { path: wrong }: Disturbance,
): [number, number, number] {
  const all: [number, number, number] = [i[0], i[1], i[2]];
  if (wrong === undefined) return all;
  all[wrong.from] += path;
  if (wrong.to !== 'earth') all[wrong.to] -= path;
  return all;
}

export function readEncoder(state: State, axis: AxisInMotion, { encoder }: Disturbance): void {
  const before = state.shownAngle;
  const electrical = state.angle * axis.polePairs;
  if (encoder?.kind === 'frozen') {
    state.shownSpeed += -state.shownSpeed * Math.min(1, axis.controlSeconds / 0.0005);
    return;
  }
  if (encoder?.kind === 'slips') state.lost += encoder.rate * axis.controlSeconds;
  if (encoder?.kind === 'jumps' && state.lost === 0) state.lost = encoder.angle;
  state.shownAngle = electrical + state.lost;
  const raw = (state.shownAngle - before) / axis.controlSeconds / axis.polePairs;
  // Drives filter the speed over some hundred microseconds.
  state.shownSpeed += (raw - state.shownSpeed) * Math.min(1, axis.controlSeconds / 0.0005);
}

/** Current loop in the frame of the encoder: two PI controllers with decoupling, limited by the bus. */
export function controlled(
  state: State,
  axis: AxisInMotion,
  sensed: readonly [number, number, number],
  command: number,
  gain: number,
  offset: number,
): [number, number, number] {
  const angle = state.shownAngle + offset + state.shownSpeed * axis.polePairs * axis.controlSeconds * 0.5;
  const [d, q] = park(sensed, angle);
  const omega = state.shownSpeed * axis.polePairs;
  const kp = axis.currentBandwidth * axis.inductance * gain * 0.5;
  const ki = axis.currentBandwidth * axis.resistance * gain * 0.5;
  const [errorD, errorQ] = [-d, command - q];
  const ud = kp * errorD + state.integralD - omega * axis.inductance * q;
  const uq = kp * errorQ + state.integralQ + omega * (axis.inductance * d + axis.flux);
  const most = state.bus / Math.sqrt(3);
  const size = Math.hypot(ud, uq);
  const scale = size > most ? most / size : 1;
  if (scale === 1) {
    state.integralD += ki * errorD * axis.controlSeconds;
    state.integralQ += ki * errorQ * axis.controlSeconds;
  }
  return inverse(ud * scale, uq * scale, angle + omega * axis.controlSeconds);
}

function inverse(d: number, q: number, angle: number): [number, number, number] {
  const of = (k: number) => d * Math.cos(angle - k * third) - q * Math.sin(angle - k * third);
  return [of(0), of(1), of(2)];
}
