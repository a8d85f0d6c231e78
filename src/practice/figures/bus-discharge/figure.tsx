import { limitValue } from '../../../kernel/limits.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { type BusAt, DischargeDrawing } from './DischargeDrawing.tsx';
import { discharge, type Halves, type Resistors } from './model.ts';

const resistors: readonly [Resistors, string][] = [
  ['whole', 'both whole'],
  ['lower-open', 'lower one open'],
  ['upper-open', 'upper one open'],
];
/** Every half minute for ten minutes. */
const times = Array.from({ length: 21 }, (_, half) => half * 30);
const touch = limitValue('touch-voltage');
/** Only the resistors change the course, so the slider does not compute it again. */
const courses = new Map<Resistors, readonly Halves[]>();
const rounded = (volts: number) => `${volts.toFixed(volts < 10 ? 1 : 0)} V`;

export const figure: SimulatedFigure<BusAt> = {
  id: 'bus-discharge',
  title: 'The bus voltage after switch-off, with its two capacitors in series',
  caption:
    'Open one balancing resistor, then let the time run. The whole bus stops at about half, and one capacitor keeps all that is left.',
  model:
    'a bus of the practice with two capacitors in series and a balancing resistor across each; invented values, no leakage and no consumer on the bus.',
  controls: [
    { id: 'resistors', label: 'Balancing resistors', stops: resistors.map(([, name]) => name), start: 1, as: 'choice' },
    {
      id: 'time',
      label: 'Time since switch-off',
      stops: times.map((seconds) => `${seconds / 60} min`),
      start: 10,
      as: 'slider',
    },
  ],
  compute: ([kind = 0, place = 0]) => {
    const course = courseOf(resistors[kind]?.[0] ?? 'whole');
    return { course, now: course[place] ?? { seconds: 0, upper: 0, lower: 0 } };
  },
  values: ({ now: { upper, lower } }) => [
    ['DC+ to DC−', rounded(upper + lower)],
    ['upper capacitor', rounded(upper)],
    ['lower capacitor', rounded(lower)],
  ],
  says: ({ now }) => sentence(now.upper + now.lower, Math.max(now.upper, now.lower)),
  Drawing: DischargeDrawing,
  height: 470,
  rows: [0, 1].flatMap((kind) => [0, 4, 10, 20].map((time) => [kind, time])),
};

function sentence(bus: number, higher: number): string {
  if (bus >= touch) return `The bus is live: ${touch} V or more. Cover shut, and wait.`;
  if (higher >= touch) return `The bus reads below ${touch} V, but one capacitor alone is live.`;
  return `Below ${touch} V. Measure it; the time alone proves nothing.`;
}

function courseOf(kind: Resistors): readonly Halves[] {
  const course = courses.get(kind) ?? discharge(kind, times);
  courses.set(kind, course);
  return course;
}
