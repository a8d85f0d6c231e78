import type { Machine } from '../case/machine.ts';
import type { Mode } from '../simulator/measure.ts';

export const benchTexts = {
  whichLead: 'Which lead goes next?',
  howToPlace: 'Tap a terminal: this lead goes there, and the next tap places the other.',
  lead: { red: 'Red lead (R)', black: 'Black lead (B)' },
  nowhere: 'nowhere yet',
  instrument: 'Instrument',
  range: 'Range',
  automatic: 'Automatic',
  zeroed: 'Leads shorted and zeroed first',
  testVoltage: 'Test voltage',
  discharge: 'Leads stay on after the test until it has discharged',
  measure: 'Measure',
  test: 'Test for one minute',
  judgeWith: 'Judge your readings with the calculators, each in a tab of its own:',
  placeBoth: 'Put both leads on terminals first.',
} as const;

const state = ({ state: now, tripped, lockedOut }: Machine): string[] => [
  `${now.supply ? 'supply on' : 'supply off'}${lockedOut ? ', your lock on' : ''}`,
  now.supply ? (tripped ? 'shows: overcurrent' : now.enabled ? 'shows: enabled' : 'shows: ready') : 'dark',
];

/** Words in the drawing. */
export const drawingTexts = {
  whole: (machine: Machine): string => `Drive: ${state(machine).join(', ')}`,
  display: (text: string): string => `Display of the instrument: ${text || 'no reading'}`,
  title: 'Drive, cable and motor, and the instrument below them',
  leads: 'Leads of the instrument',
  drive: 'Drive',
  motor: 'Motor',
  plugged: 'connector plugged',
  unplugged: 'connector unplugged',
  bonded: 'bonding wires on',
  cable: (metres: number): string => `Motor cable: ${metres} m`,
  knob: {
    volts: 'V DC',
    ohms: 'Ω',
    diode: 'diode',
    milliohms: 'mΩ, four leads',
    insulation: 'insulation',
  } satisfies Record<Mode, string>,
  state,
};
