import { largest } from '../measure/statistics.ts';
import type { TripFrom } from '../rule/figures.ts';

type Currents = readonly [Float64Array, Float64Array, Float64Array];

/** The share of the highest current below which a motor counts as without current. */
const without = 0.05;

/**
 * The sample of the trip, if the person does not say it: where the time is zero, since recorders count from what started
 * them; where the currents end for good, since a drive that trips blocks its output; or the end of the file.
 */
export function findTrip(time: Float64Array, currents: Currents, step: number): { trip: number; tripFrom: TripFrom } {
  const last = time.length - 1;
  const countsFromTrigger = (time[0] ?? 0) < -2 * step && (time[last] ?? 0) >= 0;
  if (countsFromTrigger) return { trip: nearest(time, 0), tripFrom: 'time-zero' };
  const peak = Math.max(...currents.map((one) => largest(one, 0, last)));
  const size = (i: number) => Math.max(...currents.map((one) => Math.abs(one[i] ?? 0)));
  let end = last;
  while (end > 0 && size(end) < without * peak) end--;
  if (last - end < Math.max(3, Math.round(0.001 / step))) return { trip: last, tripFrom: 'file-end' };
  return { trip: beginningOfFall(size, end, step), tripFrom: 'currents-end' };
}

/** After the trip the currents die away within milliseconds: the highest sample of these, if it stands out. */
function beginningOfFall(size: (i: number) => number, end: number, step: number): number {
  const reach = Math.max(4, Math.round(0.005 / step));
  let top = end;
  for (let i = end; i >= Math.max(0, end - reach); i--) if (size(i) > size(top)) top = i;
  return top;
}

/** Index of the time nearest to a moment. */
export function nearest(time: Float64Array, moment: number): number {
  let best = 0;
  for (let i = 1; i < time.length; i++) {
    if (Math.abs((time[i] ?? 0) - moment) < Math.abs((time[best] ?? 0) - moment)) best = i;
  }
  return best;
}
