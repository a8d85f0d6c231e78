import type { Cause } from '../../kernel/vocabulary.ts';

interface CauseText {
  /** The family, as a technician names it. */
  name: string;
  /** The measurement that tells, in a sentence. */
  tell: string;
  /** About how long it takes, in minutes; undefined for days of watching or for a shop. */
  minutes?: number;
  who: string;
}

const you = 'you';
const permitted = 'a person who is permitted to switch on';
const shop = 'a repair shop, or a trained person with the tester';
const programmer = 'a person who knows the control';

/** Minutes and persons: project judgement. */
export const causeTexts: Record<Cause, CauseText> = {
  'output-stage': {
    name: 'Output stage of the drive, at voltage or under load',
    tell: 'A meter sees only a transistor that is bad at rest. Run the drive on a dummy load or a bench motor, or record its three currents at the trip.',
    minutes: 45,
    who: permitted,
  },
  'drive-control': {
    name: 'Control board or gate driver of the drive',
    tell: 'Record the trip: it stands although the three currents look ordinary. Or run the drive on a dummy load.',
    minutes: 45,
    who: permitted,
  },
  'current-sensor': {
    name: 'Current sensor of the drive',
    tell: 'Read the drive’s own currents with the motor leads off and at rest: each must be near zero.',
    minutes: 5,
    who: permitted,
  },
  'drive-cooling': {
    name: 'Cooling, dust or moisture in the drive',
    tell: 'Look at fan, filter and heat sink, read the drive’s temperature, and use a thermal camera under load.',
    minutes: 20,
    who: permitted,
  },
  'cable-insulation': {
    name: 'Insulation of the motor cable',
    tell: 'Measure the cable alone, both ends free, and each core against the others bonded to PE.',
    minutes: 20,
    who: you,
  },
  'moving-cable': {
    name: 'A core that opens or leaks where the cable bends',
    tell: 'Bend the cable core by core with a meter that holds minimum and maximum, then test at 500 V at rest in several positions.',
    minutes: 25,
    who: 'two persons',
  },
  contact: {
    name: 'A contact in a terminal, crimp or connector',
    tell: 'Pull each wire, look at each pin, and measure across every joint with four leads.',
    minutes: 15,
    who: you,
  },
  'output-filter': {
    name: 'Output filter, choke or suppressor',
    tell: 'Take it off, and measure it alone against a sound one.',
    minutes: 15,
    who: you,
  },
  'winding-insulation': {
    name: 'Winding insulation that fails hot or at pulse voltage',
    tell: 'Measure it warm within minutes of the trip. At pulse voltage only a surge test tells.',
    minutes: 60,
    who: shop,
  },
  'winding-turns': {
    name: 'Shorted turns, or winding to winding',
    tell: 'Have a surge test made, or compare three inductances with a sound motor of the model.',
    minutes: 60,
    who: shop,
  },
  moisture: {
    name: 'Water in a connector, the motor or the drive',
    tell: 'Open the connectors, dry them, and repeat the joined insulation test.',
    minutes: 30,
    who: you,
  },
  'protective-conductor': {
    name: 'Protective conductor or screen open',
    tell: 'Measure PE and screen from end to end with 0.2 A or more, and while the cable bends.',
    minutes: 10,
    who: you,
  },
  'idle-core': {
    name: 'Brake or sensor cores that touch a phase, PE or each other',
    tell: 'Measure each idle core to all others, and the brake coil against its plate, at the drive end and at the motor.',
    minutes: 10,
    who: you,
  },
  'feedback-supply': {
    name: 'Short or overload in the feedback supply',
    tell: 'Switch on with the feedback unplugged at the drive, then at the device, control off.',
    minutes: 20,
    who: permitted,
  },
  'feedback-signal': {
    name: 'Feedback signal that drops out or jumps',
    tell: 'Watch position and signal errors in the drive while the feedback cable is bent and the plug is moved.',
    minutes: 20,
    who: permitted,
  },
  brake: {
    name: 'Holding brake that drags, stays shut, or is shorted',
    tell: 'Measure its coil against its plate, then its current and its click at the release, with the load on its support.',
    minutes: 10,
    who: permitted,
  },
  load: {
    name: 'Mechanical load, jam or bearing',
    tell: 'Compare the current over the whole way with an earlier record, and turn the axis without its load.',
    minutes: 20,
    who: permitted,
  },
  tuning: {
    name: 'Ramps, loops or limits',
    tell: 'Compare the parameters with a backup, and look whether the trip goes away with slower ramps.',
    minutes: 20,
    who: programmer,
  },
  commutation: {
    name: 'Commutation offset or phase order after an exchange',
    tell: 'Ask what was changed. Check phase order and offset as the manual says, with low limits.',
    minutes: 20,
    who: programmer,
  },
  magnets: {
    name: 'Weak magnets of the motor',
    tell: 'Turn the motor off its load and compare its voltage between the leads with its plate.',
    minutes: 15,
    who: you,
  },
  'braking-circuit': {
    name: 'Braking resistor, its lead or its transistor',
    tell: 'Measure the resistor against its plate and to its housing, dead, and the switched brake terminal to DC−.',
    minutes: 10,
    who: you,
  },
  'other-axis': {
    name: 'Another axis of the drive, or a neighbour on the bus',
    tell: 'Measure motor, cable and feedback of each other axis of this drive in the same way.',
    minutes: 60,
    who: you,
  },
  supply: {
    name: 'Dips, a missing phase, or the 24 V supply',
    tell: 'Record the supply and the 24 V under load over a day, with minimum hold.',
    who: permitted,
  },
  interference: {
    name: 'Interference through screens or earths',
    tell: 'Look at every screen clamp and earth. Write down what switches in the moment of the trip.',
    minutes: 20,
    who: you,
  },
};

/** The last words of a cause: who, and about how long. */
export function causeEffort({ minutes, who }: CauseText): string {
  return minutes === undefined ? `Takes days: ${who}.` : `About ${minutes} minutes: ${who}.`;
}

/** So many of the causes that are still possible are shown at once: a longer list is not read at the machine. */
export const causesShown = 6;

export const decisionParts = {
  suspect: 'Suspect, not proven: is not replaced',
  excluded: 'Excluded, and by which reading',
  likely: 'Still possible, the likely ones first, and what would tell',
  others: 'Also not excluded',
  good: 'Measured and good: stays',
} as const;
