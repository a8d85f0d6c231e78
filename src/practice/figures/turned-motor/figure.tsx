import { limitValue } from '../../../kernel/limits.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { MotorDrawing } from './MotorDrawing.tsx';
import { type Leads, type Turned, turnedMotor } from './model.ts';

const leads: readonly [Leads, string][] = [
  ['on', 'on the drive'],
  ['off', 'off the drive'],
];
const speeds = [0, 5, 10, 30, 60, 120, 200, 300, 500, 750, 1000];
const constants = [60, 100, 150];
const touch = limitValue('touch-voltage');
const falsifies = limitValue('resistance-residual-voltage');
const volts = (value: number) => `${value.toFixed(value < 10 ? 2 : 0)} V`;

export const figure: SimulatedFigure<Turned> = {
  id: 'turned-motor',
  title: 'A motor turned by hand charges the bus of its locked-out drive',
  caption:
    'Turn the motor. A hand on a coupling makes some volts, which spoil a reading. A slide that is pushed fast or falls makes a bus that is live.',
  model:
    'bus and diodes of the practice, and a motor with permanent magnets whose voltage grows with its speed, turned until the bus rises no further; the valleys between the phases are left out.',
  controls: [
    {
      id: 'speed',
      label: 'Speed of the motor',
      stops: speeds.map((speed) => `${speed} min⁻¹`),
      start: 5,
      as: 'slider',
    },
    { id: 'leads', label: 'Motor leads', stops: leads.map(([, name]) => name), start: 0, as: 'choice' },
    {
      id: 'constant',
      label: 'Voltage of the motor at 1000 min⁻¹',
      stops: constants.map((value) => `${value} V`),
      start: 1,
      as: 'choice',
    },
  ],
  compute: ([speed = 0, place = 0, constant = 1]) =>
    turnedMotor(leads[place]?.[0] ?? 'on', speeds[speed] ?? 0, constants[constant] ?? 100),
  values: ({ lineVolts, peakVolts, busVolts, joules }) => [
    ['U–V at the motor', `${volts(lineVolts)} AC`],
    ['Its peak', volts(peakVolts)],
    ['DC+ to DC−', volts(busVolts)],
    ['Energy in the bus', joules < 0.01 ? 'below 0.01 J' : `${joules.toFixed(2)} J`],
  ],
  says: ({ leads: where, peakVolts, busVolts }) => {
    const ends = peakVolts >= touch ? ` The open ends of the motor are live: ${touch} V or more.` : '';
    if (where === 'off') return `With the leads off the bus stays empty.${ends}`;
    if (busVolts >= touch) return `The bus is live although every supply is locked out: ${touch} V or more.`;
    if (busVolts > falsifies) return `The bus has more than ${falsifies} V: a resistance reading is falsified.`;
    return 'The bus stays empty.';
  },
  Drawing: MotorDrawing,
  height: 300,
  rows: [0, 2, 5, 8, 10].flatMap((speed) => [0, 1].map((place) => [speed, place, 1])),
};
