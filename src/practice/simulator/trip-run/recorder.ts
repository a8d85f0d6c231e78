import { between, chance, oneOf, type Random } from '../random.ts';
import type { AxisInMotion } from './axis-in-motion.ts';
import type { Moment, Run } from './run-axis.ts';

/** How a recorder stores a run. */
export interface Recorder {
  sampleSeconds: number;
  /** Time constant of the filter before the store, in s; 0 for values as measured. */
  filterSeconds: number;
  /** One step of a current, and the noise of a sample, in A. */
  step: number;
  noise: number;
  twoSensors: boolean;
  /** Seconds that are kept after the trip; 0 if the file ends with it. */
  after: number;
}

/** The samples in the units of a file: s, A, V, min⁻¹, N·m. */
export interface Recording {
  seconds: number[];
  currents: [number[], number[], number[]];
  bus: number[];
  speed: number[];
  torque: number[];
  /** Time of the trip, in s from the first sample. */
  tripSeconds: number;
}

/** Draws a recorder: most store what was measured, fast; some are slow, or filter. */
export function drawRecorder(random: Random, axis: AxisInMotion): Recorder {
  const fullScale = axis.tripCurrent * between(random, 1.1, 2);
  return {
    sampleSeconds: oneOf(random, [125e-6, 125e-6, 125e-6, 250e-6, 250e-6, 500e-6, 1e-3, 2e-3]),
    filterSeconds: chance(random, 0.3) ? between(random, 0.3e-3, 2e-3) : 0,
    step: fullScale / oneOf(random, [2048, 2048, 8192, 512]),
    noise: axis.peakCurrent * between(random, 0.002, 0.015),
    twoSensors: chance(random, 0.4),
    after: chance(random, 0.6) ? between(random, 0.004, 0.02) : 0,
  };
}

/** What the recorder keeps of a run that tripped. */
export function recordRun(
  { moments, trip }: Run,
  recorder: Recorder,
  axis: AxisInMotion,
  random: Random,
  before = 0.4,
): Recording {
  const last = trip ?? moments.length - 1;
  const start = Math.max(0, last - Math.round(before / axis.controlSeconds));
  const end = Math.min(moments.length - 1, last + Math.round(recorder.after / axis.controlSeconds));
  const every = Math.max(1, Math.round(recorder.sampleSeconds / axis.controlSeconds));
  const out: Recording = {
    seconds: [],
    currents: [[], [], []],
    bus: [],
    speed: [],
    torque: [],
    tripSeconds: (last - start) * axis.controlSeconds,
  };
  const smooth = filtered(recorder.filterSeconds, axis.controlSeconds);
  for (let at = start; at <= end; at++) {
    const moment = moments[at];
    if (moment === undefined) continue;
    const { currents, bus, speed, torque } = smooth(moment);
    // A drive's own recorder has a sample at the trip.
    if ((last - at) % every !== 0) continue;
    const [u, v, w] = currents.map((one) => quantised(one + noise(random) * recorder.noise, recorder.step));
    out.seconds.push((at - start) * axis.controlSeconds);
    out.currents[0].push(u ?? 0);
    out.currents[1].push(v ?? 0);
    out.currents[2].push(recorder.twoSensors ? -(u ?? 0) - (v ?? 0) : (w ?? 0));
    out.bus.push(quantised(bus + noise(random) * 1.5, 1));
    out.speed.push(quantised((speed * 30) / Math.PI + noise(random) * 2, 0.5));
    out.torque.push(quantised(torque, axis.peakCurrent * axis.polePairs * axis.flux * 1e-3));
  }
  return out;
}

function filtered(constant: number, step: number) {
  const share = constant === 0 ? 1 : 1 - Math.exp(-step / constant);
  let kept: { currents: number[]; bus: number; speed: number; torque: number } | undefined;
  return ({ sensed, bus, shownSpeed, torqueCommand }: Moment) => {
    const now = { currents: [...sensed], bus, speed: shownSpeed, torque: torqueCommand };
    kept ??= now;
    const to = (old: number, fresh: number) => old + share * (fresh - old);
    kept = {
      currents: kept.currents.map((old, k) => to(old, now.currents[k] ?? 0)),
      bus: to(kept.bus, bus),
      speed: to(kept.speed, shownSpeed),
      torque: torqueCommand,
    };
    return kept;
  };
}

const quantised = (value: number, step: number) => Math.round(value / step) * step;

/** Nearly normal, of deviation one: the sum of twelve draws (central limit). */
function noise(random: Random): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random();
  return sum;
}
