import { Axes } from '../../../ui/plot/Axes.tsx';
import { plotFrame } from '../../../ui/plot/frame.ts';
import { pathThrough } from '../../../ui/plot/scale.ts';
import { drive, type TripCurrent } from './model.ts';

const names: Record<string, string> = {
  '-6': '1 µs',
  '-5': '',
  '-4': '',
  '-3': '1 ms',
  '-2': '',
  '-1': '',
  '0': '1 s',
};
const frame = plotFrame(
  {
    kind: 'log10',
    domain: [1e-7, 1],
    label: 'time since the current began',
    format: (seconds) => names[String(Math.round(Math.log10(seconds)))] ?? '',
    ticks: [1e-6, 1e-3, 1],
  },
  { kind: 'log10', domain: [1, 2000], label: 'amperes', format: String, ticks: [1, 10, 100, 1000] },
  { left: 56, right: 340, top: 36, bottom: 330 },
);
const [x, y] = [frame.x.place, frame.y.place];

/** The current in equal ratios of time, from the first tenth of a microsecond to the switching off, and the trip level. */
export function CurrentDrawing({ result: { course, toTrip, peak } }: { result: TripCurrent }) {
  const shown = course.filter(([seconds, amperes]) => seconds >= 1e-7 && amperes >= 1);
  const [end] = course[course.length - 1] ?? [1];
  return (
    <>
      <Axes frame={frame} />
      <path class="line dashed" d={`M56 ${y(drive.tripAmperes).toFixed(1)}H340`} />
      <text class="halo" x="340" y={y(drive.tripAmperes) - 8} text-anchor="end">
        trip level
      </text>
      <path class="line marked" d={pathThrough(shown.map(([seconds, amperes]) => [x(seconds), y(amperes)]))} />
      <path class="line marked" d={`M${x(end).toFixed(1)} ${y(peak).toFixed(1)}V330`} />
      <circle class="ink" cx={x(toTrip).toFixed(1)} cy={y(drive.tripAmperes).toFixed(1)} r="7" />
    </>
  );
}
