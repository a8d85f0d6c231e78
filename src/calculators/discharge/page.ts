import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Estimates how long the DC bus takes to the published limits after the supply is cut, and what it stores until then. It never says go: only your meter tells that the bus is dead.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out and nothing else feeding the bus, axis held, meter rated for it',
  preconditions: [
    'The supply is locked out, and nothing else feeds the bus: no other drive, no backup supply, no motor that turns.',
    'A hanging axis is supported or pinned. One that sinks drives its motor and charges the bus.',
    'You are permitted to measure at these voltages, and your meter is rated for them.',
  ],
  otherWords: [
    'DC link',
    'capacitor discharge time',
    'bleeder resistor',
    'RC time constant',
    'how long to wait',
    'residual voltage',
    'stored energy',
    'joules',
    'waiting time label',
  ],
  related: ['safety/the-dc-bus', 'safety/proving-dead', 'safety/lockout-and-stored-energy'],
};
