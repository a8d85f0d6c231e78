import { phases } from '../../kernel/electrics/phases.ts';
import type { Symptom } from '../../kernel/vocabulary.ts';
import { dead, hidingFromMultimeter, noFault, phasePairs } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

const cause = 'cable-insulation' as const;
const ofCable: Symptom[] = ['on-enable', 'on-acceleration', 'position-or-cable'];

const coreToGround: Fault[] = phases.flatMap((phase): Fault[] =>
  (
    [
      ['ground', 'ground', 'the machine frame'],
      ['PE', 'cable.PE', 'its PE core'],
      ['screen', 'cable.screen', 'its screen'],
    ] as const
  ).flatMap(([id, node, name]): Fault[] => {
    const of = {
      ...noFault,
      cause,
      bad: ['motor-cable'] as Fault['bad'],
      circuit: 'motor-cable' as const,
      moments: ofCable,
    };
    const between = { a: `cable.${phase}`, b: node };
    return [
      {
        ...of,
        id: `core-${phase}-${id}`,
        label: `core ${phase} to ${name}, dead`,
        leaks: [{ ...between, ohms: dead }],
        seen: [{ part: 'motorCable', damage: 'chafed', chance: 0.3 }],
      },
      {
        ...of,
        id: `core-${phase}-${id}-high`,
        label: `core ${phase} to ${name}, megohms`,
        leaks: [{ ...between, ohms: hidingFromMultimeter }],
      },
    ];
  }),
);

const coreToCore: Fault[] = phasePairs.flatMap(([one, other]): Fault[] => {
  const of = { ...noFault, cause, bad: ['motor-cable'] as Fault['bad'], circuit: 'motor-cable' as const };
  const between = { a: `cable.${one}`, b: `cable.${other}` };
  return [
    {
      ...of,
      id: `core-${one}-${other}`,
      label: `core ${one} to core ${other}, dead`,
      leaks: [{ ...between, ohms: [0.05, 1] }],
      moments: ofCable,
    },
    {
      ...of,
      id: `core-${one}-${other}-high`,
      label: `core ${one} to core ${other}, kilohms to megohms`,
      leaks: [{ ...between, ohms: [1e3, 20e6] }],
      moments: ofCable,
    },
  ];
});

const brokenPe: Fault = {
  ...noFault,
  id: 'pe-broken',
  label: 'PE core of the motor cable broken',
  cause: 'protective-conductor',
  bad: ['protective-conductor'],
  broken: ['cable.PE'],
  circuit: 'motor-cable',
  moments: ['on-enable', 'on-acceleration', 'position-or-cable', 'now-and-then'],
};

export const cableFaults: readonly Fault[] = [...coreToGround, ...coreToCore, brokenPe];
