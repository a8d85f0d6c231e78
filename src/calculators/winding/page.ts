import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges whether the three windings of a motor are alike, from the resistances between its terminals. It finds open windings and large differences, names the winding that is suspect, and says when the meter or its leads are too coarse to tell.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out, bus dead, motor leads off, winding discharged, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The motor leads are off U, V and W at the drive, or the motor connector is open.',
    'The winding was discharged after the insulation test.',
    'A hanging axis is supported or pinned: its motor no longer holds it.',
  ],
  otherWords: [
    'open winding',
    'open phase',
    'shorted turns',
    'phase to phase',
    'line to line',
    'coil resistance',
    'milliohm',
    'micro-ohm',
    'unbalance',
    'imbalance',
    'broken core',
    'stator',
    'four-wire',
    'kelvin clips',
    'star delta',
    'copper temperature correction',
    'lead resistance',
  ],
  related: ['measuring/winding-resistance', 'measuring/insulation-testing', 'safety/safe-measurement'],
};
