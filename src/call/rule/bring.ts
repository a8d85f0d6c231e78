import type { Cause } from '../../kernel/vocabulary.ts';
import { everyCause } from '../../visit/guide/causes.ts';
import type { CallFacts } from './facts.ts';

export const groups = ['instruments', 'leads', 'protection', 'axis', 'spares'] as const;
export type Group = (typeof groups)[number];

export type Thing = keyof typeof things;

interface Needed {
  group: Group;
  /** Needed if one of these is among the suspects shown; absent: always. */
  for?: readonly Cause[];
  /** Needed as well if something of the call says so. */
  if?: (facts: CallFacts) => boolean;
}

const drive = ['output-stage', 'drive-control', 'current-sensor'] as const;

/** What a visit needs, and what its suspects need besides. Common practice, no source. */
export const things = {
  multimeter: { group: 'instruments' },
  'proving-unit': { group: 'instruments' },
  'insulation-tester': { group: 'instruments' },
  'milliohm-meter': { group: 'instruments' },
  thermometer: { group: 'instruments' },
  'thermal-camera': { group: 'instruments', for: ['drive-cooling', 'load', 'contact'] },
  'current-recorder': { group: 'instruments', for: [...drive, 'load', 'brake', 'tuning', 'supply'] },
  'supply-recorder': { group: 'instruments', for: ['supply'] },
  'inductance-meter': { group: 'instruments', for: ['winding-turns'] },
  'surge-tester': { group: 'instruments', for: ['winding-insulation', 'winding-turns'] },
  laptop: {
    group: 'instruments',
    for: ['tuning', 'commutation', 'feedback-signal', 'current-sensor', 'drive-control', 'supply', 'load'],
  },
  leads: { group: 'leads' },
  'meter-fuses': { group: 'leads' },
  'leads-for-bridging': { group: 'leads' },
  caps: { group: 'leads' },
  'long-lead': { group: 'leads', for: ['protective-conductor', 'moving-cable', 'cable-insulation'] },
  drying: { group: 'leads', for: ['moisture'] },
  lockout: { group: 'protection' },
  'arc-and-shock': { group: 'protection' },
  'heat-gloves': { group: 'protection', for: ['braking-circuit'], if: ({ moment }) => moment === 'when-hot' },
  'wrist-strap': { group: 'protection' },
  height: { group: 'protection', if: ({ high }) => high === 'yes' },
  prop: { group: 'axis', if: ({ canFall }) => canFall !== 'no' },
  marks: { group: 'axis' },
  drive: { group: 'spares', for: drive },
  'motor-cable': { group: 'spares', for: ['cable-insulation', 'moving-cable', 'idle-core', 'protective-conductor'] },
  motor: { group: 'spares', for: ['winding-insulation', 'winding-turns', 'magnets'] },
  'feedback-cable': { group: 'spares', for: ['feedback-supply', 'feedback-signal'] },
  connectors: { group: 'spares', for: ['contact', 'moisture'] },
  'braking-resistor': { group: 'spares', for: ['braking-circuit'] },
  'fan-and-filter': { group: 'spares', for: ['drive-cooling'] },
  brake: { group: 'spares', for: ['brake'] },
  screens: { group: 'spares', for: ['interference'] },
} as const satisfies Record<string, Needed>;

/**
 * What to bring for these suspects, in the order of the list above. Without the moment every family is looked for, so
 * every instrument is needed; spare parts go by what the call points at.
 */
export function thingsToBring(facts: CallFacts, shown: readonly Cause[]): Thing[] {
  const needed = ({ group, for: causes, if: said }: Needed) => {
    const looked = facts.moment === undefined && group !== 'spares' ? everyCause : shown;
    const always = causes === undefined && said === undefined;
    return always || causes?.some((cause) => looked.includes(cause)) === true || said?.(facts) === true;
  };
  return (Object.keys(things) as Thing[]).filter((thing) => needed(things[thing]));
}
