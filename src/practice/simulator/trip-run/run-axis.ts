import type { AxisInMotion } from './axis-in-motion.ts';
import { busStep, clamp, electricStep, mechanicStep, pathStep, type State } from './axis-parts.ts';
import { sense } from './current-sensors.ts';
import { atTerminals, controlled, readEncoder, travel } from './drive-control.ts';
import type { Disturbance } from './trip-classes.ts';

/** What flows and turns at one moment: true values, before any sensor. */
export interface Moment {
  seconds: number;
  /** At the drive's terminals, in A. */
  currents: readonly [number, number, number];
  /** As the drive's own two or three sensors show them. */
  sensed: readonly [number, number, number];
  bus: number;
  /** Of the shaft, in rad/s: true, and as the encoder says. */
  speed: number;
  shownSpeed: number;
  torqueCommand: number;
}

export interface Run {
  moments: Moment[];
  /** Index of the moment at which the drive tripped; undefined if it did not. */
  trip: number | undefined;
}

/** Sub-steps of one control step; a cable of some µH needs more of them than a motor. */
const motorSteps = 5;
const cableSteps = 8;

/** Time that a drive bears its peak current, in s: then it trips for overload. */
const peakSeconds = 0.08;

/** Share of the peak current at which a drive with three sensors takes their sum for a fault to earth. */
const earthFault = 0.3;

/**
 * A permanent-magnet motor with field-oriented current loop and speed loop, in phase quantities so that phases may be open,
 * shorted or leak to earth: d(L i)/dt = u − R i − e, e = dψ/dt of the magnets, torque 3/2 · p · ψ · iq, J dω/dt = torque − load
 * (Krishnan, Permanent Magnet Synchronous and Brushless DC Motor Drives; recalled). Voltages are averages over a control step:
 * there is no switching ripple. After the trip the drive blocks and the diodes take the energy back to the bus.
 */
export function runAxis(axis: AxisInMotion, wrong: Disturbance, seconds: number): Run {
  const torquePerAmpere = 1.5 * axis.polePairs * axis.flux;
  const state: State = {
    i: [0, 0, 0],
    path: 0,
    speed: 0,
    angle: 0,
    bus: axis.bus,
    integralD: 0,
    integralQ: 0,
    // The axis has been holding its weight.
    integralSpeed: axis.weight / torquePerAmpere,
    shownAngle: 0,
    shownSpeed: 0,
    lost: 0,
    reluctance: 0,
  };
  const moments: Moment[] = [];
  let trip: number | undefined;
  let atPeak = 0;
  let latched: [number, number, number] | undefined;
  const steps = Math.round(seconds / axis.controlSeconds);
  let voltages: [number, number, number] = [0, 0, 0];
  for (let step = 0; step < steps; step++) {
    const now = step * axis.controlSeconds;
    const active = now >= wrong.begins;
    const sensed = latched ?? sense(atTerminals(state.i, state.path, wrong), axis.sensors, active ? wrong : {});
    latched = undefined;
    readEncoder(state, axis, active ? wrong : { begins: 0 });
    const reference = travel(axis, now);
    const gains = wrong.gains ?? { current: 1, speed: 1 };
    const bandwidth = axis.speedBandwidth * gains.speed;
    const error = reference - state.shownSpeed;
    const wanted = (axis.inertia * bandwidth * error) / torquePerAmpere + state.integralSpeed;
    const command = clamp(wanted, axis.peakCurrent);
    if (command === wanted)
      state.integralSpeed += ((axis.inertia * bandwidth ** 2) / 4 / torquePerAmpere) * error * axis.controlSeconds;
    moments.push({
      seconds: now,
      currents: atTerminals(state.i, state.path, wrong),
      sensed,
      bus: state.bus,
      speed: state.speed,
      shownSpeed: state.shownSpeed,
      torqueCommand: command * torquePerAmpere,
    });
    const toEarth = Math.abs(sensed[0] + sensed[1] + sensed[2]) > earthFault * axis.peakCurrent;
    const over = toEarth || sensed.some((one) => Math.abs(one) > axis.tripCurrent);
    atPeak = Math.max(0, atPeak + axis.controlSeconds * (Math.abs(command) > 0.9 * axis.peakCurrent ? 1 : -0.3));
    if (trip === undefined && (over || atPeak > peakSeconds || (active && wrong.tripsItself))) trip = step;
    voltages =
      trip === undefined
        ? controlled(state, axis, sensed, command, gains.current, wrong.commutationOffset ?? 0)
        : [0, 0, 0];
    const dt = axis.controlSeconds / motorSteps;
    const path = active ? wrong.path : undefined;
    const faulty = active ? wrong : {};
    const fineSteps = path === undefined ? 1 : cableSteps;
    for (let sub = 0; sub < motorSteps * fineSteps; sub++) {
      const blocked = trip !== undefined;
      if (sub % fineSteps === 0) electricStep(state, axis, wrong, active, voltages, dt, blocked);
      if (path !== undefined) pathStep(state, path, voltages, dt / fineSteps, blocked);
      // The comparator of the output stage is faster than the control.
      const fast = sense(atTerminals(state.i, state.path, wrong), axis.sensors, faulty);
      const tooHigh = Math.max(Math.abs(fast[0]), Math.abs(fast[1]), Math.abs(fast[2])) > axis.tripCurrent * 1.05;
      if (blocked || !tooHigh) continue;
      trip = step + 1;
      if (axis.keepsTripValue) latched = fast;
    }
    mechanicStep(state, axis, wrong, now, active ? now - wrong.begins : -1, axis.controlSeconds);
    busStep(state, axis, wrong, active ? now - wrong.begins : -1, voltages, axis.controlSeconds);
    if (trip !== undefined && step > trip + 0.02 / axis.controlSeconds) break;
  }
  return { moments, trip };
}
