import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Tells what a sound cable of this build and length reads, so that a long run does not fail by a limit made for short ones, and where the go/no-go point after a trip still holds.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions: 'supply locked out, bus dead, cable off at both ends and guarded, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The cable is disconnected at the drive and at the motor, and nobody can touch either end.',
    'A hanging axis is supported or pinned: its motor no longer holds it.',
  ],
  otherWords: [
    'long cable',
    'cable run',
    'megohm per 1000 ft',
    'megohm per km',
    'K value',
    'insulation resistance constant',
    'XLPE',
    'PVC',
    'low reading on a long cable',
  ],
  related: ['measuring/choosing-the-limit', 'measuring/cable-or-motor', 'trip/cable-and-connector-failure'],
};
