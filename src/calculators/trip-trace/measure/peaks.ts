import type { PeakFigures, SlopeFigures } from '../rule/figures.ts';
import { largest } from './statistics.ts';
import { lastMoments, type Trace } from './trace.ts';
import { currentVector } from './vector.ts';

/** Highest currents: up to the trip, and before the last moments. */
export function peaksOf(trace: Trace): PeakFigures {
  const { from, to } = lastMoments(trace);
  const before = from - 1;
  const most = (first: number, last: number) => Math.max(...trace.currents.map((one) => largest(one, first, last)));
  const begin = trace.time[0] ?? 0;
  return {
    atTrip: most(0, to),
    before: before > 0 ? most(0, before) : 0,
    beforeSeconds: (trace.time[before] ?? begin) - begin,
  };
}

/** A figure that stands still at the very top for this many samples is the end of a range. */
const samplesAtTheTop = 3;

/** The figure at which the currents are cut off; undefined if they are not. */
export function clippedAt(trace: Trace, peak: number, noise: number): number | undefined {
  const { to } = lastMoments(trace);
  const near = Math.max(peak * 1e-6, noise * 1e-3);
  for (const current of trace.currents.slice(0, trace.measured)) {
    let still = 0;
    for (let i = 1; i <= to; i++) {
      const top = Math.abs(Math.abs(current[i] ?? 0) - peak) <= near && current[i] === current[i - 1];
      still = top ? still + 1 : 0;
      if (still >= samplesAtTheTop - 1 && noise > 0) return peak;
    }
  }
  return undefined;
}

/** How fast the currents rise: in one sample of the last moments, earlier, and on the way to the highest current. */
export function slopesOf(trace: Trace): SlopeFigures {
  const { from, to } = lastMoments(trace);
  let rise = 0;
  let at = from;
  let riseBefore = 0;
  for (const current of trace.currents.slice(0, trace.measured)) {
    for (let i = 1; i <= to; i++) {
      const risen = riseAt(trace, current, i);
      if (i < from) riseBefore = Math.max(riseBefore, risen);
      else if (risen > rise) {
        rise = risen;
        at = i;
      }
    }
  }
  return {
    rise,
    changes: changesAt(trace, at),
    riseBefore,
    vector: vectorRise(trace, from, to),
    ...approach(trace, to),
  };
}

function changesAt({ currents: [u, v, w] }: Trace, i: number): [number, number, number] {
  const of = (current: Float64Array) => (current[i] ?? 0) - (current[i - 1] ?? 0);
  return [of(u), of(v), of(w)];
}

/** The longest change of the current vector in one sample in which the vector grows. */
function vectorRise(trace: Trace, from: number, to: number): SlopeFigures['vector'] {
  const { magnitude } = currentVector(trace);
  let [rise, at, riseBefore] = [0, from, 0];
  for (let i = 1; i <= to; i++) {
    if ((magnitude[i] ?? 0) <= (magnitude[i - 1] ?? 0) || isGap(trace, i)) continue;
    const [u, v, w] = changesAt(trace, i);
    const change = Math.hypot((2 * u - v - w) / 3, (v - w) / Math.sqrt(3));
    if (i < from) riseBefore = Math.max(riseBefore, change);
    else if (change > rise) [rise, at] = [change, i];
  }
  return { rise, changes: changesAt(trace, at), riseBefore };
}

/** Rise of a magnitude within one usual step; 0 for a fall, and across a gap of the file. */
function riseAt(trace: Trace, current: Float64Array, i: number): number {
  const [now, then] = [current[i] ?? 0, current[i - 1] ?? 0];
  return isGap(trace, i) || Math.abs(now) <= Math.abs(then) ? 0 : Math.abs(now - then);
}

const isGap = ({ time, step }: Trace, i: number): boolean => (time[i] ?? 0) - (time[i - 1] ?? 0) > 1.5 * step;

/** The way of the phase with the highest current from half of it to the top. */
function approach(trace: Trace, to: number): Pick<SlopeFigures, 'risingSamples' | 'risingMost' | 'risingLast'> {
  const { from } = lastMoments(trace);
  let top = from;
  let phase = trace.currents[0];
  for (const current of trace.currents.slice(0, trace.measured)) {
    for (let i = from; i <= to; i++) {
      if (Math.abs(current[i] ?? 0) <= Math.abs(phase[top] ?? 0)) continue;
      top = i;
      phase = current;
    }
  }
  const half = Math.abs(phase[top] ?? 0) / 2;
  let start = top;
  let most = 0;
  while (start > 0 && Math.abs(phase[start] ?? 0) > half) {
    if (start < top) most = Math.max(most, riseAt(trace, phase, start));
    start--;
  }
  return { risingSamples: top - start, risingMost: most, risingLast: riseAt(trace, phase, top) };
}
