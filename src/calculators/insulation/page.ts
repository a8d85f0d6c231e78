import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Judges the insulation of a motor, or of motor and cable, to the protective conductor: after a trip, or in routine monitoring. It corrects for temperature, and says when a reading decides nothing.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions:
    'supply locked out, bus dead, leads and PE core off the drive, feedback off, idle cores at PE, nobody at the far end, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The cable is off the drive, its PE core last: left on, PE shows continuity even when it is broken. It goes on first, before anything is powered.',
    'The insulation tester never touches the terminals of a drive.',
    'Encoder or resolver is unplugged. Brake, sensor and other idle cores are off the drive, joined and connected to PE: a short to a core that hangs free does not show.',
    'Nobody can touch the other end of the cable while the test voltage is on.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'hipot',
    'megohmmeter',
    'megohm meter',
    'IR test',
    'insulation resistance',
    'wet motor',
    'damp motor',
    'condensation',
    'phase to ground',
    'short to ground',
    'ground fault',
    'earth fault',
    'chassis',
    'ground wire',
    'earth wire',
    'OL',
    'over limit',
    'temperature correction',
  ],
  related: ['measuring/insulation-testing', 'measuring/choosing-the-limit', 'safety/safe-measurement'],
};
