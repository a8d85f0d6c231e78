import { phases } from '../../kernel/electrics/phases.ts';
import type { Part } from '../../kernel/vocabulary.ts';
import { badContact, dead, metal, noFault, open } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

/** What makes a cable or a connector trip the drive in the field, beside the constant leaks of cable-faults.ts. */

const ofCable = { ...noFault, bad: ['motor-cable'] as Part[], circuit: 'motor-cable' as const };

/** A leak or a broken core that is there only where the cable bends. */
const moving: Fault[] = phases.flatMap((phase): Fault[] => [
  {
    ...ofCable,
    id: `bent-leak-${phase}`,
    label: `core ${phase} leaks to PE only when the cable is bent`,
    cause: 'moving-cable',
    leaks: [{ a: `cable.${phase}`, b: 'cable.PE', ohms: dead, condition: 'bent' }],
    moments: ['position-or-cable', 'position-or-cable', 'on-acceleration', 'now-and-then'],
    every: 0.4,
    seen: [{ part: 'motorCable', damage: 'chafed', chance: 0.15 }],
    hidden: 'watch',
  },
  {
    ...ofCable,
    id: `bent-open-${phase}`,
    label: `core ${phase} opens only when the cable is bent`,
    cause: 'moving-cable',
    contacts: [{ core: phase, place: 'in-cable', ohms: open, condition: 'bent' }],
    circuit: 'motor',
    moments: ['position-or-cable', 'position-or-cable', 'on-acceleration', 'now-and-then'],
    every: 0.6,
    hidden: 'watch',
  },
]);

const contacts: Fault[] = phases.flatMap((phase): Fault[] => [
  {
    ...ofCable,
    id: `contact-cable-half-${phase}`,
    label: `bad crimp of core ${phase} in the cable’s half of the connector`,
    cause: 'contact',
    contacts: [{ core: phase, place: 'cable-half', ohms: badContact }],
    circuit: 'motor',
    moments: ['on-acceleration', 'when-hot', 'now-and-then'],
    every: 0.9,
  },
  // The joint is cleaned or its pins are exchanged: neither cable nor motor is bad.
  {
    ...noFault,
    id: `contact-mated-${phase}`,
    label: `bad contact between the mated pins ${phase}`,
    cause: 'contact',
    bad: [],
    contacts: [{ core: phase, place: 'mated', ohms: badContact }],
    circuit: 'motor',
    moments: ['on-acceleration', 'when-hot', 'now-and-then'],
    every: 0.9,
    hidden: 'watch',
  },
  {
    ...ofCable,
    id: `core-broken-${phase}`,
    label: `core ${phase} broken for good`,
    cause: 'moving-cable',
    broken: [`cable.${phase}`],
    circuit: 'motor',
    moments: ['on-enable', 'on-acceleration', 'position-or-cable'],
  },
]);

const onlyAtVoltage: Fault[] = phases.map((phase) => ({
  ...ofCable,
  id: `above-200-volts-${phase}`,
  label: `core ${phase} leaks to ground only above 200 V`,
  cause: 'cable-insulation',
  leaks: [{ a: `cable.${phase}`, b: 'ground', ohms: dead, condition: 'above-200V' }],
  moments: ['on-enable', 'on-acceleration', 'position-or-cable'],
}));

/** Drives that test their output for an earth fault when they get power trip with the control off. */
const earthTest: Fault[] = [
  ...phases.map(
    (phase): Fault => ({
      ...ofCable,
      id: `earth-test-cable-${phase}`,
      label: `earth-fault test at power on meets core ${phase} to ground`,
      cause: 'cable-insulation',
      leaks: [{ a: `cable.${phase}`, b: 'ground', ohms: dead }],
      moments: ['control-off'],
    }),
  ),
  ...phases.map(
    (phase): Fault => ({
      ...noFault,
      id: `earth-test-motor-${phase}`,
      label: `earth-fault test at power on meets winding ${phase} to frame`,
      cause: 'winding-insulation',
      bad: ['motor'],
      leaks: [{ a: `motor.mid.${phase}`, b: 'motor.frame', ohms: dead }],
      circuit: 'motor',
      moments: ['control-off'],
    }),
  ),
];

const idleCores: Fault[] = [
  {
    ...ofCable,
    id: 'brake-cores-shorted',
    label: 'brake cores shorted: the brake output trips',
    cause: 'idle-core',
    leaks: [{ a: 'cable.brake+', b: 'cable.brake-', ohms: metal }],
    circuit: 'idle-cores',
    moments: ['on-enable'],
  },
  ...phases.flatMap((phase): Fault[] =>
    (['brake', 'sensor'] as const).map((pair) => ({
      ...ofCable,
      id: `core-${phase}-${pair}`,
      label: `core ${phase} to ${pair} core`,
      cause: 'idle-core',
      leaks: [{ a: `cable.${phase}`, b: `cable.${pair}+`, ohms: dead }],
      moments: ['on-enable', 'on-acceleration'],
    })),
  ),
];

/** Not a part that a decision names: it is taken off, and the axis is tried without it. */
const filter: Fault = {
  ...noFault,
  id: 'output-filter',
  label: 'output filter or choke bad',
  cause: 'output-filter',
  bad: [],
  circuit: 'motor-cable',
  moments: ['on-enable', 'on-acceleration'],
  hidden: 'watch',
};

export const fieldCableFaults: readonly Fault[] = [
  ...moving,
  ...contacts,
  ...onlyAtVoltage,
  ...earthTest,
  ...idleCores,
  filter,
];
