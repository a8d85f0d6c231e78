import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges the output stage of a drive from twelve readings of the diode test: DC+ and DC− to each of U, V and W, both ways round. It names the transistor that is suspect, and compares with the resistance readings if you took them too.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out, bus measured, motor leads off, meter tips tried, axis held',
  preconditions: [
    'The supply is locked out, and the time on the warning label of the drive has passed.',
    'You have measured the DC bus, from DC+ to DC−, with a meter that you tried on a known source before and after.',
    'The motor leads are off U, V and W at the drive, because the windings join the three and make a fault look balanced.',
    'The two tips of the meter, held together in the diode test, read about zero.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'igbt',
    'mosfet',
    'transistor check',
    'forward voltage',
    'forward drop',
    'free-wheeling diode',
    'power module',
    'output transistor',
    'inverter',
    'servo amplifier',
    'OL',
    'diode mode',
  ],
  related: ['measuring/diode-test', 'measuring/bridge-check', 'safety/safe-measurement'],
};
