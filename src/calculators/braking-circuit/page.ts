import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges the braking circuit of a drive that trips on braking, stopping or lowering: the resistor against its plate and its housing, its lead and thermal switch, and the chopper by diode test. All of it dead.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis', 'test-voltage', 'hot-surface'],
  conditions: 'supply locked out, bus measured, resistor cool and off the drive, axis held',
  preconditions: [
    'The supply is locked out, and the time on the warning label of the drive has passed.',
    'You have measured the DC bus, and each end of the resistor to PE, with a meter that you tried on a known source.',
    'Both leads of the resistor are off the drive, and it is cool.',
    'An insulation tester is put on the resistor only, never on the drive.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'braking resistor',
    'brake resistor ohms',
    'regen resistor',
    'chopper',
    'chopper transistor',
    'brake transistor',
    'freewheel diode',
    'thermal switch of the resistor',
    'resistor to housing',
  ],
  related: ['measuring/braking-circuit-and-input', 'trip/when-it-trips', 'safety/the-dc-bus'],
};
