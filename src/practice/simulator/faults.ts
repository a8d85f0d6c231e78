import { type Phase, phases } from '../../kernel/electrics/phases.ts';
import type { Symptom } from '../../kernel/vocabulary.ts';
import type { Fault } from './fault-types.ts';

/*
 * Every fault that the simulator knows. All figures are typical, project judgement: a metal short is well below an ohm to
 * a few ohms, a burnt switch some kilohms, a wet or carbonised path kilohms to tens of megohms.
 */
const metal: [number, number] = [0.05, 3];
const carbon: [number, number] = [2e3, 30e3];
/** A dead short by insulation tester and multimeter alike. */
const dead: [number, number] = [1, 50e3];
/** What a multimeter passes or shows as a harmless figure, and an insulation tester does not. */
const hidingFromMultimeter: [number, number] = [1e6, 40e6];

const none = {
  leaks: [],
  broken: [],
  shortedShare: {},
  insulationFactor: [1, 1] as [number, number],
  circuit: 'drive' as const,
  repeats: 1,
  seen: [],
} satisfies Partial<Fault>;

const atOnce: Symptom[] = ['control-off', 'on-enable'];
const underLoad: Symptom[] = ['on-enable', 'on-acceleration', 'when-hot'];
const ofCable: Symptom[] = ['on-enable', 'on-acceleration', 'position-or-cable'];

const pairs: [Phase, Phase][] = [
  ['U', 'V'],
  ['V', 'W'],
  ['W', 'U'],
];

const switches = (['DC+', 'DC-'] as const).flatMap((rail) =>
  phases.flatMap((phase): Fault[] => {
    const name = `${rail === 'DC+' ? 'upper' : 'lower'} switch ${phase}`;
    const id = `${rail === 'DC+' ? 'upper' : 'lower'}-${phase}`;
    const between = { a: rail, b: `drive.${phase}` };
    return [
      {
        ...none,
        id: `short-${id}`,
        label: `${name} shorted`,
        bad: ['drive'],
        leaks: [{ ...between, ohms: metal }],
        moments: atOnce,
        seen: [{ part: 'drive', damage: 'burnt', chance: 0.2 }],
      },
      {
        ...none,
        id: `leaky-${id}`,
        label: `${name} leaky`,
        bad: ['drive'],
        leaks: [{ ...between, ohms: carbon }],
        moments: underLoad,
      },
    ];
  }),
);

const driveWithoutTrace: Fault[] = [
  {
    ...none,
    id: 'gate-drive-at-once',
    label: 'gate drive or control of the drive, trips at once',
    bad: ['drive'],
    moments: atOnce,
  },
  {
    ...none,
    id: 'gate-drive-under-load',
    label: 'gate drive or control of the drive, trips under load',
    bad: ['drive'],
    circuit: 'motor',
    moments: ['on-acceleration', 'when-hot'],
    hidden: 'drive-load-test',
  },
];

const driveNowAndThen: Fault = {
  ...none,
  id: 'gate-drive-now-and-then',
  label: 'gate drive or control of the drive, now and then',
  bad: ['drive'],
  moments: ['now-and-then'],
  repeats: 0.3,
  hidden: 'watch',
};

const feedback: Fault[] = [
  {
    ...none,
    id: 'feedback-cable-short',
    label: 'feedback cable shorted',
    bad: ['feedback-cable'],
    leaks: [{ a: 'feedback.cable.plus', b: 'feedback.cable.minus', ohms: metal }],
    circuit: 'feedback-cable',
    moments: ['control-off'],
    seen: [{ part: 'feedbackCable', damage: 'chafed', chance: 0.2 }],
  },
  {
    ...none,
    id: 'feedback-device',
    label: 'feedback device draws too much',
    bad: ['feedback-device'],
    leaks: [{ a: 'feedback.device.plus', b: 'feedback.device.minus', ohms: metal }],
    circuit: 'feedback-device',
    moments: ['control-off'],
  },
];

/** The plug is seated anew when it is unplugged and plugged: the trip does not come back, and nothing is to be replaced. */
const feedbackContact: Fault = {
  ...none,
  id: 'feedback-contact',
  label: 'feedback contact, mended by plugging it anew',
  bad: [],
  circuit: 'feedback-device',
  repeats: 0,
  moments: ['control-off'],
  hidden: 'watch',
};

const cable: Fault[] = phases.flatMap((phase): Fault[] =>
  (
    [
      ['ground', 'ground', 'the machine frame'],
      ['PE', 'cable.PE', 'its PE core'],
      ['screen', 'cable.screen', 'its screen'],
    ] as const
  ).flatMap(([id, node, name]): Fault[] => {
    const of = { ...none, bad: ['motor-cable'] as Fault['bad'], circuit: 'motor-cable' as const, moments: ofCable };
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

const coreToCore: Fault[] = pairs.flatMap(([one, other]): Fault[] => {
  const of = { ...none, bad: ['motor-cable'] as Fault['bad'], circuit: 'motor-cable' as const };
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

const protective: Fault[] = [
  {
    ...none,
    id: 'pe-broken',
    label: 'PE core of the motor cable broken',
    bad: ['protective-conductor'],
    broken: ['cable.PE'],
    circuit: 'motor-cable',
    moments: ['on-enable', 'on-acceleration', 'position-or-cable', 'now-and-then'],
  },
];

const motor: Fault[] = [
  ...phases.flatMap((phase): Fault[] => {
    const of = { ...none, bad: ['motor'] as Fault['bad'], circuit: 'motor' as const, moments: underLoad };
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
        label: `winding ${phase}, many turns shorted`,
        shortedShare: { [phase]: [0.4, 0.8] },
      },
      {
        ...of,
        id: `turns-${phase}-some`,
        label: `winding ${phase}, some turns shorted`,
        shortedShare: { [phase]: [0.09, 0.13] },
        hidden: 'surge-test',
      },
      {
        ...of,
        id: `turns-${phase}-few`,
        label: `winding ${phase}, a few turns shorted`,
        shortedShare: { [phase]: [0.005, 0.025] },
        hidden: 'surge-test',
      },
    ];
  }),
  ...pairs.flatMap(([one, other]): Fault[] => {
    const of = { ...none, bad: ['motor'] as Fault['bad'], circuit: 'motor' as const, moments: underLoad };
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
    ...none,
    id: 'motor-wet',
    label: 'motor uniformly wet',
    bad: ['motor'],
    insulationFactor: [1e-4, 5e-4],
    circuit: 'motor',
    moments: underLoad,
    seen: [{ part: 'motor', damage: 'wet', chance: 0.3 }],
  },
];

/** The water bridges the mated pins; unplugged, each side is dry enough to pass. It is dried, and nothing is replaced. */
const connector: Fault[] = [
  {
    ...none,
    id: 'connector-wet',
    label: 'motor connector wet while plugged',
    bad: [],
    leaks: phases.map((phase) => ({ a: `mated.${phase}`, b: 'motor.frame', ohms: [1e6, 20e6] })),
    circuit: 'motor',
    moments: ['on-enable', 'on-acceleration', 'now-and-then'],
    seen: [{ part: 'motor', damage: 'wet', chance: 0.3 }],
    hidden: 'dry-and-repeat',
  },
];

/** Nothing is bad: interference, a dip of the supply, one bump of the machine. It does not come again when tried. */
const nuisance: Fault[] = [
  {
    ...none,
    id: 'nuisance',
    label: 'healthy axis, one nuisance trip',
    bad: [],
    moments: ['on-enable', 'on-acceleration', 'position-or-cable', 'when-hot', 'now-and-then'],
    repeats: 0,
    hidden: 'watch',
  },
];

export const singleFaults: readonly Fault[] = [
  ...switches,
  ...driveWithoutTrace,
  driveNowAndThen,
  ...feedback,
  feedbackContact,
  ...cable,
  ...coreToCore,
  ...protective,
  ...motor,
  ...connector,
  ...nuisance,
];

/** Faults that come together, by the ids of their parts. The first one sets the moment of the trip. */
export const combinations: readonly { id: string; label: string; of: string[] }[] = [
  { id: 'motor-took-cable', label: 'motor took its cable', of: ['frame-U', 'core-V-PE'] },
  { id: 'motor-took-cable-inside', label: 'motor took its cable, core to core', of: ['frame-V', 'core-U-V'] },
  { id: 'motor-and-cable-high', label: 'motor and cable, both in megohms', of: ['frame-W-high', 'core-U-screen-high'] },
  { id: 'motor-took-drive', label: 'motor took the drive', of: ['short-lower-U', 'frame-U'] },
  { id: 'turns-took-drive', label: 'shorted turns took the drive', of: ['short-upper-V', 'turns-V-many'] },
  { id: 'wet-motor-took-drive', label: 'wet motor took the drive', of: ['leaky-lower-W', 'motor-wet'] },
  { id: 'cable-took-drive', label: 'cable took the drive', of: ['short-upper-W', 'core-W-ground'] },
  { id: 'all-three', label: 'motor, cable and drive', of: ['short-lower-V', 'frame-V', 'core-V-screen'] },
  { id: 'all-three-high', label: 'all three, megohms', of: ['leaky-upper-U', 'frame-U-high', 'core-W-PE-high'] },
  { id: 'pe-and-frame', label: 'PE broken and winding to frame', of: ['frame-W', 'pe-broken'] },
  { id: 'pe-and-core', label: 'PE broken and core to ground', of: ['core-U-ground', 'pe-broken'] },
];
