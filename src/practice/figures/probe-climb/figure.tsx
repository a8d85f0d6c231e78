import type { SimulatedFigure } from '../simulated-figure.ts';
import { ClimbDrawing, type ClimbShown } from './ClimbDrawing.tsx';
import { type Held, held, type Tips } from './model.ts';

const tips: readonly [Tips, string][] = [
  ['plus-to-U', 'red DC+, black U'],
  ['U-to-minus', 'red U, black DC−'],
  ['U-to-plus', 'red U, black DC+'],
];
const times = [0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300];

/** The time only picks from a course, so the slider computes nothing again. */
const courses = new Map<Tips, readonly Held[]>();

function courseOf(kind: Tips): readonly Held[] {
  const course = courses.get(kind) ?? times.map((seconds) => held(kind, seconds));
  courses.set(kind, course);
  return course;
}

const microamperes = (amperes: number) => `${(amperes * 1e6).toFixed(2)} µA`;

export const figure: SimulatedFigure<ClimbShown> = {
  id: 'probe-climb',
  title: 'Two tips on the terminals of a drive, and the ways of the meter’s current',
  caption:
    'Put the tips on an empty bus, then hold them longer. The figure climbs while the meter charges the bus capacitor, and it counts only when it stands still.',
  model: 'the output stage and the bus of the practice, with a meter without error; nothing is bad in this drive.',
  controls: [
    { id: 'tips', label: 'Tips', stops: tips.map(([, name]) => name), start: 0, as: 'choice' },
    {
      id: 'time',
      label: 'Held for',
      stops: times.map((seconds) => (seconds < 120 ? `${seconds} s` : `${seconds / 60} min`)),
      start: 3,
      as: 'slider',
    },
  ],
  compute: ([kind = 0, place = 0]) => {
    const chosen = tips[kind]?.[0] ?? 'plus-to-U';
    const course = courseOf(chosen);
    return { tips: chosen, course, now: course[place] as Held };
  },
  values: ({ now }) => [
    ['The meter shows', now.text],
    ['Current of the meter', microamperes(now.amperes)],
    ['of it into the capacitor', microamperes(now.chargingAmperes)],
    ['Voltage on the bus', `${(now.busVolts * 1000).toFixed(1)} mV`],
  ],
  says: ({ now, course }) => {
    const last = course[course.length - 1] ?? now;
    const share = Math.round((100 * now.ohms) / last.ohms);
    const where = share < 99 ? `That is ${share} % of the figure that stays.` : 'The figure stands still.';
    return `${where} The charge stays on the bus, so the next reading begins higher.`;
  },
  Drawing: ClimbDrawing,
  height: 500,
  rows: [0, 1, 2].flatMap((kind) => [1, 4, 7, 9].map((time) => [kind, time])),
};
