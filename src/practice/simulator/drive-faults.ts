import { phases } from '../../kernel/electrics/phases.ts';
import { atEnable, atOnce, carbon, metal, noFault, underLoad } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

const switches = (['DC+', 'DC-'] as const).flatMap((rail) =>
  phases.flatMap((phase): Fault[] => {
    const name = `${rail === 'DC+' ? 'upper' : 'lower'} transistor ${phase}`;
    const id = `${rail === 'DC+' ? 'upper' : 'lower'}-${phase}`;
    const between = { a: rail, b: `drive.${phase}` };
    return [
      {
        ...noFault,
        id: `short-${id}`,
        label: `${name} shorted`,
        cause: 'output-stage',
        bad: ['drive'],
        leaks: [{ ...between, ohms: metal }],
        moments: atEnable,
        seen: [{ part: 'drive', damage: 'burnt', chance: 0.2 }],
      },
      {
        ...noFault,
        id: `leaky-${id}`,
        label: `${name} leaky`,
        cause: 'output-stage',
        bad: ['drive'],
        leaks: [{ ...between, ohms: carbon }],
        moments: underLoad,
      },
    ];
  }),
);

const gateDrive: Fault[] = [
  {
    ...noFault,
    id: 'gate-drive-at-once',
    label: 'gate drive or control of the drive, trips at once',
    cause: 'drive-control',
    bad: ['drive'],
    moments: atOnce,
  },
  {
    ...noFault,
    id: 'gate-drive-under-load',
    label: 'gate drive or control of the drive, trips under load',
    cause: 'drive-control',
    bad: ['drive'],
    circuit: 'motor',
    moments: ['on-acceleration', 'when-hot'],
    hidden: 'drive-load-test',
  },
  {
    ...noFault,
    id: 'gate-drive-now-and-then',
    label: 'gate drive or control of the drive, now and then',
    cause: 'drive-control',
    bad: ['drive'],
    moments: ['now-and-then'],
    every: 0.3,
    hidden: 'watch',
  },
];

export const driveFaults: readonly Fault[] = [...switches, ...gateDrive];
