import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges the output stage of a drive from six resistance readings: DC+ and DC− to each of U, V and W. It names the switch that is suspect.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out, bus measured, motor leads off, meter tips tried, axis held',
  preconditions: [
    'The supply is locked out, and the time on the warning label of the drive has passed.',
    'You have measured the DC bus, from DC+ to DC−, with a meter that you tried on a known source before and after.',
    'The motor leads are off U, V and W at the drive, because the windings join the three and make a fault look balanced.',
    'The two tips of the meter, held together, read a few tenths of an ohm: six over-range readings are also what an open lead shows.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'igbt',
    'mosfet',
    'transistor check',
    'diode check',
    'free-wheeling diode',
    'power module',
    'output transistor',
    'VFD',
    'inverter',
    'servo amplifier',
    'drive check',
    'OL',
    'over limit',
    'ohm check',
  ],
  related: ['measuring/bridge-check', 'trip/when-it-trips', 'safety/safe-measurement'],
};
