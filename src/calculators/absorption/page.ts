import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Takes the readings of one insulation test over ten minutes, with a stopwatch that says when to read. It gives the polarization index, the dielectric absorption ratio and the curve, and says when they mean nothing.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions: 'supply locked out, bus dead, motor off the drive and guarded for ten minutes, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The motor is disconnected from the drive, and nobody can touch it or its leads for the ten minutes.',
    'A hanging axis is supported or pinned: its motor no longer holds it.',
  ],
  otherWords: [
    'insulation resistance',
    'polarisation index',
    'PI test',
    'dielectric absorption ratio',
    'DAR',
    'ten minute test',
    '10 minute test',
    'stopwatch',
    'moisture in the winding',
  ],
  related: ['measuring/choosing-the-limit', 'measuring/insulation-testing'],
};
