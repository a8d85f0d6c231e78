import { phases } from '../../kernel/electrics/phases.ts';
import { dead, noFault } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

/** What trips a sound drive with a sound motor on sound cables: no part of this axis is replaced. */
const nothingBad = { ...noFault, bad: [], hidden: 'watch' as const };

const mechanical: Fault[] = [
  {
    ...nothingBad,
    id: 'brake-drags',
    label: 'brake drags',
    cause: 'brake',
    circuit: 'motor',
    moments: ['on-acceleration', 'on-acceleration', 'when-hot'],
    every: 0.7,
    feels: { feel: 'brake-drags', chance: 0.5 },
  },
  {
    ...nothingBad,
    id: 'brake-stays-shut',
    label: 'brake does not open',
    cause: 'brake',
    circuit: 'motor',
    moments: ['on-enable', 'on-acceleration', 'on-acceleration'],
  },
  {
    ...nothingBad,
    id: 'load',
    label: 'load, jam, bearing of the motor',
    cause: 'load',
    circuit: 'motor',
    moments: ['on-acceleration', 'on-acceleration', 'on-acceleration', 'position-or-cable', 'when-hot'],
    every: 0.75,
    feels: { feel: 'stiff', chance: 0.65 },
  },
];

const control: Fault[] = [
  {
    ...nothingBad,
    id: 'tuning',
    label: 'tuning, ramps or other parameters',
    cause: 'tuning',
    circuit: 'position',
    moments: ['on-acceleration', 'on-acceleration', 'on-braking'],
    every: 0.55,
    changed: 0.6,
  },
  {
    ...nothingBad,
    id: 'commutation',
    label: 'commutation offset or phase order after an exchange',
    cause: 'commutation',
    circuit: 'position',
    moments: ['on-enable', 'on-enable', 'on-acceleration'],
    changed: 0.9,
  },
  {
    ...nothingBad,
    id: 'supply',
    label: 'supply: dip, phase or 24 V',
    cause: 'supply',
    circuit: 'supply',
    moments: ['now-and-then', 'now-and-then', 'on-acceleration', 'on-acceleration', 'control-off'],
    every: 0.3,
  },
  {
    ...nothingBad,
    id: 'interference',
    label: 'interference, screen or earth open',
    cause: 'interference',
    circuit: 'position',
    moments: ['now-and-then', 'now-and-then', 'on-acceleration'],
    every: 0.2,
  },
];

const otherAxis: Fault[] = [
  ...phases.map(
    (phase): Fault => ({
      ...nothingBad,
      id: `other-axis-enable-${phase}`,
      label: `other axis of the drive: its winding ${phase} to frame, on enable`,
      cause: 'other-axis',
      leaks: [{ a: `neighbour.motor.${phase}`, b: 'ground', ohms: dead }],
      circuit: 'neighbour-leads',
      moments: ['on-enable'],
    }),
  ),
  {
    ...nothingBad,
    id: 'other-axis-feedback',
    label: 'other axis of the drive: its feedback, at power on',
    cause: 'other-axis',
    circuit: 'neighbour-feedback',
    moments: ['control-off'],
  },
  {
    ...nothingBad,
    id: 'other-axis-load',
    label: 'other axis of the drive or the bus, under load',
    cause: 'other-axis',
    circuit: 'neighbour-leads',
    moments: ['on-acceleration', 'when-hot'],
  },
];

export const fieldMachineFaults: readonly Fault[] = [...mechanical, ...control, ...otherAxis];
