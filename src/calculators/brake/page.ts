import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges a holding brake by its circuit: the coil against its plate at its temperature, its cores, the voltage that reaches it, and what it does when it is released. If it stays shut or drags, it says what explains that, or what to measure next.',
  hazards: ['hanging-axis', 'unexpected-motion', 'lethal-voltage', 'stored-energy'],
  conditions: 'axis held before the plug comes off; ohms only locked out and dead; volts only at extra-low voltage',
  preconditions: [
    'An axis that may fall stands on its support or is pinned, and nobody is below it.',
    'For every reading in ohms the supply is locked out, the DC bus was measured dead, and brake and motor leads are off the drive.',
    'The voltage is measured only on a brake for extra-low voltage, by a qualified person who is permitted to, with everybody out of reach of the axis.',
    'The brake is released by the control alone, never with a lever or a voltage of your own.',
  ],
  otherWords: [
    'brake coil',
    'brake coil resistance',
    'brake coil ohms',
    'brake voltage',
    'brake supply',
    'brake cable voltage drop',
    '24 V brake',
    'brake watts',
    'U squared over P',
    'spring applied brake',
    'permanent magnet brake',
    'safety brake',
    'brake click',
  ],
  related: ['trip/mechanics-tuning-and-brake', 'safety/gravity-loaded-axes', 'measuring/cable-or-motor'],
};
