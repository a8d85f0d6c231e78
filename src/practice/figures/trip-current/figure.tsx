import type { SimulatedFigure } from '../simulated-figure.ts';
import { CurrentDrawing } from './CurrentDrawing.tsx';
import { type Cause, drive, type TripCurrent, tripCurrent } from './model.ts';

const causes: readonly [Cause, string][] = [
  ['terminals', 'short at the drive'],
  ['motor-end', 'short at the motor end'],
  ['winding', 'short in the winding'],
  ['load', 'slide stuck, no short'],
];
const lengths = [2, 5, 10, 20, 30, 50];

function duration(seconds: number): string {
  if (seconds < 1e-3) return `${(seconds * 1e6).toFixed(1)} µs`;
  return seconds < 1 ? `${(seconds * 1e3).toFixed(seconds < 0.01 ? 1 : 0)} ms` : `${seconds.toFixed(1)} s`;
}

const sentences: Record<Cause, string> = {
  terminals: 'A short that is there from the start trips as soon as the transistors switch, before anything can move.',
  'motor-end': 'It trips before anything can move. A longer cable slows the current a little.',
  winding: 'What is left of the winding slows the current, and it still trips before the axis has moved.',
  load: 'The axis has long been moving or trying to. Message and record may be the same as with a short.',
};

export const figure: SimulatedFigure<TripCurrent> = {
  id: 'trip-current',
  title: 'The current of a trip, with a short and with a stuck slide',
  caption:
    'Choose what drives the current. A short reaches the trip level in millionths of a second, a load in tenths.',
  model: `bus, cable and winding of the practice with typical inductances; an invented drive that trips at ${drive.tripAmperes} A and is off ${duration(drive.offSeconds)} later, and lets ${drive.mostAmperes} A through until then. Under load the control asks for more current step by step.`,
  controls: [
    { id: 'cause', label: 'Cause', stops: causes.map(([, name]) => name), start: 1, as: 'choice' },
    {
      id: 'cable',
      label: 'Length of the cable',
      stops: lengths.map((metres) => `${metres} m`),
      start: 3,
      as: 'slider',
    },
  ],
  compute: ([cause = 0, length = 0]) => tripCurrent(causes[cause]?.[0] ?? 'terminals', lengths[length] ?? 2),
  values: ({ toTrip, peak }) => [
    ['Trip level reached after', duration(toTrip)],
    ['Current when it is off', `${peak.toFixed(0)} A`],
  ],
  says: ({ cause }) => sentences[cause],
  Drawing: CurrentDrawing,
  height: 400,
  rows: [
    [0, 3],
    [1, 0],
    [1, 3],
    [1, 5],
    [2, 3],
    [3, 3],
  ],
};
