import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges the input and the DC bus of a drive that blows its fuses, trips the breaker at power-on or stays dark: fuses, rectifier, DC+ to DC− and precharge. All of it dead.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions: 'supply locked out, bus measured, supply leads off and capped, axis held',
  preconditions: [
    'The supply is locked out, and the time on the warning label of the drive has passed.',
    'You have measured the DC bus, DC+ to DC− and each to PE, with a meter that you tried on a known source.',
    'The supply leads are off the drive, marked and capped; so is all else on the bus, as the manual allows.',
    'Blown fuses are not replaced to see.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'input rectifier',
    'input bridge',
    'bridge rectifier test',
    'precharge resistor',
    'inrush resistor',
    'soft charge',
    'DC link capacitor',
    'DC+ to DC-',
  ],
  related: ['measuring/braking-circuit-and-input', 'deciding/before-power-goes-on-again', 'safety/the-dc-bus'],
};
