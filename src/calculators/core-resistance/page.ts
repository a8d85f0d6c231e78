import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Tells what PE, one core, or two cores in series of a cable should read by length and cross-section, and judges the reading: expected, too much, or less than the copper can have.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out, bus dead, the core off at one end at least, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'PE, or the core, is off at one end at least, the screen too, so that the current has no other way.',
    'PE goes back on first, and is measured again, before anything gets power.',
    'A hanging axis is supported or pinned: its motor no longer holds it.',
  ],
  otherWords: [
    'PE continuity',
    'protective conductor resistance',
    'earth continuity',
    'ground continuity',
    'ohms per km',
    'cable resistance',
    'core resistance',
    'milliohm per metre',
    'AWG resistance',
    'bad crimp',
    'broken strands',
    'contact resistance',
  ],
  related: ['trip/cable-and-connector-failure', 'measuring/cable-or-motor', 'measuring/winding-resistance'],
};
