import { between, betweenDecades, chance, oneOf, type Random } from '../../../kernel/random.ts';
import type { AxisInMotion } from './axis-in-motion.ts';
import { withoutSensor } from './current-sensors.ts';
import type { Moment, Run } from './run-axis.ts';

/** How a recorder stores a run. */
export interface Recorder {
  sampleSeconds: number;
  /** Time constant of the filter before the store, in s; 0 for values as measured. The speed has one of its own. */
  filterSeconds: number;
  speedFilterSeconds: number;
  /** One step of a current, and the noise of a sample, in A. */
  step: number;
  noise: number;
  /** Samples of one current that a disturbance made, in the whole file, and their size in A. */
  spikes: number;
  spikeAmps: number;
  /** Seconds that are kept before and after the trip. After it 0 if the file ends with it, below 0 if it ends before. */
  before: number;
  after: number;
  /** The time is counted from the trip. */
  zeroAtTrip: boolean;
  /** Samples that are missing somewhere. */
  gapSamples: number;
  /** The currents are stored as rms of a sine, though the head says A. */
  asRms: boolean;
}

/** The samples in the units of a file: s, A, V, min⁻¹, N·m. */
export interface Recording {
  seconds: number[];
  currents: [number[], number[], number[]];
  bus: number[];
  speed: number[];
  torque: number[];
}

const sampleTimes = [62.5e-6, 125e-6, 125e-6, 125e-6, 250e-6, 250e-6, 500e-6, 1e-3, 2e-3];

/** Draws a recorder: most store what was measured, fast; some are slow, or filter, or lose samples. */
export function drawRecorder(random: Random, axis: AxisInMotion): Recorder {
  const fullScale = axis.tripCurrent * between(random, 1.1, 2);
  const after = chance(random, 0.6) ? between(random, 0.0002, 0.02) : 0;
  return {
    sampleSeconds: Math.max(axis.controlSeconds, oneOf(random, sampleTimes)),
    filterSeconds: chance(random, 0.3) ? betweenDecades(random, 0.1e-3, 2e-3) : 0,
    speedFilterSeconds: chance(random, 0.3) ? between(random, 0.5e-3, 5e-3) : 0,
    step: fullScale / oneOf(random, [2048, 2048, 8192, 512, 128]),
    noise: axis.peakCurrent * betweenDecades(random, 0.001, 0.03),
    spikes: chance(random, 0.08) ? 3 : 0,
    spikeAmps: axis.tripCurrent * between(random, 0.2, 1),
    before: betweenDecades(random, 0.012, 0.5),
    after: chance(random, 0.1) ? -betweenDecades(random, 0.0002, 0.02) : after,
    zeroAtTrip: chance(random, 0.4),
    gapSamples: chance(random, 0.08) ? 1 + Math.floor(random() * 12) : 0,
    asRms: chance(random, 0.1),
  };
}

/** What the recorder keeps of a run that tripped. */
export function recordRun({ moments, trip }: Run, recorder: Recorder, axis: AxisInMotion, random: Random): Recording {
  const tripAt = trip ?? moments.length - 1;
  const start = Math.max(0, tripAt - Math.round(recorder.before / axis.controlSeconds));
  const last = Math.min(moments.length - 1, tripAt + Math.round(recorder.after / axis.controlSeconds));
  const end = Math.max(start, last);
  const every = Math.max(1, Math.round(recorder.sampleSeconds / axis.controlSeconds));
  // A drive's own recorder has a sample at the trip; a scope need not.
  const shift = chance(random, 0.6) ? 0 : Math.floor(random() * every);
  const gap = gapOf(random, recorder, start, end, every);
  const spikes = Array.from({ length: recorder.spikes }, () => start + Math.floor(random() * (end - start)));
  const out: Recording = { seconds: [], currents: [[], [], []], bus: [], speed: [], torque: [] };
  const smooth = filtered(recorder, axis.controlSeconds);
  for (let at = start; at <= end; at++) {
    const moment = moments[at];
    if (moment === undefined) continue;
    const { currents, bus, speed, torque } = smooth(moment);
    if ((tripAt + shift - at) % every !== 0 || (at >= gap.from && at < gap.to)) continue;
    const shown = currents.map((one) => one + noise(random) * recorder.noise) as [number, number, number];
    if (axis.sensors.computed !== undefined) withoutSensor(shown, axis.sensors.computed);
    const isSpike = spikes.some((one) => Math.abs(one - at) < every / 2);
    const hit = isSpike ? Math.floor(random() * 3) : -1;
    for (const k of [0, 1, 2] as const) {
      const disturbed = (shown[k] ?? 0) + (k === hit ? oneOf(random, [-1, 1]) * recorder.spikeAmps : 0);
      out.currents[k].push(quantised(disturbed * (recorder.asRms ? Math.SQRT1_2 : 1), recorder.step));
    }
    out.seconds.push((at - (recorder.zeroAtTrip ? tripAt : start)) * axis.controlSeconds);
    out.bus.push(quantised(bus + noise(random) * 1.5, 1));
    out.speed.push(quantised((speed * 30) / Math.PI + noise(random) * 2, 0.5));
    out.torque.push(quantised(torque, axis.peakCurrent * axis.polePairs * axis.flux * 1e-3));
  }
  return out;
}

/** Where samples are missing, in moments of the run: more often near the end, when the drive is busy. */
function gapOf(random: Random, { gapSamples }: Recorder, start: number, end: number, every: number) {
  const length = gapSamples * every;
  const from = chance(random, 0.5) ? start + random() * (end - start) : end - random() * (length + 20 * every);
  return { from, to: from + length };
}

function filtered({ filterSeconds, speedFilterSeconds }: Recorder, step: number) {
  const shareOf = (constant: number) => (constant === 0 ? 1 : 1 - Math.exp(-step / constant));
  const [share, speedShare] = [shareOf(filterSeconds), shareOf(speedFilterSeconds)];
  let kept: { currents: number[]; bus: number; speed: number; torque: number } | undefined;
  return ({ sensed, bus, shownSpeed, torqueCommand }: Moment) => {
    const now = { currents: [...sensed], bus, speed: shownSpeed, torque: torqueCommand };
    kept ??= now;
    const to = (old: number, fresh: number, by = share) => old + by * (fresh - old);
    kept = {
      currents: kept.currents.map((old, k) => to(old, now.currents[k] ?? 0)),
      bus: to(kept.bus, bus),
      speed: to(kept.speed, shownSpeed, speedShare),
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
