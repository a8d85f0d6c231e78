import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Separates a bad cable from a bad motor after a trip, in three stages: joined at the drive end, the cable alone, the motor alone. It says what is suspect, what is proven, what to measure next and what to replace.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions:
    'supply locked out, bus dead, leads and PE core off the drive, feedback off, idle cores at PE, nobody at the far end, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The cable is off the drive, its PE core last: left on, PE shows continuity even when it is broken. It goes on first, before anything is powered.',
    'For the stages after the first, the cable is off the motor too.',
    'Encoder or resolver is unplugged. Brake, sensor and other idle cores are off the drive, joined and connected to PE: a short to a core that hangs free does not show.',
    'Nobody can touch the other end of the cable while the test voltage is on.',
    'A hanging axis is supported or pinned.',
  ],
  otherWords: [
    'bad cable',
    'bad motor',
    'shorted cable',
    'shorted motor',
    'flex',
    'flex cable',
    'drag chain',
    'cable carrier',
    'phase to ground',
    'short to ground',
    'ground fault',
    'earth fault',
    'chassis',
    'shield',
    'ground wire',
    'earth wire',
  ],
  related: ['measuring/cable-or-motor', 'measuring/insulation-testing', 'safety/safe-measurement'],
};
