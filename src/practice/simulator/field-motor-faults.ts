import { phases } from '../../kernel/electrics/phases.ts';
import { dead, noFault, open } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

const ofWinding = phases.flatMap((phase): Fault[] => {
  const of = { ...noFault, cause: 'winding-insulation' as const, bad: ['motor'] as Fault['bad'] };
  const circuit = 'motor' as const;
  return [
    {
      ...of,
      id: `hot-${phase}`,
      label: `winding ${phase} to frame only when hot`,
      leaks: [{ a: `motor.mid.${phase}`, b: 'motor.frame', ohms: dead, condition: 'hot' }],
      circuit,
      moments: ['when-hot', 'when-hot', 'on-acceleration'],
    },
    {
      ...of,
      id: `pulse-${phase}`,
      label: `winding ${phase} fails only at pulse voltage`,
      cause: 'winding-turns',
      circuit,
      moments: ['on-enable', 'on-acceleration', 'when-hot'],
      hidden: 'surge-test',
    },
    {
      ...of,
      id: `winding-sensor-${phase}`,
      label: `winding ${phase} to its temperature sensor`,
      leaks: [{ a: `motor.mid.${phase}`, b: 'motor.sensor+', ohms: dead }],
      circuit,
      moments: ['on-enable', 'on-acceleration', 'when-hot'],
    },
  ];
});

export const fieldMotorFaults: readonly Fault[] = [
  ...ofWinding,
  {
    ...noFault,
    id: 'weak-magnets',
    label: 'rotor weakened',
    cause: 'magnets',
    bad: ['motor'],
    circuit: 'motor',
    moments: ['on-acceleration', 'on-acceleration', 'when-hot'],
    every: 0.8,
    hidden: 'surge-test',
  },
  {
    ...noFault,
    id: 'feedback-cable-intermittent',
    label: 'feedback cable opens where it bends',
    cause: 'feedback-signal',
    bad: ['feedback-cable'],
    contacts: [{ core: 'feedback+', place: 'in-cable', ohms: open, condition: 'bent' }],
    circuit: 'position',
    moments: ['on-acceleration', 'position-or-cable', 'now-and-then', 'now-and-then'],
    every: 0.6,
    hidden: 'watch',
  },
  // Cleaned and plugged firmly; nothing is replaced.
  {
    ...noFault,
    id: 'feedback-plug-intermittent',
    label: 'feedback plug with intermittent contact',
    cause: 'feedback-signal',
    bad: [],
    circuit: 'position',
    moments: ['on-acceleration', 'position-or-cable', 'now-and-then', 'now-and-then'],
    every: 0.6,
    hidden: 'watch',
  },
];
