import { phases } from '../../kernel/electrics/phases.ts';
import type { Cause } from '../../kernel/vocabulary.ts';
import { dead, hidingFromMultimeter, noFault, phasePairs, underLoad } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

export const motorFaults: readonly Fault[] = [
  ...phases.flatMap((phase): Fault[] => {
    const of = {
      ...noFault,
      cause: 'winding-insulation' as Cause,
      bad: ['motor'] as Fault['bad'],
      circuit: 'motor' as const,
      moments: underLoad,
    };
    const between = { a: `motor.mid.${phase}`, b: 'motor.frame' };
    return [
      {
        ...of,
        id: `frame-${phase}`,
        label: `winding ${phase} to frame, dead`,
        leaks: [{ ...between, ohms: dead }],
        seen: [{ part: 'motor', damage: 'burnt', chance: 0.2 }],
      },
      {
        ...of,
        id: `frame-${phase}-high`,
        label: `winding ${phase} to frame, megohms`,
        leaks: [{ ...between, ohms: hidingFromMultimeter }],
      },
      {
        ...of,
        id: `turns-${phase}-many`,
        cause: 'winding-turns',
        label: `winding ${phase}, many turns shorted`,
        shortedShare: { [phase]: [0.4, 0.8] },
      },
      {
        ...of,
        id: `turns-${phase}-some`,
        cause: 'winding-turns',
        label: `winding ${phase}, some turns shorted`,
        shortedShare: { [phase]: [0.09, 0.13] },
        hidden: 'surge-test',
      },
      {
        ...of,
        id: `turns-${phase}-few`,
        cause: 'winding-turns',
        label: `winding ${phase}, a few turns shorted`,
        shortedShare: { [phase]: [0.005, 0.025] },
        hidden: 'surge-test',
      },
    ];
  }),
  ...phasePairs.flatMap(([one, other]): Fault[] => {
    const of = {
      ...noFault,
      cause: 'winding-insulation' as Cause,
      bad: ['motor'] as Fault['bad'],
      circuit: 'motor' as const,
      moments: underLoad,
    };
    const between = { a: `motor.mid.${one}`, b: `motor.mid.${other}` };
    return [
      {
        ...of,
        id: `phase-${one}-${other}`,
        label: `winding ${one} to winding ${other}, dead`,
        leaks: [{ ...between, ohms: [0.01, 0.2] }],
      },
      {
        ...of,
        id: `phase-${one}-${other}-high`,
        label: `winding ${one} to winding ${other}, kilohms to megohms`,
        leaks: [{ ...between, ohms: [1e3, 20e6] }],
        hidden: 'phase-to-phase-test',
      },
    ];
  }),
  {
    ...noFault,
    id: 'motor-wet',
    cause: 'moisture',
    label: 'motor uniformly wet',
    bad: ['motor'],
    insulationFactor: [1e-4, 5e-4],
    circuit: 'motor',
    moments: underLoad,
    seen: [{ part: 'motor', damage: 'wet', chance: 0.3 }],
  },
  // Water bridges the mated pins; unplugged, each side is dry enough to pass. It is dried, and nothing is replaced.
  {
    ...noFault,
    id: 'connector-wet',
    cause: 'moisture',
    label: 'motor connector wet while plugged',
    bad: [],
    leaks: phases.map((phase) => ({ a: `mated.${phase}`, b: 'motor.frame', ohms: [1e6, 20e6] })),
    circuit: 'motor',
    moments: ['on-enable', 'on-acceleration', 'now-and-then'],
    seen: [{ part: 'motor', damage: 'wet', chance: 0.3 }],
    hidden: 'dry-and-repeat',
  },
];
