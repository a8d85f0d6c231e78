import { largest } from './measure/statistics.ts';
import { lastMoments, type Trace } from './measure/trace.ts';

/** Curves as whole numbers, thousandths of `top`, at equal steps from `from` to `to` (s). */
export interface TracePlot {
  /** The last moments, sample by sample. */
  near: { from: number; to: number; top: number; currents: [number[], number[], number[]] };
  /** All of the recording: the highest current, the highest speed and the mean bus of each piece. */
  whole: { from: number; to: number; top: number; current: number[]; speed?: number[]; bus?: number[] };
}

/** Samples drawn of the last moments, and pieces of the whole recording. */
const samplesDrawn = 120;
const piecesDrawn = 90;

/** What is drawn of a trace: small enough to be kept and shared. */
export function plotSeries(trace: Trace): TracePlot {
  const { time, trip, currents, speed, bus } = trace;
  const last = time.length - 1;
  const { from: moments } = lastMoments(trace);
  const end = Math.min(last, trip + 20);
  const start = Math.max(0, Math.min(moments - 20, end - samplesDrawn));
  const every = Math.max(1, Math.ceil((end - start) / (2 * samplesDrawn)));
  const places = Array.from({ length: Math.floor((end - start) / every) + 1 }, (_, i) => start + i * every);
  const top = Math.max(...currents.map((one) => largest(one, start, end)), 1e-9);
  const thousandths = (values: Float64Array) => places.map((at) => Math.round((1000 * (values[at] ?? 0)) / top));
  const peak = Math.max(...currents.map((one) => largest(one, 0, last)), 1e-9);
  const piece = Math.max(1, Math.ceil(time.length / piecesDrawn));
  const pieces = Array.from({ length: Math.ceil(time.length / piece) }, (_, i) => i * piece);
  const highest = (values: Float64Array, at: number) => largest(values, at, Math.min(last, at + piece - 1));
  const shares = (of: (at: number) => number, most: number) => pieces.map((at) => Math.round((1000 * of(at)) / most));
  return {
    near: {
      from: time[places[0] ?? 0] ?? 0,
      to: time[places[places.length - 1] ?? 0] ?? 0,
      top,
      currents: [thousandths(currents[0]), thousandths(currents[1]), thousandths(currents[2])],
    },
    whole: {
      from: time[0] ?? 0,
      to: time[last] ?? 0,
      top: peak,
      current: shares((at) => Math.max(...currents.map((one) => highest(one, at))), peak),
      ...(speed && { speed: shares((at) => highest(speed, at), Math.max(largest(speed, 0, last), 1e-9)) }),
      ...(bus && { bus: shares((at) => highest(bus, at), Math.max(largest(bus, 0, last), 1e-9)) }),
    },
  };
}
